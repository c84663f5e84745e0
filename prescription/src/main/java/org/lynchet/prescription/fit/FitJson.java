package org.lynchet.prescription.fit;

import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import org.lynchet.prescription.json.JsonNumbers;
import org.lynchet.prescription.json.JsonText;

/** Writes candidates as JSON: those that fit by rank, then the others. */
public final class FitJson {
  private static final int SCHEMA_VERSION = 1;
  private static final int DECIMALS = 6;

  private final JsonGenerator json;
  private final JsonNumbers numbers;

  private FitJson(JsonGenerator json) {
    this.json = json;
    this.numbers = JsonNumbers.shortest(json, DECIMALS);
  }

  /** The JSON text. */
  public static String of(Fit fit) {
    return JsonText.of(json -> new FitJson(json).write(fit));
  }

  private void write(Fit fit) throws IOException {
    json.writeStartObject();
    json.writeNumberField("schemaVersion", SCHEMA_VERSION);
    json.writeBooleanField("complete", fit.complete());
    numbers.field("widest_strip_tried_m", fit.widestTriedMetres());
    json.writeArrayFieldStart("candidates");
    for (int i = 0; i < fit.candidates().size(); i++) {
      write(i + 1, fit.candidates().get(i));
    }
    json.writeEndArray();
    json.writeEndObject();
  }

  private void write(int rank, Candidate candidate) throws IOException {
    json.writeStartObject();
    json.writeNumberField("rank", rank);
    json.writeBooleanField("fits", candidate.fits());
    json.writeBooleanField("planned", candidate.planned());
    numbers.field("period_m", candidate.periodMetres());
    json.writeBooleanField("equal_widths", candidate.equalWidths());
    json.writeBooleanField("period_is_whole_booms", candidate.wholeBooms());
    json.writeArrayFieldStart("strips");
    for (StripWidth strip : candidate.strips()) {
      json.writeStartObject();
      json.writeStringField("crop", strip.crop());
      json.writeNumberField("passes", strip.passes());
      json.writeNumberField("rows", strip.rows());
      numbers.field("width_m", strip.widthMetres());
      numbers.field("border_row_share", strip.borderRowShare());
      numbers.field("share", strip.share());
      json.writeEndObject();
    }
    json.writeEndArray();
    json.writeArrayFieldStart("machines");
    for (MachineFit machine : candidate.machines()) {
      write(machine);
    }
    json.writeEndArray();
    json.writeArrayFieldStart("reasons");
    for (String reason : candidate.reasons()) {
      json.writeString(reason);
    }
    json.writeEndArray();
    json.writeEndObject();
  }

  private void write(MachineFit machine) throws IOException {
    json.writeStartObject();
    json.writeStringField("machine", machine.machine());
    json.writeStringField("crop", machine.crop());
    json.writeNumberField("passes", machine.passes());
    numbers.field("mismatch_mm_per_pass", machine.mismatchMillimetresPerPass());
    numbers.field("rows_per_pass", machine.rowsPerPass());
    json.writeNumberField("rows_left_over", machine.rowsLeftOver());
    numbers.field("open_sections", machine.openSections());
    json.writeNumberField("shut_sections_over_other_crop", machine.shutOverOther());
    json.writeNumberField("wheels", machine.wheels());
    json.writeNumberField("wheels_on_rows", machine.wheelsOnRows());
    json.writeNumberField("wheels_in_other_crop", machine.wheelsInOtherCrop());
    json.writeBooleanField("fits", machine.fits());
    json.writeEndObject();
  }
}
