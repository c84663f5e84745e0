package org.lynchet.prescription.handoff;

import java.util.ArrayList;
import java.util.List;
import org.lynchet.formats.Column;
import org.lynchet.formats.DeclaredCrs;
import org.lynchet.formats.Feature;
import org.lynchet.formats.FeatureTable;
import org.lynchet.prescription.zone.FieldLayout;
import org.lynchet.prescription.zone.HeadlandPass;

/** Makes the table of guidance/headland.geojson: a line for each ring or run of each pass. */
final class HeadlandPassTable {
  private HeadlandPassTable() {}

  static FeatureTable of(FieldLayout layout) {
    List<Feature> features = new ArrayList<>();
    for (HeadlandPass pass : layout.headlandPasses()) {
      for (int i = 0; i < pass.line().getNumGeometries(); i++) {
        features.add(
            new Feature(
                pass.line().getGeometryN(i),
                List.of(
                    pass.machine(),
                    pass.crop(),
                    (double) pass.number(),
                    PlantingTable.rounded(pass.distanceMetres()))));
      }
    }
    return new FeatureTable(
        "headland",
        DeclaredCrs.LON_LAT,
        List.of(
            Column.text("machine", 254),
            Column.text("crop", 254),
            Column.number("pass", 9, 0),
            Column.number("distance_m", 18, 4)),
        features);
  }
}
