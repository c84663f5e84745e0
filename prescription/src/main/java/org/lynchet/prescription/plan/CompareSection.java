package org.lynchet.prescription.plan;

import java.util.Optional;

/** Reads the section {@code compare}. */
final class CompareSection {
  /** Farther from the edge than light of the neighbouring strip matters. */
  private static final int MOST_BORDER_ROWS = 12;

  private CompareSection() {}

  static CompareChoices read(KeyReader plan) {
    return plan.find("compare", KeyReader.keys(CompareSection::choices))
        .orElse(CompareChoices.DEFAULT);
  }

  private static Optional<CompareChoices> choices(KeyReader keys) {
    CompareChoices other = CompareChoices.DEFAULT;
    return Optional.of(
        new CompareChoices(
            keys.find("headings", HeadingList::read).orElse(other.headingsDegrees()),
            keys.find("border-rows", NumberText.count(0, MOST_BORDER_ROWS)).orElse(null)));
  }
}
