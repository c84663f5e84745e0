package org.lynchet.prescription.handoff;

import java.util.List;
import org.lynchet.formats.Column;
import org.lynchet.formats.DeclaredCrs;
import org.lynchet.formats.Feature;
import org.lynchet.formats.FeatureTable;
import org.lynchet.prescription.zone.FieldLayout;

/** Makes the table of guidance/passes.geojson: a line for each pass. */
final class PassTable {
  private PassTable() {}

  static FeatureTable of(FieldLayout layout) {
    return new FeatureTable(
        "passes",
        DeclaredCrs.LON_LAT,
        List.of(
            Column.text("machine", 254),
            Column.text("crop", 254),
            Column.number("strip", 9, 0),
            Column.number("pass", 9, 0),
            Column.number("offset_m", 18, 4),
            Column.flag("partial")),
        layout.passes().stream()
            .map(
                pass ->
                    new Feature(
                        pass.line(),
                        List.of(
                            pass.machine(),
                            pass.crop(),
                            (double) pass.strip(),
                            (double) pass.pass().number(),
                            PlantingTable.rounded(pass.pass().centreMetres()),
                            pass.partial())))
            .toList());
  }
}
