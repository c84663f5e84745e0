package org.lynchet.prescription.light;

import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import org.lynchet.prescription.json.JsonNumbers;
import org.lynchet.prescription.json.JsonText;

/** Writes the light of rows as JSON, one period of the pattern, rows left to right. */
public final class LightJson {
  private static final int SCHEMA_VERSION = 1;
  private static final int DECIMALS = 4;

  private LightJson() {}

  /** The JSON text. */
  public static String of(LightResult result) {
    return JsonText.of(
        json -> {
          json.writeStartObject();
          json.writeNumberField("schemaVersion", SCHEMA_VERSION);
          json.writeArrayFieldStart("rows");
          for (RowLight light : result.rows()) {
            write(light, json);
          }
          json.writeEndArray();
          json.writeEndObject();
        });
  }

  private static void write(RowLight light, JsonGenerator json) throws IOException {
    CanopyRow row = light.row();
    JsonNumbers numbers = JsonNumbers.padded(json, DECIMALS);
    json.writeStartObject();
    json.writeNumberField("strip", row.strip());
    json.writeStringField("crop", row.crop());
    json.writeNumberField("row", row.row());
    numbers.field("offset_m", row.offsetMetres());
    numbers.field("relative_incident", light.relativeIncident());
    numbers.field("relative_absorbed", light.relativeAbsorbed());
    json.writeEndObject();
  }
}
