package org.lynchet.prescription.defaults;

import java.util.Arrays;
import java.util.List;
import java.util.Map;

/** Gives the values of {@code defaults.yaml}, each with its source. */
public final class Defaults {
  private static final Defaults OF_PROGRAM = new Defaults(SourcedFile.read());

  private final Map<String, Sourced> byKey;

  private Defaults(Map<String, Sourced> byKey) {
    this.byKey = byKey;
  }

  /** Those of the program. */
  public static Defaults get() {
    return OF_PROGRAM;
  }

  /**
   * A value of the file.
   *
   * @param key its path, with dots
   * @param value the value as text; the numbers of a list with a comma and a blank between them
   * @param source where it is from
   */
  public record Sourced(String key, String value, String source) {}

  /** Every value of the file, in its order. */
  public List<Sourced> all() {
    return List.copyOf(byKey.values());
  }

  /** The crops whose canopies and responses are known. */
  public List<String> crops() {
    String folder = "canopies.";
    return byKey.keySet().stream()
        .filter(key -> key.startsWith(folder))
        .map(key -> key.substring(folder.length(), key.indexOf('.', folder.length())))
        .distinct()
        .toList();
  }

  /** The name by which the file has a crop; the name given if it has none. */
  public String nameOf(String crop) {
    String name = text("other-names." + crop);
    return name.isEmpty() ? crop : name;
  }

  /** Whether there is a value. */
  public boolean has(String key) {
    return byKey.containsKey(key);
  }

  /**
   * A number.
   *
   * @throws IllegalArgumentException if there is none of that key
   */
  public double number(String key) {
    if (!has(key)) {
      throw new IllegalArgumentException("no number " + key);
    }
    return Double.parseDouble(text(key));
  }

  /**
   * A whole number.
   *
   * @throws IllegalArgumentException if there is none of that key
   */
  public int whole(String key) {
    if (!has(key)) {
      throw new IllegalArgumentException("no whole number " + key);
    }
    return Integer.parseInt(text(key));
  }

  /** A list of numbers; empty if there is none of that key. */
  public List<Double> numbers(String key) {
    return has(key)
        ? Arrays.stream(text(key).split(", ", -1)).map(Double::valueOf).toList()
        : List.of();
  }

  /** Where a value is from; empty if there is none of that key. */
  public String source(String key) {
    Sourced value = byKey.get(key);
    return value == null ? "" : value.source();
  }

  /** A text, such as a month and day; empty if there is none of that key. */
  public String text(String key) {
    Sourced value = byKey.get(key);
    return value == null ? "" : value.value();
  }
}
