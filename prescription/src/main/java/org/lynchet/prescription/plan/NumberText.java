package org.lynchet.prescription.plan;

import java.math.BigDecimal;
import java.util.Optional;
import java.util.regex.Pattern;
import org.lynchet.prescription.plan.PlanNode.Scalar;
import org.lynchet.prescription.plan.PlanNode.ScalarKind;

/** Reads numbers without a unit. */
final class NumberText {
  /** Numbers as JSON has them, and a plus; not YAML's octal, hexadecimal and underscored ones. */
  static final String FORM = "[-+]?(0|[1-9][0-9]{0,39})(\\.[0-9]{1,40})?([eE][-+]?[0-9]{1,3})?";

  private static final Pattern NUMBER = Pattern.compile(FORM);

  private NumberText() {}

  /** Reads a whole number in a range, its ends with it; 12.0 is whole. */
  static ValueReader<Integer> count(int least, int most) {
    String allowed = "a whole number, " + least + " to " + most;
    return (node, faults) -> {
      Optional<BigDecimal> number = number(node, allowed, faults);
      if (number.isEmpty()) {
        return Optional.empty();
      }
      BigDecimal n = number.get();
      boolean inRange =
          n.compareTo(BigDecimal.valueOf(least)) >= 0 && n.compareTo(BigDecimal.valueOf(most)) <= 0;
      if (!inRange || n.stripTrailingZeros().scale() > 0) {
        faults.add(
            node.place(),
            node.kind() + (inRange ? " is not a whole number" : " is out of range"),
            allowed,
            "correct the number");
        return Optional.empty();
      }
      return Optional.of(n.intValueExact());
    };
  }

  /** Reads a number of degrees; the caller judges its range. */
  static ValueReader<Double> degrees(String allowed) {
    return (node, faults) -> number(node, allowed, faults).map(BigDecimal::doubleValue);
  }

  /** Reads a number in a range, its ends with it. */
  static ValueReader<Double> between(double least, double most) {
    String allowed =
        "a number, "
            + BigDecimal.valueOf(least).stripTrailingZeros().toPlainString()
            + " to "
            + BigDecimal.valueOf(most).stripTrailingZeros().toPlainString();
    return (node, faults) -> {
      Optional<Double> number = number(node, allowed, faults).map(BigDecimal::doubleValue);
      if (number.isPresent() && !(number.get() >= least && number.get() <= most)) {
        faults.add(node.place(), node.kind() + " is out of range", allowed, "correct the number");
        return Optional.empty();
      }
      return number.map(n -> n + 0.0); // no negative zero
    };
  }

  private static Optional<BigDecimal> number(PlanNode node, String allowed, PlanFaults faults) {
    if (node instanceof Scalar scalar && NUMBER.matcher(scalar.text()).matches()) {
      if (scalar.scalarKind() == ScalarKind.NUMBER) {
        return Optional.of(new BigDecimal(scalar.text()));
      }
      faults.add(
          node.place(), node.kind() + " is a text, not a number", allowed, "remove the quotes");
      return Optional.empty();
    }
    faults.add(
        node.place(),
        node.kind() + " is not a number as plans have it",
        allowed,
        "write plain digits, with neither unit nor comma");
    return Optional.empty();
  }
}
