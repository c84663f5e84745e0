package org.lynchet.prescription.plan;

import java.util.Optional;

/** Reads headings. */
final class HeadingText {
  private static final String ALLOWED =
      "degrees clockwise from true north, 0 or more and less than 360";

  private HeadingText() {}

  /** Reads degrees clockwise from true north, [0, 360). */
  static Optional<Double> read(PlanNode node, PlanFaults faults) {
    Optional<Double> heading = NumberText.degrees(ALLOWED).read(node, faults);
    if (heading.isPresent() && !(heading.get() >= 0 && heading.get() < 360)) {
      faults.add(
          node.place(),
          "the heading is out of range",
          ALLOWED,
          heading.get() == 360 ? "write 0" : "add or take away 360");
      return Optional.empty();
    }
    return heading.map(degrees -> degrees + 0.0);
  }
}
