package org.lynchet.prescription.placement;

import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.math.BigDecimal;
import java.math.RoundingMode;
import org.lynchet.prescription.plan.PlannedGuidance.Position;

/** Writes the field {@code placement} of summary.json. */
public final class PlacementJson {
  private final JsonGenerator json;

  private PlacementJson(JsonGenerator json) {
    this.json = json;
  }

  /**
   * Writes the field into the object that is open: metres, square metres, degrees and shares of 1,
   * rounded to 4 decimals; positions to 9.
   *
   * @throws IOException if the generator cannot write
   */
  public static void write(PlacementResult result, JsonGenerator json) throws IOException {
    new PlacementJson(json).write(result);
  }

  private void write(PlacementResult result) throws IOException {
    Placement fixed = result.fixed();
    Placement chosen = result.chosen();
    json.writeObjectFieldStart("placement");
    json.writeNumberField("headings_tried", result.headings());
    json.writeNumberField("placements_tried", result.placements());
    number("turned_degrees", chosen.turnDegrees());
    number("moved_right_m", chosen.shiftMetres());
    json.writeObjectFieldStart("ab_line");
    position("a", result.a());
    position("b", result.b());
    number("heading_degrees", Math.rint(result.frame().headingDegrees() * 1e4) / 1e4 % 360);
    json.writeEndObject();
    json.writeArrayFieldStart("terms");
    for (Term term : Term.values()) {
      json.writeStartObject();
      json.writeStringField("term", term.key());
      json.writeStringField("unit", term.isArea() ? "m2" : "count");
      number("weight_m2", term.weight(result.weights()));
      number("fixed", term.amount(fixed.terms()));
      number("fixed_cost_m2", term.costSquareMetres(fixed.terms(), result.weights()));
      number("chosen", term.amount(chosen.terms()));
      number("chosen_cost_m2", term.costSquareMetres(chosen.terms(), result.weights()));
      json.writeEndObject();
    }
    json.writeEndArray();
    number("fixed_cost_m2", fixed.costSquareMetres());
    number("chosen_cost_m2", chosen.costSquareMetres());
    crops(result);
    json.writeEndObject();
  }

  private void crops(PlacementResult result) throws IOException {
    json.writeArrayFieldStart("crops");
    for (String crop : result.wantedShares().keySet()) {
      json.writeStartObject();
      json.writeStringField("crop", crop);
      number("wanted_share", result.wantedShares().getOrDefault(crop, 0.0));
      number("fixed_share", result.fixed().share(crop));
      number("chosen_share", result.chosen().share(crop));
      json.writeEndObject();
    }
    json.writeEndArray();
  }

  private void position(String name, Position position) throws IOException {
    json.writeArrayFieldStart(name);
    json.writeNumber(rounded(position.longitudeDegrees(), 9));
    json.writeNumber(rounded(position.latitudeDegrees(), 9));
    json.writeEndArray();
  }

  private void number(String name, double value) throws IOException {
    json.writeFieldName(name);
    json.writeNumber(rounded(value, 4));
  }

  private static String rounded(double value, int decimals) {
    return BigDecimal.valueOf(value)
        .setScale(decimals, RoundingMode.HALF_UP)
        .stripTrailingZeros()
        .toPlainString();
  }
}
