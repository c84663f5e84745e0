package org.lynchet.prescription.budget;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.OptionalDouble;
import org.lynchet.prescription.driving.FieldTime;
import org.lynchet.prescription.fault.Warning;
import org.lynchet.prescription.quantity.AreaUnit;
import org.lynchet.prescription.quantity.Spread;
import org.lynchet.prescription.response.Cautions;

/** Writes the money of a field as JSON; changes of yield are shares, null is what there is not. */
public final class BudgetJson {
  private static final int SCHEMA_VERSION = 1;
  private static final int CENTS = 2;
  private static final int DECIMALS = 4;

  private final FieldBudget field;
  private final StripBudget strips;
  private final AreaUnit area;
  private final JsonGenerator json;

  private BudgetJson(FieldBudget field, JsonGenerator json) {
    this.field = field;
    this.strips = field.strips();
    this.area = field.summary().areaUnit();
    this.json = json;
  }

  /** The JSON text. */
  public static String of(FieldBudget field) {
    StringWriter text = new StringWriter();
    try (JsonGenerator json = new JsonFactory().createGenerator(text)) {
      json.useDefaultPrettyPrinter();
      new BudgetJson(field, json).write();
    } catch (IOException impossible) {
      throw new UncheckedIOException(impossible);
    }
    return text.append('\n').toString();
  }

  private void write() throws IOException {
    json.writeStartObject();
    json.writeNumberField("schemaVersion", SCHEMA_VERSION);
    json.writeStringField("field", field.plan().field().name());
    json.writeStringField("currency", strips.facts().currency());
    json.writeStringField("area_unit", area.symbol());
    number("field_area", strips.facts().fieldSquareMetres() / area.squareMetres(), DECIMALS);
    json.writeStringField("verdict", Verdict.of(strips, area));
    spread("net", strips.net(), CENTS);
    spread("net_per_area", strips.netPer(area), CENTS);
    items();
    crops();
    priceRatio();
    swings();
    times();
    seed();
    rates();
    json.writeArrayFieldStart("warnings");
    for (Warning warning : field.warnings()) {
      json.writeStartObject();
      json.writeStringField("code", warning.code().name());
      json.writeStringField("text", warning.text());
      json.writeEndObject();
    }
    json.writeEndArray();
    json.writeStringField(
        "cautions", BudgetTable.PRICES + " " + Cautions.text(field.plan().forecast().season()));
    json.writeEndObject();
  }

  private void items() throws IOException {
    json.writeArrayFieldStart("items");
    for (NetItem item : strips.items()) {
      json.writeStartObject();
      json.writeStringField("part", item.part().key());
      json.writeStringField("item", item.item());
      spread("change_of_net", item.change(), CENTS);
      json.writeEndObject();
    }
    json.writeEndArray();
  }

  private void crops() throws IOException {
    json.writeArrayFieldStart("crops");
    for (CropChange crop : strips.facts().crops()) {
      json.writeStartObject();
      json.writeStringField("crop", crop.crop());
      number("strip_area", crop.stripSquareMetres() / area.squareMetres(), DECIMALS);
      json.writeStringField("yield_unit", crop.unit().yieldSymbol());
      spread("yield_in_blocks", crop.yieldInBlocks(), DECIMALS);
      spread("price", crop.price(), DECIMALS);
      spread("yield_change", crop.yieldChange(), DECIMALS);
      json.writeBooleanField(
          "yield_change_is_forecast", field.changes().forecast().contains(crop.crop()));
      optional("break_even_yield_change", strips.breakEvenYieldChange(crop.crop()), DECIMALS);
      optional("break_even_price", strips.breakEvenPrice(crop.crop()), DECIMALS);
      json.writeEndObject();
    }
    json.writeEndArray();
  }

  private void priceRatio() throws IOException {
    CropChange gaining = strips.gaining();
    CropChange losing = strips.losing();
    json.writeObjectFieldStart("price_ratio");
    json.writeStringField("of", gaining.crop());
    json.writeStringField("to", losing.crop());
    number("typical", gaining.price().typical() / losing.price().typical(), DECIMALS);
    optional("break_even", strips.breakEvenPriceRatio(gaining.crop(), losing.crop()), DECIMALS);
    json.writeEndObject();
  }

  private void swings() throws IOException {
    json.writeArrayFieldStart("swings");
    for (Swing swing : strips.swings()) {
      json.writeStartObject();
      json.writeStringField("input", swing.input().words());
      json.writeStringField("unit", swing.unit());
      spread("value", swing.counted(), DECIMALS);
      number("net_at_low", swing.netAtLow(), CENTS);
      number("net_at_high", swing.netAtHigh(), CENTS);
      json.writeEndObject();
    }
    json.writeEndArray();
  }

  private void times() throws IOException {
    json.writeArrayFieldStart("driving");
    for (FieldTime time : field.times()) {
      json.writeStartObject();
      json.writeStringField("machine", time.machine());
      json.writeStringField("crop", time.crop());
      number("hours_in_strips", time.stripHours(), DECIMALS);
      number("hours_in_blocks", time.blockHours(), DECIMALS);
      json.writeNumberField("times", field.trips(time));
      json.writeEndObject();
    }
    json.writeEndArray();
    number("more_hours", strips.facts().moreHours(), DECIMALS);
  }

  private void seed() throws IOException {
    json.writeArrayFieldStart("seed");
    for (SeedCost seed : field.seed()) {
      json.writeStartObject();
      json.writeStringField("product", seed.order().product());
      json.writeStringField("crop", seed.order().crop());
      number("border_seeds", seed.borderSeeds(), 0);
      number("centre_seeds", seed.centreSeeds(), 0);
      number("headland_seeds", seed.headlandSeeds(), 0);
      Long units = seed.order().units();
      BigDecimal cost = seed.cost();
      optional("units", units == null ? OptionalDouble.empty() : OptionalDouble.of(units), 0);
      optional(
          "cost",
          cost == null ? OptionalDouble.empty() : OptionalDouble.of(cost.doubleValue()),
          CENTS);
      json.writeEndObject();
    }
    json.writeEndArray();
    number("more_seed", strips.facts().moreSeed(), CENTS);
  }

  private void rates() throws IOException {
    json.writeArrayFieldStart("seeding_rates");
    for (RateAdvice rate : field.rates()) {
      json.writeStartObject();
      json.writeStringField("product", rate.product());
      json.writeStringField("unit", "seeds/" + rate.unit().per().symbol());
      spread("pays_best", rate.economic(), 0);
      number("yields_most", rate.response().agronomicOptimum(), 0);
      number("least_tested", rate.response().leastTested(), 0);
      number("most_tested", rate.response().mostTested(), 0);
      json.writeBooleanField("outside_trials", rate.isOutsideTrials());
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

  private void optional(String name, OptionalDouble value, int decimals) throws IOException {
    if (value.isPresent()) {
      number(name, value.getAsDouble(), decimals);
    } else {
      json.writeNullField(name);
    }
  }

  private void number(String name, double value, int decimals) throws IOException {
    json.writeFieldName(name);
    json.writeNumber(
        BigDecimal.valueOf(value).setScale(decimals, RoundingMode.HALF_UP).toPlainString());
  }
}
