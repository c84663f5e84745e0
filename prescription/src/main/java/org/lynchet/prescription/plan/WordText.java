package org.lynchet.prescription.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.lynchet.prescription.plan.PlanNode.Scalar;
import org.lynchet.prescription.plan.PlanNode.ScalarKind;

/** Reads words of which a few are known. */
final class WordText {
  private WordText() {}

  /** Reads one of an enum's constants, written in lower case with dashes. */
  static <E extends Enum<E>> ValueReader<E> oneOf(Class<E> words) {
    return (node, faults) -> {
      List<String> allowed = new ArrayList<>();
      String text =
          node instanceof Scalar scalar && scalar.scalarKind() == ScalarKind.TEXT
              ? scalar.text()
              : "";
      for (E word : words.getEnumConstants()) {
        String spelled = word.name().toLowerCase(Locale.ROOT).replace('_', '-');
        if (spelled.equals(text)) {
          return Optional.of(word);
        }
        allowed.add(spelled);
      }
      faults.add(
          node.place(),
          node.kind() + " is not known here" + NearName.hint(allowed, text),
          String.join(", ", allowed),
          "choose one of these");
      return Optional.empty();
    };
  }

  /** Reads true or false. */
  static Optional<Boolean> flag(PlanNode node, PlanFaults faults) {
    if (node instanceof Scalar scalar) {
      if (scalar.scalarKind() == ScalarKind.TRUE) {
        return Optional.of(true);
      }
      if (scalar.scalarKind() == ScalarKind.FALSE) {
        return Optional.of(false);
      }
    }
    faults.add(
        node.place(),
        node.kind() + " is neither true nor false",
        "true or false, without quotes",
        "write one of them");
    return Optional.empty();
  }
}
