package org.lynchet.prescription.handoff;

import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.util.List;
import org.lynchet.prescription.setback.SprayPlan;
import org.lynchet.prescription.spraying.SprayedArea;
import org.lynchet.prescription.summary.SummaryJson;
import org.lynchet.prescription.summary.WrittenFile;
import org.lynchet.prescription.zone.FieldLayout;

/** Writes the applicator's summary.json: areas by crop, and digests of the files. */
final class ApplicatorJson {
  /** The name under which summary.json says whom it is for. */
  static final String RECEIVER = "for";

  private ApplicatorJson() {}

  static String of(FieldLayout layout, SprayPlan spray, List<WrittenFile> files) {
    return SummaryJson.document(json -> write(json, layout, spray, files));
  }

  private static void write(
      JsonGenerator json, FieldLayout layout, SprayPlan spray, List<WrittenFile> files)
      throws IOException {
    json.writeStringField(RECEIVER, "applicator");
    json.writeStringField("field", layout.plan().field().name());
    json.writeNumberField(
        "area_m2",
        PlantingTable.rounded(
            spray.areas().stream().mapToDouble(SprayedArea::areaSquareMetres).sum()));
    json.writeArrayFieldStart("crops");
    for (String crop : layout.spraying().crops()) {
      json.writeStartObject();
      json.writeStringField("crop", crop);
      json.writeNumberField("sprayed_m2", PlantingTable.rounded(spray.sprayedSquareMetres(crop)));
      json.writeNumberField(
          "set_aside_m2", PlantingTable.rounded(spray.setAsideSquareMetres(crop)));
      json.writeEndObject();
    }
    json.writeEndArray();
    SummaryJson.files(json, files);
  }
}
