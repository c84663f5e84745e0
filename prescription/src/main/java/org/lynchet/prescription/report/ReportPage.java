package org.lynchet.prescription.report;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import org.lynchet.prescription.budget.BudgetTable;
import org.lynchet.prescription.budget.StripBudget;
import org.lynchet.prescription.compare.Candidate;
import org.lynchet.prescription.compare.Comparison;
import org.lynchet.prescription.compare.Verdict;
import org.lynchet.prescription.fault.RejectedException;
import org.lynchet.prescription.picture.PagePicture;
import org.lynchet.prescription.quantity.Count;
import org.lynchet.prescription.response.Cautions;
import org.lynchet.prescription.summary.SeedOrder;
import org.lynchet.prescription.zone.FieldData;

/** Writes a comparison as one page of HTML. */
public final class ReportPage {
  private static final String STYLE = "report.css";

  private final Comparison comparison;
  private final BestCandidate best;
  private final Html html = new Html();

  private ReportPage(Comparison comparison, BestCandidate best) {
    this.comparison = comparison;
    this.best = best;
  }

  /**
   * The page.
   *
   * @param field the field that was compared on
   * @throws RejectedException if the best candidate cannot be laid out again
   */
  public static String of(Comparison comparison, FieldData field) throws RejectedException {
    ReportPage page = new ReportPage(comparison, BestCandidate.of(comparison, field));
    page.write();
    return page.html.toString();
  }

  private void write() {
    String title = comparison.plan().field().name() + ": strips or blocks";
    html.open("html", "xmlns", "http://www.w3.org/1999/xhtml", "lang", "en").open("head");
    html.empty("meta", "charset", "utf-8");
    html.empty("meta", "name", "viewport", "content", "width=device-width, initial-scale=1");
    html.element("title", title).element("style", style()).close();
    html.open("body").open("header").element("h1", title).close().open("main");
    DecisionSection.write(comparison, html);
    charts();
    StripBudget budget = best.outcome().budget();
    if (budget != null) {
      MoneySection.write(budget, comparison.area(), html);
    }
    cautions();
    html.open("div", "class", "sheet");
    map();
    seed();
    html.close();
    assumptions();
    html.close().close().close();
  }

  private static String style() {
    try (InputStream in = ReportPage.class.getResourceAsStream(STYLE)) {
      return new String(Objects.requireNonNull(in).readAllBytes(), StandardCharsets.UTF_8);
    } catch (IOException e) {
      throw new UncheckedIOException("the program's own style cannot be read", e);
    }
  }

  private String bestWords() {
    Candidate candidate = best.outcome().candidate();
    return candidate.widthWords(comparison.length())
        + ", "
        + candidate.headingWords()
        + ", border rows: "
        + candidate.borderWords();
  }

  private void charts() {
    html.open("section", "class", "charts");
    html.element("h2", "Light and yield by row of rank 1");
    html.element(
        "p",
        "What follows is of rank 1: "
            + bestWords()
            + (Verdict.isBlocks(comparison)
                ? "; although blocks are forecast to do as well or better."
                : "."),
        "class",
        "note");
    html.open("div", "class", "pair");
    figure(
        PagePicture.light(best.light()),
        "Light against a wide block. Bars: absorbed; short lines: incident at the height of the"
            + " canopy. One period of the pattern, its left and right side by their points of the"
            + " compass.",
        "chart");
    figure(
        PagePicture.yields(best.yields(), best.light().request().headingDegrees()),
        "Yield against a wide block. Bars: typical; lines: low to high.",
        "chart");
    html.close().close();
  }

  private void figure(String picture, String caption, String kind) {
    html.open("figure", "class", kind).open("div", "class", "picture");
    html.written(picture).close();
    html.element("figcaption", caption).close();
  }

  private void map() {
    html.open("section", "class", "map").element("h2", "The map of rank 1");
    figure(
        PagePicture.map(best.layout()),
        String.format(
            Locale.ROOT,
            "AB line on %.2f degrees from true north, turned by %.2f degrees from the plan's; %s"
                + " of planters, %d of them partial. North is up.",
            best.outcome().candidate().headingDegrees(),
            best.outcome().candidate().turnDegrees(),
            Count.of(best.outcome().facts().passes(), "pass"),
            best.outcome().facts().partialPasses()),
        "map");
    html.close();
  }

  private void seed() {
    List<String> columns = List.of("Product", "Crop", "Seeds", "Units");
    html.open("section", "class", "seed").element("h2", "Seed of rank 1");
    html.open("table").head(columns).open("tbody");
    for (SeedOrder order : best.outcome().facts().seed()) {
      html.row(
          columns,
          List.of(
              order.product(),
              order.crop(),
              String.format(Locale.ROOT, "%,.0f", order.seeds()),
              order.units() == null ? "not known" : order.units().toString()),
          "order");
    }
    html.close().close().close();
  }

  private void assumptions() {
    List<String> columns = List.of("What", "Value", "Source", "Key of the plan");
    html.open("section", "class", "assumptions");
    html.element("h2", "What is taken for granted, and how to change it");
    html.open("table").head(columns).open("tbody");
    for (Assumption one :
        Assumptions.of(comparison.plan(), best.light().request(), best.outcome().facts().seed())) {
      html.row(
          columns,
          List.of(one.what(), one.value(), one.source(), one.change()),
          one.source().equals(Assumption.PLAN) ? "planned" : "default");
    }
    html.close().close().close();
  }

  private void cautions() {
    html.open("section", "class", "cautions").element("h2", "Cautions").open("ul");
    if (best.outcome().budget() != null) {
      html.element("li", BudgetTable.PRICES);
    }
    Cautions.sentences(comparison.plan().forecast().season())
        .forEach(caution -> html.element("li", caution));
    html.close().close();
  }
}
