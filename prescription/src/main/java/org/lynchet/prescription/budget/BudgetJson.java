package org.lynchet.prescription.budget;

import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.math.BigDecimal;
import java.util.OptionalDouble;
import org.lynchet.prescription.driving.FieldTime;
import org.lynchet.prescription.fault.Warning;
import org.lynchet.prescription.json.JsonNumbers;
import org.lynchet.prescription.json.JsonText;
import org.lynchet.prescription.plan.GrainDelivered;
import org.lynchet.prescription.quantity.AreaUnit;
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
  private final JsonNumbers numbers;
  private final JsonNumbers money;
  private final JsonNumbers whole;

  private BudgetJson(FieldBudget field, JsonGenerator json) {
    this.field = field;
    this.strips = field.strips();
    this.area = field.summary().areaUnit();
    this.json = json;
    this.numbers = JsonNumbers.padded(json, DECIMALS);
    this.money = JsonNumbers.padded(json, CENTS);
    this.whole = JsonNumbers.padded(json, 0);
  }

  /** The JSON text. */
  public static String of(FieldBudget field) {
    return JsonText.of(json -> new BudgetJson(field, json).write());
  }

  private void write() throws IOException {
    json.writeStartObject();
    json.writeNumberField("schemaVersion", SCHEMA_VERSION);
    json.writeStringField("field", field.plan().field().name());
    json.writeStringField("currency", strips.facts().currency());
    json.writeStringField("area_unit", area.symbol());
    numbers.field("field_area", strips.facts().fieldSquareMetres() / area.squareMetres());
    json.writeStringField("verdict", Verdict.of(strips, area));
    money.field("net", strips.net());
    money.field("net_per_area", strips.netPer(area));
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
      money.field("change_of_net", item.change());
      json.writeEndObject();
    }
    json.writeEndArray();
  }

  private void crops() throws IOException {
    json.writeArrayFieldStart("crops");
    for (CropChange crop : strips.facts().crops()) {
      json.writeStartObject();
      json.writeStringField("crop", crop.crop());
      numbers.field("strip_area", crop.stripSquareMetres() / area.squareMetres());
      json.writeStringField("yield_unit", crop.unit().yieldSymbol());
      numbers.field("yield_in_blocks", crop.yieldInBlocks());
      delivered(crop.crop());
      numbers.field("price", crop.price());
      numbers.field("yield_change", crop.yieldChange());
      json.writeBooleanField(
          "yield_change_is_forecast", field.changes().forecast().contains(crop.crop()));
      numbers.field("break_even_yield_change", strips.breakEvenYieldChange(crop.crop()));
      numbers.field("break_even_price", strips.breakEvenPrice(crop.crop()));
      json.writeEndObject();
    }
    json.writeEndArray();
  }

  /** What becomes of the yield as the plan says it; null if it says it as it is sold. */
  private void delivered(String crop) throws IOException {
    GrainDelivered delivered = field.delivered(crop).orElse(null);
    if (delivered == null) {
      json.writeNullField("delivered");
      return;
    }
    json.writeObjectFieldStart("delivered");
    json.writeStringField("yield_unit", delivered.unit().yieldSymbol());
    numbers.field("yield", delivered.yield());
    numbers.field("moisture", delivered.shrink().moisture());
    numbers.field("standard_moisture", delivered.shrink().standard());
    numbers.field("handling_loss", delivered.shrink().handlingLoss());
    numbers.field("shrink", delivered.shrink().share());
    json.writeEndObject();
  }

  private void priceRatio() throws IOException {
    CropChange gaining = strips.gaining();
    CropChange losing = strips.losing();
    json.writeObjectFieldStart("price_ratio");
    json.writeStringField("of", gaining.crop());
    json.writeStringField("to", losing.crop());
    numbers.field("typical", gaining.price().typical() / losing.price().typical());
    numbers.field("break_even", strips.breakEvenPriceRatio(gaining.crop(), losing.crop()));
    json.writeEndObject();
  }

  private void swings() throws IOException {
    json.writeArrayFieldStart("swings");
    for (Swing swing : strips.swings()) {
      json.writeStartObject();
      json.writeStringField("input", swing.input().words());
      json.writeStringField("unit", swing.unit());
      numbers.field("value", swing.counted());
      money.field("net_at_low", swing.netAtLow());
      money.field("net_at_high", swing.netAtHigh());
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
      numbers.field("hours_in_strips", time.stripHours());
      numbers.field("hours_in_blocks", time.blockHours());
      json.writeNumberField("times", field.trips(time));
      json.writeEndObject();
    }
    json.writeEndArray();
    numbers.field("more_hours", strips.facts().moreHours());
  }

  private void seed() throws IOException {
    json.writeArrayFieldStart("seed");
    for (SeedCost seed : field.seed()) {
      json.writeStartObject();
      json.writeStringField("product", seed.order().product());
      json.writeStringField("crop", seed.order().crop());
      whole.field("border_seeds", seed.borderSeeds());
      whole.field("centre_seeds", seed.centreSeeds());
      whole.field("headland_seeds", seed.headlandSeeds());
      Double standing = seed.order().standing();
      whole.field(
          "standing_plants",
          standing == null ? OptionalDouble.empty() : OptionalDouble.of(standing));
      Long units = seed.order().units();
      BigDecimal cost = seed.cost();
      whole.field("units", units == null ? OptionalDouble.empty() : OptionalDouble.of(units));
      money.field(
          "cost", cost == null ? OptionalDouble.empty() : OptionalDouble.of(cost.doubleValue()));
      json.writeEndObject();
    }
    json.writeEndArray();
    money.field("more_seed", strips.facts().moreSeed());
  }

  private void rates() throws IOException {
    json.writeArrayFieldStart("seeding_rates");
    for (RateAdvice rate : field.rates()) {
      json.writeStartObject();
      json.writeStringField("product", rate.product());
      json.writeStringField("unit", "seeds/" + rate.unit().per().symbol());
      json.writeStringField("curve", rate.curve().toString());
      whole.field("pays_best", rate.economic());
      whole.field("yields_most", rate.response().agronomicOptimum());
      numbers.field("highest_yield", rate.response().highestYield());
      json.writeStringField("yield_unit", rate.unit().yieldSymbol());
      whole.field("least_tested", rate.response().leastTested());
      whole.field("most_tested", rate.response().mostTested());
      json.writeBooleanField("outside_trials", rate.isOutsideTrials());
      json.writeEndObject();
    }
    json.writeEndArray();
  }
}
