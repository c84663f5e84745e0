package org.lynchet.prescription.placement;

import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import org.lynchet.prescription.json.JsonNumbers;
import org.lynchet.prescription.plan.PlannedGuidance.Position;

/** Writes the field {@code placement} of summary.json. */
public final class PlacementJson {
  private static final int DECIMALS = 4;
  private static final int DEGREE_DECIMALS = 9;

  private final JsonGenerator json;
  private final JsonNumbers numbers;
  private final JsonNumbers degrees;

  private PlacementJson(JsonGenerator json) {
    this.json = json;
    this.numbers = JsonNumbers.shortest(json, DECIMALS);
    this.degrees = JsonNumbers.shortest(json, DEGREE_DECIMALS);
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
    numbers.field("turned_degrees", chosen.turnDegrees());
    numbers.field("moved_right_m", chosen.shiftMetres());
    json.writeObjectFieldStart("ab_line");
    position("a", result.a());
    position("b", result.b());
    numbers.field("heading_degrees", Math.rint(result.frame().headingDegrees() * 1e4) / 1e4 % 360);
    json.writeEndObject();
    json.writeArrayFieldStart("terms");
    for (Term term : Term.values()) {
      json.writeStartObject();
      json.writeStringField("term", term.key());
      json.writeStringField("unit", term.isArea() ? "m2" : "count");
      numbers.field("weight_m2", term.weight(result.weights()));
      numbers.field("fixed", term.amount(fixed.terms()));
      numbers.field("fixed_cost_m2", term.costSquareMetres(fixed.terms(), result.weights()));
      numbers.field("chosen", term.amount(chosen.terms()));
      numbers.field("chosen_cost_m2", term.costSquareMetres(chosen.terms(), result.weights()));
      json.writeEndObject();
    }
    json.writeEndArray();
    numbers.field("fixed_cost_m2", fixed.costSquareMetres());
    numbers.field("chosen_cost_m2", chosen.costSquareMetres());
    crops(result);
    json.writeEndObject();
  }

  private void crops(PlacementResult result) throws IOException {
    json.writeArrayFieldStart("crops");
    for (String crop : result.wantedShares().keySet()) {
      json.writeStartObject();
      json.writeStringField("crop", crop);
      numbers.field("wanted_share", result.wantedShares().getOrDefault(crop, 0.0));
      numbers.field("fixed_share", result.fixed().share(crop));
      numbers.field("chosen_share", result.chosen().share(crop));
      json.writeEndObject();
    }
    json.writeEndArray();
  }

  private void position(String name, Position position) throws IOException {
    json.writeArrayFieldStart(name);
    degrees.item(position.longitudeDegrees());
    degrees.item(position.latitudeDegrees());
    json.writeEndArray();
  }
}
