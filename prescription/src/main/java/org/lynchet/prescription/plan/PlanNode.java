package org.lynchet.prescription.plan;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/** A value of a plan file with its place. */
sealed interface PlanNode {
  /** Where it begins. */
  Place place();

  /** What it is, in words for messages. */
  String kind();

  /** The values in it, in the order of the file. */
  default Stream<PlanNode> values() {
    return Stream.empty();
  }

  /** The place of the value that these keys lead to, if there is one. */
  default Optional<Place> find(String path) {
    return place().path().equals(path)
        ? Optional.of(place())
        : values().flatMap(value -> value.find(path).stream()).findFirst();
  }

  /** What YAML takes a single value for. */
  enum ScalarKind {
    TEXT,
    NUMBER,
    TRUE,
    FALSE,
    NOTHING
  }

  /**
   * A single value.
   *
   * @param scalarKind what YAML takes it for
   * @param text the value as written, without quotes
   */
  record Scalar(ScalarKind scalarKind, String text, Place place) implements PlanNode {
    @Override
    public String kind() {
      return scalarKind == ScalarKind.NOTHING ? "nothing" : Shown.quoted(text);
    }
  }

  /** A list of values. */
  record Listing(List<PlanNode> items, Place place) implements PlanNode {
    @Override
    public String kind() {
      return "a list";
    }

    @Override
    public Stream<PlanNode> values() {
      return items.stream();
    }
  }

  /** Keys with values, in the order of the file. */
  record Mapping(Map<String, Entry> entries, Place place) implements PlanNode {
    @Override
    public String kind() {
      return "keys with values";
    }

    @Override
    public Stream<PlanNode> values() {
      return entries.values().stream().map(Entry::value);
    }
  }

  /**
   * One key and its value.
   *
   * @param keyPlace where the key begins
   */
  record Entry(Place keyPlace, PlanNode value) {}
}
