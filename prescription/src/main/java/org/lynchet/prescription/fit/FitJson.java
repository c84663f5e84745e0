package org.lynchet.prescription.fit;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** Writes candidates as JSON: those that fit by rank, then the others. */
public final class FitJson {
  private static final int SCHEMA_VERSION = 1;

  private final JsonGenerator json;

  private FitJson(JsonGenerator json) {
    this.json = json;
  }

  /** The JSON text. */
  public static String of(List<Candidate> candidates) {
    StringWriter text = new StringWriter();
    try (JsonGenerator json = new JsonFactory().createGenerator(text)) {
      json.useDefaultPrettyPrinter();
      new FitJson(json).write(candidates);
    } catch (IOException impossible) {
      throw new UncheckedIOException(impossible);
    }
    return text.append('\n').toString();
  }

  private void write(List<Candidate> candidates) throws IOException {
    json.writeStartObject();
    json.writeNumberField("schemaVersion", SCHEMA_VERSION);
    json.writeArrayFieldStart("candidates");
    for (int i = 0; i < candidates.size(); i++) {
      write(i + 1, candidates.get(i));
    }
    json.writeEndArray();
    json.writeEndObject();
  }

  private void write(int rank, Candidate candidate) throws IOException {
    json.writeStartObject();
    json.writeNumberField("rank", rank);
    json.writeBooleanField("fits", candidate.fits());
    number("period_m", candidate.periodMetres());
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

  private void write(MachineFit machine) throws IOException {
    json.writeStartObject();
    json.writeStringField("machine", machine.machine());
    json.writeStringField("crop", machine.crop());
    json.writeNumberField("passes", machine.passes());
    number("mismatch_mm_per_pass", machine.mismatchMillimetresPerPass());
    countOrNull("rows_per_pass", machine.rowsPerPass());
    countOrNull("open_sections", machine.openSections());
    json.writeNumberField("closed_sections_over_other_crop", machine.closedOverOther());
    json.writeNumberField("wheels_on_rows", machine.wheelsOnRows());
    json.writeBooleanField("fits", machine.fits());
    json.writeEndObject();
  }

  private void countOrNull(String name, @Nullable Integer value) throws IOException {
    if (value == null) {
      json.writeNullField(name);
    } else {
      json.writeNumberField(name, value);
    }
  }

  private void number(String name, double value) throws IOException {
    BigDecimal rounded =
        BigDecimal.valueOf(value).setScale(6, RoundingMode.HALF_UP).stripTrailingZeros();
    json.writeFieldName(name);
    json.writeNumber(rounded.toPlainString());
  }
}
