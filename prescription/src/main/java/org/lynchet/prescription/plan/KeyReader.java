package org.lynchet.prescription.plan;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.BiFunction;
import org.lynchet.prescription.quantity.Area;
import org.lynchet.prescription.quantity.Length;
import org.lynchet.prescription.quantity.SeedingRate;

/**
 * Reads the keys of one mapping, each once; what was not asked for by the time it is {@linkplain
 * #close closed} is unknown.
 */
final class KeyReader {
  private static final int LONGEST_TEXT = 64;

  private final PlanNode.Mapping mapping;
  private final String path;
  private final PlanFaults faults;
  private final QuantityText quantities;
  private final Set<String> known = new TreeSet<>();

  KeyReader(PlanNode.Mapping mapping, String path, PlanFaults faults) {
    this.mapping = mapping;
    this.path = path;
    this.faults = faults;
    this.quantities = new QuantityText(faults);
  }

  /** The path of a key, for messages. */
  String pathOf(String key) {
    return path.isEmpty() ? key : path + "." + key;
  }

  /** The value of a key, if it is there. */
  Optional<PlanNode> find(String key) {
    known.add(key);
    return Optional.ofNullable(mapping.entries().get(key));
  }

  /** The value of a key that must be there. */
  Optional<PlanNode> get(String key) {
    Optional<PlanNode> value = find(key);
    if (value.isEmpty()) {
      faults.at(
          mapping, path, "the key '" + key + "' is missing", pathOf(key) + ": ...", "add it there");
    }
    return value;
  }

  /** Adds a fault at a key's value. */
  void fault(String key, String what, String allowed, String next) {
    PlanNode node = mapping.entries().getOrDefault(key, mapping);
    faults.at(node, pathOf(key), what, allowed, next);
  }

  Optional<KeyReader> getKeys(String key) {
    return get(key).flatMap(node -> keys(node, pathOf(key)));
  }

  Optional<KeyReader> findKeys(String key) {
    return find(key).flatMap(node -> keys(node, pathOf(key)));
  }

  private Optional<KeyReader> keys(PlanNode node, String nodePath) {
    if (node instanceof PlanNode.Mapping keys) {
      return Optional.of(new KeyReader(keys, nodePath, faults));
    }
    faults.at(
        node,
        nodePath,
        node.kind() + " stands where keys are wanted",
        "keys with values, indented below it",
        "see the key reference in the README");
    return Optional.empty();
  }

  /** Each entry of a mapping of names, as keys of its own; empty if the key is not there. */
  <T> Map<String, T> findNamed(String key, BiFunction<String, KeyReader, Optional<T>> read) {
    Map<String, T> named = new LinkedHashMap<>();
    findKeys(key)
        .ifPresent(
            names -> {
              for (String name : List.copyOf(names.mapping.entries().keySet())) {
                names
                    .findKeys(name)
                    .flatMap(keys -> read.apply(checkedName(names, name), keys))
                    .ifPresent(value -> named.put(name, value));
              }
            });
    return named;
  }

  private static String checkedName(KeyReader names, String name) {
    if (name.isBlank() || name.length() > LONGEST_TEXT || hasControl(name)) {
      names.fault(
          name,
          "'" + name + "' is not a name",
          "1 to " + LONGEST_TEXT + " printable characters",
          "choose a shorter one");
    }
    return name;
  }

  /** The items of a list as keys; empty if the key is not there. */
  List<KeyReader> getList(String key) {
    List<KeyReader> items = new ArrayList<>();
    get(key)
        .ifPresent(
            node -> {
              if (node instanceof PlanNode.Listing list && !list.items().isEmpty()) {
                for (int i = 0; i < list.items().size(); i++) {
                  keys(list.items().get(i), pathOf(key) + "[" + i + "]").ifPresent(items::add);
                }
              } else {
                faults.at(
                    node,
                    pathOf(key),
                    node.kind() + " stands where a list is wanted",
                    "a list with at least one item, each begun by '- '",
                    "see the key reference in the README");
              }
            });
    return items;
  }

  /** A text of 1 to 64 printable characters that must be there. */
  Optional<String> getText(String key) {
    return get(key).flatMap(node -> text(node, pathOf(key)));
  }

  /** The same, if it is there. */
  Optional<String> findText(String key) {
    return find(key).flatMap(node -> text(node, pathOf(key)));
  }

  /** The texts of a list; empty if the key is not there. */
  List<String> findTexts(String key) {
    List<String> texts = new ArrayList<>();
    find(key)
        .ifPresent(
            node -> {
              if (node instanceof PlanNode.Listing list) {
                list.items().forEach(item -> text(item, pathOf(key)).ifPresent(texts::add));
              } else {
                faults.at(
                    node,
                    pathOf(key),
                    node.kind() + " stands where a list is wanted",
                    "a list in brackets, such as [corn, soybean]",
                    "put it in brackets");
              }
            });
    return texts;
  }

  private Optional<String> text(PlanNode node, String nodePath) {
    if (node instanceof PlanNode.Scalar scalar
        && !scalar.text().isBlank()
        && scalar.text().length() <= 4 * LONGEST_TEXT
        && !hasControl(scalar.text())) {
      return Optional.of(scalar.text());
    }
    faults.at(
        node, nodePath, node.kind() + " is not a text", "printable characters", "write it out");
    return Optional.empty();
  }

  private static boolean hasControl(String text) {
    return text.chars().anyMatch(Character::isISOControl);
  }

  /** A whole number of at least {@code least} that must be there. */
  Optional<Integer> getCount(String key, int least) {
    return get(key).flatMap(node -> count(node, pathOf(key), least));
  }

  /** The same, if it is there. */
  Optional<Integer> findCount(String key, int least) {
    return find(key).flatMap(node -> count(node, pathOf(key), least));
  }

  private Optional<Integer> count(PlanNode node, String nodePath, int least) {
    int most = 1_000_000;
    if (node instanceof PlanNode.Scalar scalar && scalar.text().matches("[0-9]{1,7}")) {
      int number = Integer.parseInt(scalar.text());
      if (number >= least && number <= most) {
        return Optional.of(number);
      }
    }
    faults.at(
        node,
        nodePath,
        node.kind() + " is not a count",
        "a whole number, " + least + " to " + most,
        "write it without unit or comma");
    return Optional.empty();
  }

  /** A plain number in a range, its bounds with it. */
  Optional<Double> number(PlanNode node, String nodePath, double least, double most, String unit) {
    if (node instanceof PlanNode.Scalar scalar) {
      try {
        double number = Double.parseDouble(scalar.text());
        if (number >= least && number <= most) {
          return Optional.of(number);
        }
      } catch (NumberFormatException notANumber) {
        // Falls through to the fault below, like a number out of range.
      }
    }
    faults.at(
        node,
        nodePath,
        node.kind() + " is not a number of " + unit + " in range",
        String.format(Locale.ROOT, "%s, %.0f to %.0f", unit, least, most),
        "check the number");
    return Optional.empty();
  }

  /** Yes or no, if it is there. */
  Optional<Boolean> findFlag(String key) {
    return find(key)
        .flatMap(
            node -> {
              String text = node instanceof PlanNode.Scalar scalar ? scalar.text() : "";
              if (text.equals("true") || text.equals("false")) {
                return Optional.of(text.equals("true"));
              }
              faults.at(
                  node,
                  pathOf(key),
                  node.kind() + " is not yes or no",
                  "true or false",
                  "write true or false");
              return Optional.empty();
            });
  }

  /** One of some words, if it is there. */
  <E extends Enum<E>> Optional<E> findWord(String key, Class<E> words) {
    return find(key).flatMap(node -> word(node, pathOf(key), words));
  }

  /** One of some words: the constants of an enum in lower case, with dashes. */
  <E extends Enum<E>> Optional<E> word(PlanNode node, String nodePath, Class<E> words) {
    List<String> allowed = new ArrayList<>();
    String text = node instanceof PlanNode.Scalar scalar ? scalar.text() : "";
    for (E word : words.getEnumConstants()) {
      String spelled = word.name().toLowerCase(Locale.ROOT).replace('_', '-');
      if (spelled.equals(text)) {
        return Optional.of(word);
      }
      allowed.add(spelled);
    }
    faults.at(
        node,
        nodePath,
        node.kind() + " is not known here" + NearName.hint(allowed, text),
        String.join(", ", allowed),
        "choose one of these");
    return Optional.empty();
  }

  Optional<Length> getLength(String key) {
    return get(key).flatMap(node -> quantities.length(node, pathOf(key)));
  }

  Optional<Length> findLength(String key) {
    return find(key).flatMap(node -> quantities.length(node, pathOf(key)));
  }

  Optional<Area> findArea(String key) {
    return find(key).flatMap(node -> quantities.area(node, pathOf(key)));
  }

  Optional<SeedingRate> getRate(String key) {
    return get(key).flatMap(node -> quantities.rate(node, pathOf(key)));
  }

  Optional<Double> findPercent(String key) {
    return find(key).flatMap(node -> quantities.percent(node, pathOf(key)));
  }

  /** The names of the keys that are there. */
  List<String> names() {
    return List.copyOf(mapping.entries().keySet());
  }

  /** Adds a fault for each key that was not asked for. */
  void close() {
    for (String key : mapping.entries().keySet()) {
      if (!known.contains(key)) {
        int[] place = mapping.keyPlaces().getOrDefault(key, new int[] {1, 1});
        faults.at(
            place[0],
            place[1],
            pathOf(key),
            "the key '" + key + "' is not known" + NearName.hint(known, key),
            String.join(", ", known),
            "remove it, or use one of these");
      }
    }
  }
}
