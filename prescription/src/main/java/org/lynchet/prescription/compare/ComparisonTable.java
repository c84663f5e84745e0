package org.lynchet.prescription.compare;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import org.lynchet.prescription.budget.BudgetTable;
import org.lynchet.prescription.budget.TextLines;
import org.lynchet.prescription.quantity.Spread;
import org.lynchet.prescription.response.Cautions;

/** Shows a comparison as a table of at most 100 columns. */
public final class ComparisonTable {
  private static final int SHOWN = 12;
  private static final int WIDTHS = 50;

  private static final String PLANNED = " *";

  private final Comparison comparison;
  private final TextLines text = new TextLines();

  private ComparisonTable(Comparison comparison) {
    this.comparison = comparison;
  }

  /** The answer, the best candidates and the plan's own, and what drives them. */
  public static String of(Comparison comparison) {
    ComparisonTable table = new ComparisonTable(comparison);
    table.head();
    table.candidates();
    table.drivers();
    table.notes();
    return table.text.toString();
  }

  private void head() {
    String field = comparison.plan().field().name();
    text.wrap(field + ". " + Verdict.answer(comparison));
    text.line("");
    text.line(
        "%4s %-50s %9s %16s %6s %7s",
        "RANK",
        "CANDIDATE (* as planned)",
        comparison.measure() == Measure.NET ? "NET" : "",
        comparison.measure() == Measure.NET ? "low to high" : "LAND low-high",
        "LAND",
        "HOURS");
  }

  private void candidates() {
    comparison.ranked().stream().limit(SHOWN).forEach(this::candidate);
    Optional<Outcome> planned = comparison.findPlanned();
    if (planned.isPresent() && comparison.rank(planned.get()) > SHOWN) {
      text.line("   ...");
      candidate(planned.get());
    }
    text.line("");
  }

  private void candidate(Outcome outcome) {
    Candidate candidate = outcome.candidate();
    Spread spread = comparison.measure().of(outcome, comparison.area());
    boolean net = comparison.measure() == Measure.NET;
    List<String> strips =
        lines(candidate.widthWords(comparison.length()) + (candidate.planned() ? PLANNED : ""));
    text.line(
        "%4d %-50s %9s %16s %6.3f %7.2f",
        comparison.rank(outcome),
        strips.get(0),
        net ? text(spread.typical()) : "",
        text(spread.low()) + (net ? " to " : "-") + text(spread.high()),
        outcome.light().landEquivalentRatio().typical(),
        outcome.facts().hours());
    strips.stream().skip(1).forEach(more -> text.line("     %s", more));
    text.wrap(
        "    ",
        String.format(
            Locale.ROOT,
            "%s; border rows: %s; %s",
            candidate.headingWords(),
            candidate.borderWords(),
            yields(outcome)));
  }

  /** Strips in lines that fit the column, no strip in two lines. */
  private static List<String> lines(String strips) {
    List<String> lines = new ArrayList<>();
    StringBuilder line = new StringBuilder();
    for (String strip : strips.split(", ", -1)) {
      String shown = TextLines.cut(strip, WIDTHS - 1);
      if (line.length() > 0 && line.length() + 2 + shown.length() > WIDTHS - 1) {
        lines.add(line.append(',').toString());
        line = new StringBuilder();
      }
      line.append(line.length() > 0 ? ", " : "").append(shown);
    }
    lines.add(line.toString());
    return lines;
  }

  private static String yields(Outcome outcome) {
    return outcome.light().crops().stream()
        .map(
            crop ->
                String.format(
                    Locale.ROOT,
                    "%s %+.1f %%",
                    crop.crop(),
                    100 * (crop.relativeYield().typical() - 1)))
        .collect(Collectors.joining(", "));
  }

  private void drivers() {
    text.line("What drives the ranking, the strongest first");
    Verdict.drivers(comparison).forEach(sentence -> text.wrap("- " + sentence));
    text.line("");
  }

  private void notes() {
    Notes.of(comparison).forEach(text::wrap);
    if (comparison.measure() == Measure.NET) {
      text.wrap(BudgetTable.PRICES);
    }
    text.add(Cautions.text(comparison.plan().forecast().season()));
  }

  private String text(double value) {
    return comparison.measure().text(value);
  }
}
