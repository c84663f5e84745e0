package org.lynchet.prescription.compare;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
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
    String figures =
        String.format(
            Locale.ROOT,
            "%s typically, from %s to %s",
            text(spread.typical()),
            text(spread.low()),
            text(spread.high()));
    if (isBlocks(comparison)) {
      return "Plant blocks: the best of "
          + count()
          + " brings no more than separate blocks ("
          + words()
          + " "
          + figures
          + "; blocks: "
          + text(blocks)
          + ").";
    }
    String safe =
        spread.low() > blocks
            ? "Even the low end is better than separate blocks."
            : "The low end is worse than separate blocks: try it on a part of the field first.";
    return "Strips: the best of "
        + count()
        + " is forecast above separate blocks ("
        + words()
        + " "
        + figures
        + "; blocks: "
        + text(blocks)
        + "). "
        + safe;
  }

  private String count() {
    int ranked = comparison.ranked().size();
    return ranked == 1 ? "1 candidate" : ranked + " candidates";
  }

  private List<String> drivers() {
    List<String> sentences = new ArrayList<>();
    for (Driver driver : comparison.drivers()) {
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
    return sentences;
  }

  private static String capital(String words) {
    return words.substring(0, 1).toUpperCase(Locale.ROOT) + words.substring(1);
  }

  private String words() {
    return comparison.measure().words(comparison.currency(), comparison.area());
  }

  private String text(double value) {
    return comparison.measure().text(value);
  }
}
