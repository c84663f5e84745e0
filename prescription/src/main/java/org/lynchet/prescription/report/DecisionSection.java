package org.lynchet.prescription.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.lynchet.prescription.compare.Candidate;
import org.lynchet.prescription.compare.Comparison;
import org.lynchet.prescription.compare.Measure;
import org.lynchet.prescription.compare.Notes;
import org.lynchet.prescription.compare.Outcome;
import org.lynchet.prescription.compare.Verdict;
import org.lynchet.prescription.quantity.Spread;
import org.lynchet.prescription.response.YieldForecast.CropYield;

/** Writes the answer, the best candidates beside the plan's own, and what drives the ranking. */
final class DecisionSection {
  private static final int SHOWN = 8;

  private final Comparison comparison;
  private final Html html;
  private final boolean money;
  private final List<String> columns;

  private DecisionSection(Comparison comparison, Html html) {
    this.comparison = comparison;
    this.html = html;
    this.money = comparison.measure() == Measure.NET;
    this.columns = columns();
  }

  static void write(Comparison comparison, Html html) {
    new DecisionSection(comparison, html).write();
  }

  private List<String> columns() {
    List<String> names = new ArrayList<>(List.of("Rank", "Strips", "Rows run", "Border rows"));
    if (money) {
      names.add("Net, " + comparison.currency() + "/" + comparison.area().symbol());
      names.add("Low to high");
    }
    names.add(money ? "Land ratio" : "Land ratio, low to high");
    for (CropYield crop : comparison.ranked().get(0).light().crops()) {
      names.add(crop.crop());
    }
    names.add("Hours");
    return names;
  }

  private void write() {
    html.element("p", Verdict.answer(comparison), "class", "answer");
    html.open("section").element("h2", "The best of " + comparison.ranked().size());
    html.open("table", "class", "cards").head(columns).open("tbody");
    comparison.ranked().stream().limit(SHOWN).forEach(this::row);
    Optional<Outcome> planned = comparison.findPlanned();
    if (planned.isPresent() && comparison.rank(planned.get()) > SHOWN) {
      row(planned.get());
    }
    html.close().close();
    html.element(
        "p",
        "* is the plan as it stands. Yields are typical and against separate blocks of the same"
            + " crops; the land ratio is the land that blocks need for the same harvest. "
            + String.join(" ", Notes.of(comparison)),
        "class",
        "note");
    html.element("h3", "What drives the ranking, the strongest first").open("ul");
    Verdict.drivers(comparison).forEach(sentence -> html.element("li", sentence));
    html.close().close();
  }

  private void row(Outcome outcome) {
    Candidate candidate = outcome.candidate();
    List<String> cells = new ArrayList<>();
    cells.add(comparison.rank(outcome) + (candidate.planned() ? " *" : ""));
    cells.add(candidate.widthWords(comparison.length()));
    cells.add(candidate.headingWords());
    cells.add(candidate.borderWords());
    Spread land = outcome.light().landEquivalentRatio();
    if (money) {
      Spread net = comparison.measure().of(outcome, comparison.area());
      cells.add(NumberWords.signed(net.typical(), 2));
      cells.add(NumberWords.signed(net.low(), 2) + " to " + NumberWords.signed(net.high(), 2));
      cells.add(String.format(Locale.ROOT, "%.3f", land.typical()));
    } else {
      cells.add(
          String.format(
              Locale.ROOT, "%.3f, %.3f to %.3f", land.typical(), land.low(), land.high()));
    }
    for (CropYield crop : outcome.light().crops()) {
      cells.add(NumberWords.percent(crop.relativeYield().typical() - 1));
    }
    cells.add(String.format(Locale.ROOT, "%.1f", outcome.facts().hours()));
    html.row(columns, cells, candidate.planned() ? "planned" : "candidate");
  }
}
