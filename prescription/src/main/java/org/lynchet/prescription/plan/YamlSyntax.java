package org.lynchet.prescription.plan;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.exc.StreamConstraintsException;
import org.jspecify.annotations.Nullable;
import org.yaml.snakeyaml.error.Mark;
import org.yaml.snakeyaml.error.MarkedYAMLException;
import org.yaml.snakeyaml.reader.ReaderException;

/** Tells where and why a text is not YAML. */
final class YamlSyntax {
  private YamlSyntax() {}

  /** Adds the one fault that ended parsing. */
  static void addFault(JsonProcessingException notYaml, String text, PlanFaults faults) {
    Place top = new Place(null, "", 1, 1);
    if (notYaml.getCause() instanceof MarkedYAMLException marked) {
      Mark mark = marked.getProblemMark();
      add(
          faults,
          mark == null ? top : top.moved(mark.getLine() + 1, mark.getColumn() + 1),
          why(marked));
    } else if (notYaml.getCause() instanceof ReaderException character) {
      String shown = Shown.quoted(Character.toString(character.getCodePoint()));
      add(
          faults,
          placeOf(text, character.getPosition()),
          "the character " + shown + " is not allowed");
    } else if (notYaml instanceof StreamConstraintsException) {
      add(faults, top, "a key is too long to be one");
    } else {
      // What YAML allows and a plan does not: a list, keys or an alias in the place of a key.
      var at = notYaml.getLocation();
      add(
          faults,
          at == null ? top : top.moved(Math.max(1, at.getLineNr()), Math.max(1, at.getColumnNr())),
          "a key is not a plain text");
    }
  }

  private static void add(PlanFaults faults, Place place, String why) {
    faults.add(
        place,
        "this is not YAML: " + why,
        "lines of 'key: value', levels indented by blanks, no tabs",
        "mend it there; look at the line above too");
  }

  private static String why(MarkedYAMLException marked) {
    return (sentence(marked.getContext()) + Shown.clipped(sentence(marked.getProblem()))).strip();
  }

  private static String sentence(@Nullable String text) {
    return text == null ? "" : text.strip() + " ";
  }

  /** The place of the character at an index that counts code points. */
  private static Place placeOf(String text, int index) {
    int line = 1;
    int column = 1;
    for (int c : text.codePoints().limit(index).toArray()) {
      column = c == '\n' ? 1 : column + 1;
      line = c == '\n' ? line + 1 : line;
    }
    return new Place(null, "", line, column);
  }
}
