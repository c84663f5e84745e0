package org.lynchet.prescription.defaults;

import com.fasterxml.jackson.core.JsonToken;
import com.fasterxml.jackson.dataformat.yaml.YAMLFactory;
import com.fasterxml.jackson.dataformat.yaml.YAMLParser;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.lynchet.prescription.defaults.Defaults.Sourced;

/** Reads values with their sources: the names {@code value} and {@code source} below each key. */
final class SourcedFile {
  private static final String RESOURCE = "defaults.yaml";

  private final YAMLParser parser;
  private final Map<String, Sourced> values = new LinkedHashMap<>();

  private SourcedFile(YAMLParser parser) {
    this.parser = parser;
  }

  /** The program's own values by their keys, in the order of the file. */
  static Map<String, Sourced> read() {
    try (InputStream in = SourcedFile.class.getResourceAsStream(RESOURCE)) {
      return read(Objects.requireNonNull(in));
    } catch (IOException e) {
      throw new UncheckedIOException("the program's own defaults cannot be read", e);
    }
  }

  /**
   * The values of a file by their keys, in its order.
   *
   * @throws IOException if it is not YAML
   * @throws IllegalArgumentException if a value has no source, or a source no value
   */
  static Map<String, Sourced> read(InputStream yaml) throws IOException {
    try (YAMLParser parser = new YAMLFactory().createParser(yaml)) {
      SourcedFile file = new SourcedFile(parser);
      parser.nextToken();
      file.readBelow("");
      return file.values;
    }
  }

  /** Reads from a bracket that is open to its end. */
  private void readBelow(String key) throws IOException {
    String value = "";
    String source = "";
    boolean deeper = false;
    while (parser.nextToken() == JsonToken.FIELD_NAME) {
      String name = parser.currentName();
      JsonToken token = parser.nextToken();
      if (token == JsonToken.START_OBJECT) {
        deeper = true;
        readBelow(key.isEmpty() ? name : key + "." + name);
      } else if (name.equals("value")) {
        value = token == JsonToken.START_ARRAY ? list() : scalar();
      } else if (name.equals("source")) {
        source = scalar();
      } else {
        throw new IllegalArgumentException(key + " has neither value nor source but " + name);
      }
    }
    if (deeper && value.isEmpty() && source.isEmpty()) {
      return;
    }
    if (value.isBlank() || source.isBlank() || values.containsKey(key)) {
      throw new IllegalArgumentException(key + " needs one value and one source");
    }
    values.put(key, new Sourced(key, value, source));
  }

  private String list() throws IOException {
    List<String> items = new ArrayList<>();
    while (parser.nextToken() != JsonToken.END_ARRAY) {
      items.add(scalar());
    }
    return String.join(", ", items);
  }

  /** Without zeros that say nothing: 1.70 is 1.7. */
  private String scalar() throws IOException {
    return parser.currentToken() == JsonToken.VALUE_NUMBER_FLOAT
        ? Double.toString(parser.getDoubleValue())
        : parser.getText();
  }
}
