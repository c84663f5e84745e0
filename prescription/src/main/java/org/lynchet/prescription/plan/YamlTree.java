package org.lynchet.prescription.plan;

import com.fasterxml.jackson.core.JsonLocation;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.JsonToken;
import com.fasterxml.jackson.dataformat.yaml.YAMLFactory;
import com.fasterxml.jackson.dataformat.yaml.YAMLParser;
import java.io.IOException;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Reads the text of a plan into values with their places. */
final class YamlTree {
  private static final int DEEPEST = 20;

  private final YAMLParser parser;
  private final PlanFaults faults;

  private YamlTree(YAMLParser parser, PlanFaults faults) {
    this.parser = parser;
    this.faults = faults;
  }

  /** The keys and values of a text; empty, with a fault, if it is not YAML with keys. */
  static Optional<PlanNode.Mapping> read(String text, PlanFaults faults) {
    try (YAMLParser parser = new YAMLFactory().createParser(text)) {
      YamlTree tree = new YamlTree(parser, faults);
      if (parser.nextToken() == null) {
        faults.whole(
            "the plan is empty", "keys such as field, guidance, machines, strips", "write a plan");
        return Optional.empty();
      }
      PlanNode root = tree.value("", 0);
      if (parser.nextToken() != null) {
        faults.whole(
            "the plan has more than one document", "one plan to a file", "remove the line '---'");
        return Optional.empty();
      }
      if (root instanceof PlanNode.Mapping mapping) {
        return Optional.of(mapping);
      }
      faults.at(
          root,
          "",
          "the plan is " + root.kind(),
          "keys such as field, guidance, machines, strips",
          "write a plan");
    } catch (Refused refused) {
      return Optional.empty();
    } catch (JsonProcessingException e) {
      JsonLocation at = e.getLocation();
      faults.at(
          at == null ? 1 : Math.max(1, at.getLineNr()),
          at == null ? 1 : Math.max(1, at.getColumnNr()),
          "",
          "this is not YAML: " + firstLine(e.getOriginalMessage()),
          "YAML: key: value, the levels indented by blanks",
          "mend it there; look at the line above too");
    } catch (IOException e) {
      faults.whole("the plan cannot be read: " + e.getMessage(), "a text file", "check the file");
    }
    return Optional.empty();
  }

  /** Ends reading after a fault that leaves nothing to go on with. */
  private static final class Refused extends RuntimeException {
    private static final long serialVersionUID = 1L;

    Refused() {
      super(null, null, false, false);
    }
  }

  private static String firstLine(String message) {
    return message
        .lines()
        .map(String::strip)
        .filter(line -> !line.isEmpty())
        .findFirst()
        .orElse("");
  }

  private PlanNode value(String key, int depth) throws IOException {
    JsonLocation at = parser.currentTokenLocation();
    int line = at.getLineNr();
    int column = at.getColumnNr();
    if (parser.isCurrentAlias() || parser.getObjectId() != null) {
      refuse(
          line,
          column,
          key,
          "anchors and aliases are not read",
          "plain values",
          "write the value out");
    }
    if (depth > DEEPEST) {
      refuse(line, column, key, "too many levels", "the levels of a plan", "check the indentation");
    }
    JsonToken token = parser.currentToken();
    if (token == JsonToken.START_OBJECT) {
      return mapping(key, line, column, depth);
    }
    if (token == JsonToken.START_ARRAY) {
      List<PlanNode> items = new ArrayList<>();
      while (parser.nextToken() != JsonToken.END_ARRAY) {
        items.add(value(key + "[" + items.size() + "]", depth + 1));
      }
      return new PlanNode.Listing(items, line, column);
    }
    String text = token == JsonToken.VALUE_NULL ? "" : parser.getText().strip();
    return new PlanNode.Scalar(text, line, column);
  }

  private PlanNode.Mapping mapping(String key, int line, int column, int depth) throws IOException {
    LinkedHashMap<String, PlanNode> entries = new LinkedHashMap<>();
    Map<String, int[]> places = new HashMap<>();
    while (parser.nextToken() != JsonToken.END_OBJECT) {
      JsonLocation at = parser.currentTokenLocation();
      String name = parser.currentName();
      String path = key.isEmpty() ? name : key + "." + name;
      parser.nextToken();
      PlanNode value = value(path, depth + 1);
      if (entries.putIfAbsent(name, value) != null) {
        faults.at(
            at.getLineNr(),
            at.getColumnNr(),
            path,
            "the key '" + name + "' is there twice",
            "each key once",
            "remove one of them");
      }
      places.putIfAbsent(name, new int[] {at.getLineNr(), at.getColumnNr()});
    }
    return new PlanNode.Mapping(entries, places, line, column);
  }

  private void refuse(int line, int column, String key, String what, String allowed, String next) {
    faults.at(line, column, key, what, allowed, next);
    throw new Refused();
  }
}
