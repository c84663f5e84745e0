package org.lynchet.prescription.compare;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.math.BigDecimal;
import java.math.RoundingMode;
import org.lynchet.prescription.budget.StripBudget;
import org.lynchet.prescription.fit.StripWidth;
import org.lynchet.prescription.plan.PlannedStrip;
import org.lynchet.prescription.plan.PlannedStrip.Border;
import org.lynchet.prescription.quantity.Spread;
import org.lynchet.prescription.response.YieldForecast.CropYield;
import org.lynchet.prescription.summary.SeedOrder;

/** Writes a comparison as JSON: all candidates by rank, numbers to 6 decimals, money to 2. */
public final class ComparisonJson {
  private static final int SCHEMA_VERSION = 1;
  private static final int DECIMALS = 6;
  private static final int CENTS = 2;

  private final Comparison comparison;
  private final JsonGenerator json;

  private ComparisonJson(Comparison comparison, JsonGenerator json) {
    this.comparison = comparison;
    this.json = json;
  }

  /** The JSON text. */
  public static String of(Comparison comparison) {
    StringWriter text = new StringWriter();
    try (JsonGenerator json = new JsonFactory().createGenerator(text)) {
      json.useDefaultPrettyPrinter();
      new ComparisonJson(comparison, json).write();
    } catch (IOException impossible) {
      throw new UncheckedIOException(impossible);
    }
    return text.append('\n').toString();
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
      number("best_mean", driver.bestMean(), DECIMALS);
      json.writeStringField("worst", driver.worst());
      number("worst_mean", driver.worstMean(), DECIMALS);
      json.writeEndObject();
    }
    json.writeEndArray();
  }

  private void outcome(Outcome outcome) throws IOException {
    Candidate candidate = outcome.candidate();
    json.writeStartObject();
    json.writeNumberField("rank", comparison.rank(outcome));
    json.writeBooleanField("planned", candidate.planned());
    number("heading_degrees", candidate.headingDegrees(), DECIMALS);
    number("turned_degrees", candidate.turnDegrees(), DECIMALS);
    json.writeArrayFieldStart("strips");
    for (int i = 0; i < candidate.strips().size(); i++) {
      strip(candidate.strips().get(i), candidate.widths().get(i));
    }
    json.writeEndArray();
    spread("land_equivalent_ratio", outcome.light().landEquivalentRatio(), DECIMALS);
    StripBudget budget = outcome.budget();
    if (budget != null) {
      spread("net", budget.net(), CENTS);
      spread("net_per_area", budget.netPer(comparison.area()), CENTS);
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
    number("width_m", width.widthMetres(), DECIMALS);
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
      number(
          "strips_m2",
          outcome.facts().stripSquareMetres().getOrDefault(crop.crop(), 0.0),
          DECIMALS);
      number("relative_absorbed", crop.relativeAbsorbed(), DECIMALS);
      spread("relative_yield", crop.relativeYield(), DECIMALS);
      json.writeEndObject();
    }
    json.writeEndArray();
  }

  private void field(FieldFacts facts) throws IOException {
    number("hours", facts.hours(), DECIMALS);
    json.writeNumberField("passes", facts.passes());
    json.writeNumberField("partial_passes", facts.partialPasses());
    json.writeArrayFieldStart("seed");
    for (SeedOrder order : facts.seed()) {
      json.writeStartObject();
      json.writeStringField("product", order.product());
      json.writeStringField("crop", order.crop());
      number("seeds", Math.rint(order.seeds()), 0);
      if (order.units() != null) {
        json.writeNumberField("units", order.units());
      }
      json.writeEndObject();
    }
    json.writeEndArray();
  }

  private void spread(String name, Spread spread, int decimals) throws IOException {
    json.writeObjectFieldStart(name);
    number("low", spread.low(), decimals);
    number("typical", spread.typical(), decimals);
    number("high", spread.high(), decimals);
    json.writeEndObject();
  }

  private void number(String name, double value, int decimals) throws IOException {
    json.writeFieldName(name);
    json.writeNumber(
        BigDecimal.valueOf(value)
            .setScale(decimals, RoundingMode.HALF_UP)
            .stripTrailingZeros()
            .toPlainString());
  }
}
