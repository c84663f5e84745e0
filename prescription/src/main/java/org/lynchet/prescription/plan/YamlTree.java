package org.lynchet.prescription.plan;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.JsonToken;
import com.fasterxml.jackson.dataformat.yaml.YAMLFactory;
import com.fasterxml.jackson.dataformat.yaml.YAMLParser;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.lynchet.prescription.plan.PlanNode.Entry;
import org.lynchet.prescription.plan.PlanNode.Listing;
import org.lynchet.prescription.plan.PlanNode.Mapping;
import org.lynchet.prescription.plan.PlanNode.Scalar;
import org.lynchet.prescription.plan.PlanNode.ScalarKind;

/** Reads the text of a plan into values with their places. */
final class YamlTree {
  /** A plan has five levels; more than this is no plan, and could exhaust the stack. */
  private static final int DEEPEST = 20;

  private static final String SECTIONS = "keys such as field, guidance, machines and strips";

  private final YAMLParser parser;
  private final PlanFaults faults;

  private YamlTree(YAMLParser parser, PlanFaults faults) {
    this.parser = parser;
    this.faults = faults;
  }

  /** The keys and values of a text; nothing, with a fault, if it is not YAML with keys. */
  static Optional<Mapping> read(String text, PlanFaults faults) {
    try (YAMLParser parser = new YAMLFactory().createParser(text)) {
      return new YamlTree(parser, faults).document();
    } catch (JsonProcessingException notYaml) {
      YamlSyntax.addFault(notYaml, text, faults);
      return Optional.empty();
    } catch (IOException e) {
      throw new UncheckedIOException("a text in memory cannot fail to be read", e);
    }
  }

  private Optional<Mapping> document() throws IOException {
    if (parser.nextToken() == null) {
      faults.addWhole("the plan is empty", SECTIONS, "write a plan");
      return Optional.empty();
    }
    Place top = new Place(null, "", line(), column());
    Optional<PlanNode> root = value(top, 0);
    if (root.isEmpty()) {
      return Optional.empty();
    }
    if (parser.nextToken() != null) {
      faults.add(
          top.moved(line(), column()),
          "a second document begins here",
          "one plan in a file",
          "remove the line '---' above, or make two files");
      return Optional.empty();
    }
    if (root.get() instanceof Mapping mapping) {
      return Optional.of(mapping);
    }
    faults.add(top, "the plan is " + root.get().kind(), SECTIONS, "write a plan");
    return Optional.empty();
  }

  /** The value that begins at the current token; nothing if reading cannot go on. */
  private Optional<PlanNode> value(Place place, int depth) throws IOException {
    if (parser.isCurrentAlias() || parser.getObjectId() != null) {
      faults.add(
          place, "anchors (&) and aliases (*) are not read", "plain values", "write the value out");
      return Optional.empty();
    }
    if (depth > DEEPEST) {
      faults.add(
          place,
          "values are nested more than " + DEEPEST + " deep",
          "the levels of a plan",
          "check brackets and indentation");
      return Optional.empty();
    }
    JsonToken token = parser.currentToken();
    if (token == JsonToken.START_OBJECT) {
      return mapping(place, depth);
    }
    if (token == JsonToken.START_ARRAY) {
      return listing(place, depth);
    }
    return Optional.of(new Scalar(scalarKind(token), parser.getText(), place));
  }

  private static ScalarKind scalarKind(JsonToken token) {
    return switch (token) {
      case VALUE_NUMBER_INT, VALUE_NUMBER_FLOAT -> ScalarKind.NUMBER;
      case VALUE_TRUE -> ScalarKind.TRUE;
      case VALUE_FALSE -> ScalarKind.FALSE;
      case VALUE_NULL -> ScalarKind.NOTHING;
      default -> ScalarKind.TEXT;
    };
  }

  private Optional<PlanNode> listing(Place place, int depth) throws IOException {
    List<PlanNode> items = new ArrayList<>();
    while (parser.nextToken() != JsonToken.END_ARRAY) {
      Optional<PlanNode> item = value(place.item(items.size(), line(), column()), depth + 1);
      if (item.isEmpty()) {
        return item;
      }
      items.add(item.get());
    }
    return Optional.of(new Listing(items, place));
  }

  private Optional<PlanNode> mapping(Place place, int depth) throws IOException {
    Map<String, Entry> entries = new LinkedHashMap<>();
    while (parser.nextToken() != JsonToken.END_OBJECT) {
      String name = parser.currentName();
      Place keyPlace = place.key(name, line(), column());
      parser.nextToken();
      Optional<PlanNode> value = value(keyPlace.moved(line(), column()), depth + 1);
      if (value.isEmpty()) {
        return value;
      }
      Entry before = entries.putIfAbsent(name, new Entry(keyPlace, value.get()));
      if (before != null) {
        faults.add(
            keyPlace,
            "the key " + Shown.quoted(name) + " is there twice",
            "each key once; the other is in line " + before.keyPlace().line(),
            "remove one of them");
      }
    }
    return Optional.of(new Mapping(entries, place));
  }

  private int line() {
    return parser.currentTokenLocation().getLineNr();
  }

  private int column() {
    return parser.currentTokenLocation().getColumnNr();
  }
}
