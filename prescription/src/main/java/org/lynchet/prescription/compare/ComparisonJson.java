package org.lynchet.prescription.compare;

import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import org.lynchet.prescription.budget.StripBudget;
import org.lynchet.prescription.fit.StripWidth;
import org.lynchet.prescription.json.JsonNumbers;
import org.lynchet.prescription.json.JsonText;
import org.lynchet.prescription.plan.PlannedStrip;
import org.lynchet.prescription.plan.PlannedStrip.Border;
import org.lynchet.prescription.response.YieldForecast.CropYield;
import org.lynchet.prescription.summary.SeedOrder;

/** Writes a comparison as JSON: all candidates by rank, numbers to 6 decimals, money to 2. */
public final class ComparisonJson {
  private static final int SCHEMA_VERSION = 1;
  private static final int DECIMALS = 6;
  private static final int CENTS = 2;

  private final Comparison comparison;
  private final JsonGenerator json;
  private final JsonNumbers numbers;
  private final JsonNumbers money;
  private final JsonNumbers whole;

  private ComparisonJson(Comparison comparison, JsonGenerator json) {
    this.comparison = comparison;
    this.json = json;
    this.numbers = JsonNumbers.shortest(json, DECIMALS);
    this.money = JsonNumbers.shortest(json, CENTS);
    this.whole = JsonNumbers.shortest(json, 0);
  }

  /** The JSON text. */
  public static String of(Comparison comparison) {
    return JsonText.of(json -> new ComparisonJson(comparison, json).write());
  }

  private void write() throws IOException {
    json.writeStartObject();
    json.writeNumberField("schemaVersion", SCHEMA_VERSION);
    json.writeStringField("field", comparison.plan().field().name());
    json.writeStringField("measure", comparison.measure() == Measure.NET ? "net" : "land");
    if (comparison.measure() == Measure.NET) {
      json.writeStringField("currency", comparison.currency());
      json.writeStringField("area_unit", comparison.area().symbol());
    }
    json.writeBooleanField("plant_blocks", Verdict.isBlocks(comparison));
    json.writeStringField("answer", Verdict.answer(comparison));
    json.writeNumberField("widths_compared", comparison.widths());
    json.writeNumberField("widths_that_fit", comparison.widthsThatFit());
    json.writeNumberField("candidates_without_a_crop", comparison.withoutCrop().size());
    json.writeNumberField("candidates_that_are_blocks", comparison.separateBlocks().size());
    drivers();
    json.writeArrayFieldStart("candidates");
    for (Outcome outcome : comparison.ranked()) {
      outcome(outcome);
    }
    json.writeEndArray();
    json.writeEndObject();
  }

  private void drivers() throws IOException {
    json.writeArrayFieldStart("drivers");
    for (Driver driver : comparison.drivers()) {
      json.writeStartObject();
      json.writeStringField("name", driver.name());
      json.writeStringField("best", driver.best());
      numbers.field("best_mean", driver.bestMean());
      json.writeStringField("worst", driver.worst());
      numbers.field("worst_mean", driver.worstMean());
      json.writeEndObject();
    }
    json.writeEndArray();
  }

  private void outcome(Outcome outcome) throws IOException {
    Candidate candidate = outcome.candidate();
    json.writeStartObject();
    json.writeNumberField("rank", comparison.rank(outcome));
    json.writeBooleanField("planned", candidate.planned());
    numbers.field("heading_degrees", candidate.headingDegrees());
    numbers.field("turned_degrees", candidate.turnDegrees());
    json.writeArrayFieldStart("strips");
    for (int i = 0; i < candidate.strips().size(); i++) {
      strip(candidate.strips().get(i), candidate.widths().get(i));
    }
    json.writeEndArray();
    numbers.field("land_equivalent_ratio", outcome.light().landEquivalentRatio());
    StripBudget budget = outcome.budget();
    if (budget != null) {
      money.field("net", budget.net());
      money.field("net_per_area", budget.netPer(comparison.area()));
    }
    crops(outcome);
    field(outcome.facts());
    json.writeEndObject();
  }

  private void strip(PlannedStrip strip, StripWidth width) throws IOException {
    json.writeStartObject();
    json.writeStringField("crop", strip.crop());
    json.writeStringField("planted_by", strip.plantedBy());
    json.writeNumberField("passes", strip.passes());
    json.writeNumberField("rows", width.rows());
    numbers.field("width_m", width.widthMetres());
    Border border = strip.border();
    json.writeNumberField("border_rows", border == null ? 0 : border.rows());
    json.writeBooleanField("border_left", border != null && border.sides().left());
    json.writeBooleanField("border_right", border != null && border.sides().right());
    json.writeEndObject();
  }

  private void crops(Outcome outcome) throws IOException {
    json.writeArrayFieldStart("crops");
    for (CropYield crop : outcome.light().crops()) {
      json.writeStartObject();
      json.writeStringField("crop", crop.crop());
      numbers.field(
          "strips_m2", outcome.facts().stripSquareMetres().getOrDefault(crop.crop(), 0.0));
      numbers.field("relative_absorbed", crop.relativeAbsorbed());
      numbers.field("relative_yield", crop.relativeYield());
      json.writeEndObject();
    }
    json.writeEndArray();
  }

  private void field(FieldFacts facts) throws IOException {
    numbers.field("hours", facts.hours());
    json.writeNumberField("passes", facts.passes());
    json.writeNumberField("partial_passes", facts.partialPasses());
    json.writeArrayFieldStart("seed");
    for (SeedOrder order : facts.seed()) {
      json.writeStartObject();
      json.writeStringField("product", order.product());
      json.writeStringField("crop", order.crop());
      whole.field("seeds", Math.rint(order.seeds()));
      if (order.units() != null) {
        json.writeNumberField("units", order.units());
      }
      json.writeEndObject();
    }
    json.writeEndArray();
  }
}
