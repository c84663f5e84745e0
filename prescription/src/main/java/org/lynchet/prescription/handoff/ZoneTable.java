package org.lynchet.prescription.handoff;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.lynchet.formats.Column;
import org.lynchet.formats.DeclaredCrs;
import org.lynchet.formats.Feature;
import org.lynchet.formats.FeatureTable;
import org.lynchet.prescription.zone.FieldLayout;
import org.lynchet.prescription.zone.Zone;

/** Makes the table of plan.geojson: every zone of the field. */
final class ZoneTable {
  private ZoneTable() {}

  static FeatureTable of(FieldLayout layout) {
    boolean managed = layout.plan().field().managementZones() != null;
    List<Column> columns =
        new ArrayList<>(
            List.of(
                Column.text("crop", 254),
                Column.number("strip", 9, 0),
                Column.text("zone", 254),
                Column.text("product", 254),
                Column.number("rate", 18, 6),
                Column.text("rate_unit", 254),
                Column.number("area_m2", 18, 9),
                Column.flag("partial")));
    if (managed) {
      columns.add(Column.text("management_zone", 254));
    }
    List<Feature> features = new ArrayList<>();
    for (Zone zone : layout.zones()) {
      List<@Nullable Object> values = new ArrayList<>();
      values.add(zone.crop());
      values.add((double) zone.strip());
      values.add(zone.kind().word());
      values.add(zone.product());
      values.add(zone.rate().seeds());
      values.add(zone.rate().unit());
      values.add(zone.areaSquareMetres());
      values.add(zone.partial());
      if (managed) {
        values.add(zone.managementZone());
      }
      features.add(new Feature(zone.polygon(), values));
    }
    return new FeatureTable("plan", DeclaredCrs.LON_LAT, columns, features);
  }
}
