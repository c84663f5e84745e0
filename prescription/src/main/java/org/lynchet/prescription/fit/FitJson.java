package org.lynchet.prescription.fit;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;

/** Writes candidates as JSON: those that fit by rank, then the others. */
public final class FitJson {
  private static final int SCHEMA_VERSION = 1;

  private final JsonGenerator json;

  private FitJson(JsonGenerator json) {
    this.json = json;
  }

  /** The JSON text. */
  public static String of(Fit fit) {
    StringWriter text = new StringWriter();
    try (JsonGenerator json = new JsonFactory().createGenerator(text)) {
      json.useDefaultPrettyPrinter();
      new FitJson(json).write(fit);
    } catch (IOException impossible) {
      throw new UncheckedIOException(impossible);
    }
    return text.append('\n').toString();
  }

  private void write(Fit fit) throws IOException {
    json.writeStartObject();
    json.writeNumberField("schemaVersion", SCHEMA_VERSION);
    json.writeBooleanField("complete", fit.complete());
    number("widest_strip_tried_m", fit.widestTriedMetres());
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
    number("period_m", candidate.periodMetres());
    json.writeBooleanField("equal_widths", candidate.equalWidths());
    json.writeBooleanField("period_is_whole_booms", candidate.wholeBooms());
    json.writeArrayFieldStart("strips");
    for (StripWidth strip : candidate.strips()) {
      json.writeStartObject();
      json.writeStringField("crop", strip.crop());
      json.writeNumberField("passes", strip.passes());
      json.writeNumberField("rows", strip.rows());
      number("width_m", strip.widthMetres());
      number("border_row_share", strip.borderRowShare());
      number("share", strip.share());
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

  private void integers(String name, List<Integer> values) throws IOException {
    json.writeArrayFieldStart(name);
    for (int value : values) {
      json.writeNumber(value);
    }
    json.writeEndArray();
  }

  private void write(MachineFit machine) throws IOException {
    json.writeStartObject();
    json.writeStringField("machine", machine.machine());
    json.writeStringField("crop", machine.crop());
    json.writeNumberField("passes", machine.passes());
    number("mismatch_mm_per_pass", machine.mismatchMillimetresPerPass());
    integers("rows_per_pass", machine.rowsPerPass());
    json.writeNumberField("rows_left_over", machine.rowsLeftOver());
    integers("open_sections", machine.openSections());
    json.writeNumberField("shut_sections_over_other_crop", machine.shutOverOther());
    json.writeNumberField("wheels", machine.wheels());
    json.writeNumberField("wheels_on_rows", machine.wheelsOnRows());
    json.writeNumberField("wheels_in_other_crop", machine.wheelsInOtherCrop());
    json.writeBooleanField("fits", machine.fits());
    json.writeEndObject();
  }

  private void number(String name, double value) throws IOException {
    BigDecimal rounded =
        BigDecimal.valueOf(value).setScale(6, RoundingMode.HALF_UP).stripTrailingZeros();
    json.writeFieldName(name);
    json.writeNumber(rounded.toPlainString());
  }
}
