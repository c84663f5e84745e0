package org.lynchet.prescription.light;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.math.BigDecimal;
import java.math.RoundingMode;

/** Writes the light of rows as JSON, one period of the pattern, rows left to right. */
public final class LightJson {
  private static final int SCHEMA_VERSION = 1;

  private LightJson() {}

  /** The JSON text. */
  public static String of(LightResult result) {
    StringWriter text = new StringWriter();
    try (JsonGenerator json = new JsonFactory().createGenerator(text)) {
      json.useDefaultPrettyPrinter();
      json.writeStartObject();
      json.writeNumberField("schemaVersion", SCHEMA_VERSION);
      json.writeArrayFieldStart("rows");
      for (RowLight light : result.rows()) {
        write(light, json);
      }
      json.writeEndArray();
      json.writeEndObject();
    } catch (IOException impossible) {
      throw new UncheckedIOException(impossible);
    }
    return text.append('\n').toString();
  }

  private static void write(RowLight light, JsonGenerator json) throws IOException {
    CanopyRow row = light.row();
    json.writeStartObject();
    json.writeNumberField("strip", row.strip());
    json.writeStringField("crop", row.crop());
    json.writeNumberField("row", row.row());
    number("offset_m", row.offsetMetres(), json);
    number("relative_incident", light.relativeIncident(), json);
    number("relative_absorbed", light.relativeAbsorbed(), json);
    json.writeEndObject();
  }

  private static void number(String name, double value, JsonGenerator json) throws IOException {
    json.writeFieldName(name);
    json.writeNumber(BigDecimal.valueOf(value).setScale(4, RoundingMode.HALF_UP).toPlainString());
  }
}
