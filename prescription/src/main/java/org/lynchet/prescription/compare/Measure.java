package org.lynchet.prescription.compare;

import java.util.Locale;
import java.util.Optional;
import org.lynchet.prescription.budget.StripBudget;
import org.lynchet.prescription.quantity.AreaUnit;
import org.lynchet.prescription.quantity.Spread;

/** What outcomes are ranked by. */
public enum Measure {
  /** Change of net against separate blocks, for one of a unit of area. */
  NET(0, 1e-2, "%+.2f"),
  /** The land equivalent ratio. */
  LAND(1, 1e-4, "%.3f");

  private final double ofBlocks;
  private final double same;
  private final String format;

  Measure(double ofBlocks, double same, String format) {
    this.ofBlocks = ofBlocks;
    this.same = same;
    this.format = format;
  }

  /** What separate blocks come to. */
  public double ofBlocks() {
    return ofBlocks;
  }

  /**
   * What an outcome comes to.
   *
   * @throws IllegalArgumentException if it is asked for a net and there is no budget
   */
  public Spread of(Outcome outcome, AreaUnit unit) {
    if (this == LAND) {
      return outcome.light().landEquivalentRatio();
    }
    StripBudget budget =
        Optional.ofNullable(outcome.budget())
            .orElseThrow(() -> new IllegalArgumentException("no budget, no net"));
    return budget.netPer(unit);
  }

  /** The typical value in steps below which nothing counts, so that rounding decides nothing. */
  double rounded(Outcome outcome, AreaUnit unit) {
    return Math.rint(of(outcome, unit).typical() / same) * same;
  }

  /** A value as text. */
  public String text(double value) {
    return String.format(Locale.ROOT, format, value);
  }

  /** A typical value with its range in words; money in a currency for an area. */
  String words(Spread spread, String currency, AreaUnit unit) {
    String typical = text(spread.typical());
    String what =
        this == NET
            ? "a net of " + typical + " " + currency + "/" + unit.symbol()
            : "a land equivalent ratio of " + typical;
    return what + " typically, from " + text(spread.low()) + " to " + text(spread.high());
  }
}
