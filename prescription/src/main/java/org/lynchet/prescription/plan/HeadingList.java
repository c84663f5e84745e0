package org.lynchet.prescription.plan;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;

/** Reads headings to try: a list of them, or a range with a step. */
final class HeadingList {
  /** As many as a full circle has degrees. */
  private static final int MOST = 360;

  private static final double LEAST_STEP = 0.01;
  private static final double MOST_STEP = 180;

  private static final String STEP = "degrees, " + LEAST_STEP + " to 180";

  private HeadingList() {}

  static Optional<List<Double>> read(PlanNode node, PlanFaults faults) {
    Optional<List<Double>> headings =
        node instanceof PlanNode.Mapping
            ? KeyReader.keys(HeadingList::range).read(node, faults)
            : ValueReader.listOf(HeadingText::read).read(node, faults);
    return headings.filter(list -> isGood(list, node, faults));
  }

  private static boolean isGood(List<Double> list, PlanNode node, PlanFaults faults) {
    if (list.size() > MOST) {
      faults.add(
          node.place(),
          list.size() + " headings are too many",
          "at most " + MOST + " headings",
          "leave some out, or take a wider step");
      return false;
    }
    if (new HashSet<>(list).size() < list.size()) {
      faults.add(
          node.place(), "a heading is there twice", "each heading once", "remove one of them");
      return false;
    }
    return true;
  }

  /** From one heading clockwise to another; through north if the first is the greater one. */
  private static Optional<List<Double>> range(KeyReader keys) {
    Optional<Double> from = keys.get("from", HeadingText::read);
    Optional<Double> to = keys.get("to", HeadingText::read);
    Optional<Double> step = keys.get("step", NumberText.degrees(STEP));
    if (step.isPresent() && !(step.get() >= LEAST_STEP && step.get() <= MOST_STEP)) {
      keys.fault("step", "the step is out of range", STEP, "write how far apart headings are");
      return Optional.empty();
    }
    return from.isPresent() && to.isPresent() && step.isPresent()
        ? Optional.of(range(from.get(), to.get(), step.get()))
        : Optional.empty();
  }

  private static List<Double> range(double from, double to, double step) {
    double span = to >= from ? to - from : to - from + 360;
    int steps = (int) Math.floor(span / step + 1e-9);
    List<Double> headings = new ArrayList<>();
    for (int i = 0; i <= steps; i++) {
      // To a millionth of a degree, so that 0.1 times 3 is 0.3.
      headings.add(Math.rint((from + i * step) * 1e6) / 1e6 % 360);
    }
    return headings;
  }
}
