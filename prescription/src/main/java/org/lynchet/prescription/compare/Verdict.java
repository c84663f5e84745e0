package org.lynchet.prescription.compare;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.lynchet.prescription.budget.StripBudget;
import org.lynchet.prescription.budget.Swing;
import org.lynchet.prescription.quantity.Count;
import org.lynchet.prescription.quantity.Spread;

/** Says in plain sentences what a comparison comes to, and what drives its ranking. */
public final class Verdict {
  private final Comparison comparison;
  private final Outcome best;

  private Verdict(Comparison comparison) {
    this.comparison = comparison;
    this.best = comparison.ranked().get(0);
  }

  /** The answer, one sentence or two. */
  public static String answer(Comparison comparison) {
    return new Verdict(comparison).answer();
  }

  /** What drives the ranking, a sentence each. */
  public static List<String> drivers(Comparison comparison) {
    return new Verdict(comparison).drivers();
  }

  /** Whether the typical forecast of the best candidate is no better than separate blocks. */
  public static boolean isBlocks(Comparison comparison) {
    return comparison.measure().of(comparison.ranked().get(0), comparison.area()).typical()
        <= comparison.measure().ofBlocks();
  }

  private String answer() {
    Spread spread = comparison.measure().of(best, comparison.area());
    double blocks = comparison.measure().ofBlocks();
    if (isBlocks(comparison)) {
      return "Plant blocks: none of "
          + count()
          + " typically beats separate blocks. The best comes to "
          + figures(spread)
          + (spread.high() > blocks
              ? " Only the high end is better than blocks."
              : " Even the high end is no better than blocks.");
    }
    return "Strips: the best of "
        + count()
        + " is forecast above separate blocks. It comes to "
        + figures(spread)
        + (spread.low() > blocks
            ? " Even the low end is better than blocks."
            : " The low end is worse than blocks: try it on a part of the field first.");
  }

  private String figures(Spread spread) {
    Measure measure = comparison.measure();
    return String.format(
        Locale.ROOT,
        "%s; blocks are %.0f.",
        measure.words(spread, comparison.currency(), comparison.area()),
        measure.ofBlocks());
  }

  private String count() {
    return Count.of(comparison.ranked().size(), "candidate");
  }

  private List<String> drivers() {
    List<String> sentences = new ArrayList<>();
    List<String> idle = new ArrayList<>();
    for (Driver driver : comparison.drivers()) {
      if (text(driver.bestMean()).equals(text(driver.worstMean()))) {
        idle.add(driver.name());
        continue;
      }
      sentences.add(
          String.format(
              Locale.ROOT,
              "%s: on average %s with %s, %s with %s.",
              capital(driver.name()),
              text(driver.bestMean()),
              driver.best(),
              text(driver.worstMean()),
              driver.worst()));
    }
    if (!idle.isEmpty()) {
      sentences.add(
          capital(String.join(" and ", idle)) + ": no difference on average in the digits shown.");
    }
    StripBudget budget = best.budget();
    if (budget != null && !budget.swings().isEmpty()) {
      Swing swing = budget.swings().get(0);
      Spread values = swing.counted();
      sentences.add(
          String.format(
              Locale.ROOT,
              "Of the plan's numbers the %s alone moves rank 1 most: a net of %+,.0f %s for the field"
                  + " at %s, %+,.0f at %s.",
              swing.input().words(),
              swing.netAtLow(),
              budget.facts().currency(),
              swing.words(values.low()),
              swing.netAtHigh(),
              swing.words(values.high())));
    }
    return sentences;
  }

  private static String capital(String words) {
    return words.substring(0, 1).toUpperCase(Locale.ROOT) + words.substring(1);
  }

  private String text(double value) {
    return comparison.measure().text(value);
  }
}
