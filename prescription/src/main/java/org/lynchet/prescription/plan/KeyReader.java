package org.lynchet.prescription.plan;

import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import org.lynchet.prescription.plan.PlanNode.Entry;
import org.lynchet.prescription.plan.PlanNode.Mapping;
import org.lynchet.prescription.plan.PlanNode.Scalar;
import org.lynchet.prescription.plan.PlanNode.ScalarKind;

/** Reads the keys of one mapping; a key that nobody asked for is unknown. */
final class KeyReader {
  private final Mapping mapping;
  private final PlanFaults faults;
  private final Set<String> known = new LinkedHashSet<>();
  private boolean judgesRest = true;

  private KeyReader(Mapping mapping, PlanFaults faults) {
    this.mapping = mapping;
    this.faults = faults;
  }

  /** Reads a mapping whose keys are known; the keys that are not asked for become faults. */
  static <T> ValueReader<T> keys(Function<KeyReader, Optional<T>> bind) {
    return (node, faults) -> {
      if (!(node instanceof Mapping mapping)) {
        return refuse(node, faults, "keys with values: {key: value}, or indented lines below");
      }
      KeyReader keys = new KeyReader(mapping, faults);
      Optional<T> value = bind.apply(keys);
      keys.refuseUnknown();
      return value;
    };
  }

  /**
   * Reads a mapping whose keys are names that the grower chose, at least one; values with faults
   * are left out.
   *
   * @param name reads, and so checks, a key
   * @param value makes the reader of the value of a name
   */
  static <T> ValueReader<Map<String, T>> names(
      ValueReader<String> name, Function<String, ValueReader<T>> value) {
    return (node, faults) -> {
      if (!(node instanceof Mapping mapping) || mapping.entries().isEmpty()) {
        return refuse(node, faults, "at least one name with its value: {name: value}");
      }
      Map<String, T> values = new LinkedHashMap<>();
      mapping
          .entries()
          .forEach(
              (key, entry) -> {
                name.read(new Scalar(ScalarKind.TEXT, key, entry.keyPlace()), faults);
                value.apply(key).read(entry.value(), faults).ifPresent(one -> values.put(key, one));
              });
      return Optional.of(values);
    };
  }

  private static <T> Optional<T> refuse(PlanNode node, PlanFaults faults, String allowed) {
    boolean empty = node instanceof Mapping;
    faults.add(
        node.place(),
        (empty ? "nothing" : node.kind()) + " stands where keys are wanted",
        allowed,
        "see the key reference");
    return Optional.empty();
  }

  /** Makes keys known in an order, in which faults list them, whatever the order of reading. */
  void list(String... keys) {
    known.addAll(List.of(keys));
  }

  /** Reads the value of a key that must be there. */
  <T> Optional<T> get(String key, ValueReader<T> reader) {
    if (!has(key)) {
      known.add(key);
      faults.add(
          mapping.place(),
          "the key '" + key + "' is missing",
          mapping.place().path().isEmpty() ? key : mapping.place().path() + "." + key,
          "add it");
      return Optional.empty();
    }
    return find(key, reader);
  }

  /** Reads the value of a key, if it is there. */
  <T> Optional<T> find(String key, ValueReader<T> reader) {
    return node(key).flatMap(node -> reader.read(node, faults));
  }

  /** The value of a key, if it is there. */
  Optional<PlanNode> node(String key) {
    known.add(key);
    return Optional.ofNullable(mapping.entries().get(key)).map(Entry::value);
  }

  /** Whether a key is there. */
  boolean has(String key) {
    return mapping.entries().containsKey(key);
  }

  /** Adds a fault at the value of a key. */
  void fault(String key, String what, String allowed, String next) {
    faults.add(node(key).orElseThrow().place(), what, allowed, next);
  }

  /** Adds a fault of all keys together. */
  void faultOfAll(String what, String allowed, String next) {
    faults.add(mapping.place(), what, allowed, next);
  }

  /** Judges no key that was not asked for: what is allowed cannot be told. */
  void leaveRest() {
    judgesRest = false;
  }

  private void refuseUnknown() {
    if (judgesRest) {
      mapping.entries().forEach((key, entry) -> refuseUnknown(key, entry.keyPlace()));
    }
  }

  private void refuseUnknown(String key, Place place) {
    if (!known.contains(key)) {
      boolean endOfNumber = key.matches("[0-9]{3}\\b.*");
      faults.add(
          place,
          "the key " + Shown.quoted(key) + " is not known" + NearName.hint(known, key),
          String.join(", ", known),
          endOfNumber
              ? "if it ends a number, write thousands without a comma"
              : "correct or remove it");
    }
  }
}
