package org.lynchet.prescription.driving;

import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.util.Locale;
import org.lynchet.prescription.driving.LoadingChart.Misplanted;
import org.lynchet.prescription.json.JsonNumbers;

/** Writes the fields {@code driving} and {@code loading} of summary.json. */
public final class DrivingJson {
  private static final int DECIMALS = 4;

  private final JsonGenerator json;
  private final JsonNumbers numbers;

  private DrivingJson(JsonGenerator json) {
    this.json = json;
    this.numbers = JsonNumbers.shortest(json, DECIMALS);
  }

  /**
   * Writes both fields into the object that is open: metres, hours and square metres an hour,
   * rounded to 4 decimals.
   *
   * @throws IOException if the generator cannot write
   */
  public static void write(Driving driving, JsonGenerator json) throws IOException {
    new DrivingJson(json).write(driving);
  }

  private void write(Driving driving) throws IOException {
    json.writeArrayFieldStart("driving");
    for (CropDriving one : driving.all()) {
      write(one);
    }
    json.writeEndArray();
    json.writeArrayFieldStart("loading");
    for (PlanterDriving one : driving.planters()) {
      Loading loading = one.loading();
      if (loading != null) {
        write(one, loading);
      }
    }
    json.writeEndArray();
  }

  private void write(CropDriving one) throws IOException {
    DrivingPlan plan = one.chosen();
    json.writeStartObject();
    json.writeStringField("machine", one.machineName());
    json.writeStringField("crop", one.crop());
    numbers.field("capacity_m2_per_h", one.capacitySquareMetresPerHour());
    numbers.field("hours_at_capacity", one.hoursAtCapacity());
    totals(plan);
    passes(plan);
    json.writeArrayFieldStart("turn_widths_m");
    for (Turn turn : plan.turns()) {
      numbers.item(turn.widthMetres());
    }
    json.writeEndArray();
    json.writeArrayFieldStart("other_orders");
    for (DrivingPlan other : one.others()) {
      json.writeStartObject();
      totals(other);
      json.writeEndObject();
    }
    json.writeEndArray();
    json.writeEndObject();
  }

  private void passes(DrivingPlan plan) throws IOException {
    json.writeArrayFieldStart("passes");
    for (Trip trip : plan.trips()) {
      json.writeStartObject();
      json.writeNumberField("pass", trip.pass().number());
      json.writeStringField("direction", trip.direction().word());
      json.writeEndObject();
    }
    json.writeEndArray();
  }

  private void totals(DrivingPlan plan) throws IOException {
    json.writeStringField("order", plan.order().words());
    numbers.field("in_row_m", plan.inRowMetres());
    numbers.field("gaps_m", plan.gapMetres());
    numbers.field("turning_m", plan.turningMetres());
    json.writeNumberField("turns", plan.turns().size());
    json.writeNumberField("loops", plan.loops());
    numbers.field("in_row_h", plan.inRowHours());
    numbers.field("gaps_h", plan.gapHours());
    numbers.field("turning_h", plan.turningHours());
    numbers.field("driving_h", plan.drivingHours());
    numbers.field("share_in_row", plan.shareInRow());
  }

  private void write(PlanterDriving one, Loading loading) throws IOException {
    json.writeStartObject();
    json.writeStringField("machine", one.planter().name());
    json.writeStringField("crop", one.crop());
    chart(loading.chosen());
    if (loading.headlandProduct() != null && loading.chosen().isUsable()) {
      json.writeStringField("headland_product", loading.headlandProduct());
      numbers.field(
          "row_units_to_change_for_headland",
          Loading.unitsUnlike(loading.headlandProduct(), loading.chosen().chart()));
    }
    json.writeArrayFieldStart("advice");
    for (String way : loading.advice()) {
      json.writeString(way);
    }
    json.writeEndArray();
    json.writeArrayFieldStart("other_orders");
    for (Loading.Charted other : loading.others()) {
      json.writeStartObject();
      chart(other);
      json.writeEndObject();
    }
    json.writeEndArray();
    json.writeEndObject();
  }

  /** A chart that serves too few passes is no chart: its row units are null. */
  private void chart(Loading.Charted charted) throws IOException {
    LoadingChart chart = charted.chart();
    json.writeStringField("order", charted.plan().order().words());
    json.writeStringField("serves", chart.serves().name().toLowerCase(Locale.ROOT));
    json.writeNumberField("excepted_passes", chart.exceptedPasses());
    if (!charted.isUsable()) {
      json.writeNullField("row_units");
      return;
    }
    passes(charted.plan());
    json.writeNumberField("loops", charted.plan().loops());
    numbers.field("turning_m", charted.plan().turningMetres());
    json.writeArrayFieldStart("row_units");
    for (String product : chart.products()) {
      json.writeString(product);
    }
    json.writeEndArray();
    json.writeArrayFieldStart("exceptions");
    for (Misplanted rows : chart.exceptions()) {
      json.writeStartObject();
      json.writeNumberField("pass", rows.pass());
      json.writeNumberField("strip", rows.strip());
      numbers.field("row_units", rows.units());
      json.writeStringField("planned", rows.wanted());
      json.writeStringField("loaded", rows.loaded());
      numbers.field("row_length_m", rows.rowMetres());
      json.writeEndObject();
    }
    json.writeEndArray();
  }
}
