package org.lynchet.prescription.json;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;

/** Makes the JSON that commands print: indented, and ended by a line feed. */
public final class JsonText {

  /** Writes one document. */
  @FunctionalInterface
  public interface Document {
    /** Writes all of it. */
    void write(JsonGenerator json) throws IOException;
  }

  private JsonText() {}

  /** The text of a document. */
  public static String of(Document document) {
    StringWriter text = new StringWriter();
    try (JsonGenerator json = new JsonFactory().createGenerator(text)) {
      json.useDefaultPrettyPrinter();
      document.write(json);
    } catch (IOException impossible) {
      throw new UncheckedIOException(impossible);
    }
    return text.append('\n').toString();
  }
}
