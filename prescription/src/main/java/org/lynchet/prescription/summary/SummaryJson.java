package org.lynchet.prescription.summary;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.core.util.DefaultIndenter;
import com.fasterxml.jackson.core.util.DefaultPrettyPrinter;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.lynchet.geometry.guidance.CurveDirections;
import org.lynchet.prescription.driving.DrivingJson;
import org.lynchet.prescription.fault.Warning;
import org.lynchet.prescription.json.JsonNumbers;
import org.lynchet.prescription.placement.PlacementJson;
import org.lynchet.prescription.placement.PlacementResult;

/** Writes a summary as JSON, areas and lengths rounded to 4 decimals. */
public final class SummaryJson {
  /** The version of the form; it rises when a name changes its meaning or goes. */
  public static final int SCHEMA_VERSION = 1;

  private static final int DECIMALS = 4;

  private final JsonGenerator json;
  private final JsonNumbers numbers;

  private SummaryJson(JsonGenerator json) {
    this.json = json;
    this.numbers = JsonNumbers.shortest(json, DECIMALS);
  }

  /**
   * The text of summary.json.
   *
   * @param files the files beside it; empty if nothing was written
   */
  public static String of(Summary summary, List<WrittenFile> files) {
    return document(json -> new SummaryJson(json).write(summary, files));
  }

  /** Writes the fields of an object. */
  @FunctionalInterface
  public interface Fields {
    void write(JsonGenerator json) throws IOException;
  }

  /** The text of any summary.json: an object that begins with the version of the form. */
  public static String document(Fields fields) {
    StringWriter text = new StringWriter();
    DefaultPrettyPrinter printer =
        new DefaultPrettyPrinter()
            .withObjectIndenter(new DefaultIndenter("  ", "\n"))
            .withArrayIndenter(new DefaultIndenter("  ", "\n"));
    try (JsonGenerator json = new JsonFactory().createGenerator(text)) {
      json.setPrettyPrinter(printer);
      json.writeStartObject();
      json.writeNumberField("schemaVersion", SCHEMA_VERSION);
      fields.write(json);
      json.writeEndObject();
    } catch (IOException impossible) {
      throw new UncheckedIOException(impossible);
    }
    return text.append('\n').toString();
  }

  /** Writes the list of files, by which an output folder is known and checked. */
  public static void files(JsonGenerator json, List<WrittenFile> files) throws IOException {
    json.writeArrayFieldStart("files");
    for (WrittenFile file : files) {
      json.writeStartObject();
      json.writeStringField("path", file.path());
      json.writeNumberField("bytes", file.bytes());
      json.writeStringField("sha256", file.sha256());
      json.writeEndObject();
    }
    json.writeEndArray();
  }

  private void write(Summary summary, List<WrittenFile> files) throws IOException {
    json.writeStringField("field", summary.field());
    numbers.field("area_m2", summary.areaSquareMetres());
    numbers.field("waterways_m2", summary.waterwaySquareMetres());
    CurveDirections curve = summary.curve();
    if (curve == null) {
      numbers.field("ab_line_heading_degrees", summary.headingDegrees());
    } else {
      json.writeObjectFieldStart("curve");
      numbers.field("length_m", curve.lengthMetres());
      numbers.field("first_heading_degrees", curve.firstHeadingDegrees());
      numbers.field("last_heading_degrees", curve.lastHeadingDegrees());
      json.writeEndObject();
    }
    json.writeArrayFieldStart("crops");
    for (CropTotal crop : summary.crops()) {
      write(crop);
    }
    json.writeEndArray();
    json.writeArrayFieldStart("zones");
    for (ZoneTotal zone : summary.zones()) {
      write(zone);
    }
    json.writeEndArray();
    json.writeArrayFieldStart("seed");
    for (SeedOrder order : summary.seed()) {
      write(order);
    }
    json.writeEndArray();
    json.writeObjectFieldStart("partial_passes");
    json.writeNumberField("count", summary.partialPasses());
    numbers.field("area_m2", summary.partialSquareMetres());
    json.writeEndObject();
    json.writeObjectFieldStart("small_pieces");
    json.writeNumberField("joined", summary.joinedPieces().joined());
    numbers.field("joined_m2", summary.joinedPieces().joinedSquareMetres());
    json.writeNumberField("kept", summary.joinedPieces().kept());
    json.writeEndObject();
    DrivingJson.write(summary.driving(), json);
    PlacementResult placement = summary.placement();
    if (placement != null) {
      PlacementJson.write(placement, json);
    }
    json.writeArrayFieldStart("warnings");
    for (Warning warning : summary.warnings()) {
      json.writeStartObject();
      json.writeStringField("code", warning.code().name());
      json.writeStringField("text", warning.text());
      json.writeEndObject();
    }
    json.writeEndArray();
    files(json, files);
  }

  private void write(CropTotal crop) throws IOException {
    json.writeStartObject();
    json.writeStringField("crop", crop.crop());
    numbers.field("area_m2", crop.areaSquareMetres());
    json.writeNumberField("strips", crop.strips());
    json.writeNumberField("passes", crop.passes());
    json.writeNumberField("partial_passes", crop.partialPasses());
    json.writeNumberField("rows", crop.rows());
    numbers.field("row_length_m", crop.rowLengthMetres());
    json.writeEndObject();
  }

  private void write(ZoneTotal zone) throws IOException {
    json.writeStartObject();
    json.writeStringField("crop", zone.crop());
    json.writeStringField("product", zone.product());
    json.writeStringField("zone", zone.kind().word());
    String managementZone = zone.managementZone();
    if (managementZone != null) {
      json.writeStringField("management_zone", managementZone);
    }
    numbers.field("rate", zone.rate().seeds());
    json.writeStringField("rate_unit", zone.rate().unit());
    numbers.field("area_m2", zone.areaSquareMetres());
    numbers.field("seeds", zone.seeds());
    json.writeEndObject();
  }

  private void write(SeedOrder order) throws IOException {
    json.writeStartObject();
    json.writeStringField("product", order.product());
    json.writeStringField("crop", order.crop());
    numbers.field("area_m2", order.areaSquareMetres());
    numbers.field("seeds", order.seeds());
    numbers.field("reserve", order.reserve());
    numberOrNull("seeds_per_unit", order.seedsPerUnit());
    numberOrNull("units", order.units());
    numberOrNull("germinating_seeds", order.germinating());
    numberOrNull("standing_plants", order.standing());
    json.writeEndObject();
  }

  private void numberOrNull(String name, @Nullable Number value) throws IOException {
    if (value == null) {
      json.writeNullField(name);
    } else {
      numbers.field(name, value.doubleValue());
    }
  }
}
