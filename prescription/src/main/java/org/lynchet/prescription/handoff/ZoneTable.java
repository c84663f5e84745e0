package org.lynchet.prescription.handoff;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.lynchet.formats.Column;
import org.lynchet.formats.DeclaredCrs;
import org.lynchet.formats.Feature;
import org.lynchet.formats.FeatureTable;
import org.lynchet.geometry.coverage.Waterway;
import org.lynchet.prescription.taskdata.PlantedArea;
import org.lynchet.prescription.zone.FieldLayout;
import org.lynchet.prescription.zone.Zone;

/** Makes the table of plan.geojson: every zone of the field, then waterways. */
final class ZoneTable {
  /** The word for the zone of what is driven across but not planted. */
  static final String WATERWAY = "waterway";

  /** Crop and product where nothing is planted. */
  static final String NOTHING = PlantedArea.NOTHING;

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
    layout.waterways().forEach(way -> features.add(waterway(layout, way, managed)));
    return new FeatureTable("plan", DeclaredCrs.LON_LAT, columns, features);
  }

  private static Feature waterway(FieldLayout layout, Waterway way, boolean managed) {
    List<@Nullable Object> values =
        new ArrayList<>(
            List.of(
                NOTHING,
                0.0,
                WATERWAY,
                NOTHING,
                0.0,
                layout.zones().get(0).rate().unit(),
                way.areaSquareMetres(),
                false));
    if (managed) {
      values.add(null);
    }
    return new Feature(way.polygon(), values);
  }
}
