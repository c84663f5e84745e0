package org.lynchet.prescription.defaults;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.dataformat.yaml.YAMLMapper;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;

/** Gives the values of {@code forecast-defaults.yaml}, each with its source. */
public final class ForecastDefaults {
  private static final String RESOURCE = "forecast-defaults.yaml";

  private final JsonNode root;

  private ForecastDefaults(JsonNode root) {
    this.root = root;
  }

  /** Reads the file. */
  public static ForecastDefaults read() {
    try (InputStream in = ForecastDefaults.class.getResourceAsStream(RESOURCE)) {
      return new ForecastDefaults(new YAMLMapper().readTree(Objects.requireNonNull(in)));
    } catch (IOException e) {
      throw new UncheckedIOException("the program's own defaults cannot be read", e);
    }
  }

  /**
   * A value of the file.
   *
   * @param key its path, with dots
   * @param value the value as it is written
   * @param source where it is from
   */
  public record Sourced(String key, String value, String source) {}

  /** Every value of the file, in its order. */
  public List<Sourced> all() {
    List<Sourced> all = new ArrayList<>();
    collect(root, "", all);
    return all;
  }

  private static void collect(JsonNode node, String key, List<Sourced> all) {
    if (node.has("value")) {
      JsonNode value = node.get("value");
      String text = value.isValueNode() ? value.asText() : value.toString();
      all.add(new Sourced(key, text, node.path("source").asText()));
      return;
    }
    for (Map.Entry<String, JsonNode> entry : node.properties()) {
      collect(entry.getValue(), key.isEmpty() ? entry.getKey() : key + "." + entry.getKey(), all);
    }
  }

  /** The crops whose canopies and responses are known. */
  public List<String> crops() {
    return root.path("canopies").properties().stream().map(Map.Entry::getKey).toList();
  }

  /** The name by which the file has a crop; the name given if it has none. */
  public String nameOf(String crop) {
    String name = text("other-names." + crop);
    return name.isEmpty() ? crop : name;
  }

  /** Whether there is a value. */
  public boolean has(String key) {
    return !value(key).isMissingNode();
  }

  /**
   * A number.
   *
   * @throws IllegalArgumentException if there is none of that key
   */
  public double number(String key) {
    JsonNode value = value(key);
    if (!value.isNumber()) {
      throw new IllegalArgumentException("no number " + key);
    }
    return value.doubleValue();
  }

  /** A list of numbers; empty if there is none of that key. */
  public List<Double> numbers(String key) {
    List<Double> numbers = new ArrayList<>();
    value(key).forEach(number -> numbers.add(number.doubleValue()));
    return numbers;
  }

  /** A text, such as a month and day; empty if there is none of that key. */
  public String text(String key) {
    return value(key).asText();
  }

  private JsonNode value(String key) {
    JsonNode node = root;
    for (String name : key.split("\\.", -1)) {
      node = node.path(name);
    }
    return node.path("value");
  }
}
