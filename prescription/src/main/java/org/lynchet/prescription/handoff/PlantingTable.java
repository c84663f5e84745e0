package org.lynchet.prescription.handoff;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.lynchet.formats.Column;
import org.lynchet.formats.DeclaredCrs;
import org.lynchet.formats.Feature;
import org.lynchet.formats.FeatureTable;
import org.lynchet.geometry.coverage.Waterway;
import org.lynchet.prescription.quantity.AreaUnit;
import org.lynchet.prescription.quantity.SeedingRate;
import org.lynchet.prescription.zone.FieldLayout;
import org.lynchet.prescription.zone.Zone;

/**
 * Makes the table of one crop's planting file.
 *
 * <p>All rates of a file are in one unit, that of the crop's first zone. There is one numeric
 * column for the rate and no null anywhere.
 */
final class PlantingTable {
  /** What an off zone has for its zone. */
  static final String OFF = "off";

  /** What an off zone has for its product. */
  private static final String NO_PRODUCT = ZoneTable.NOTHING;

  /** Bytes of a text column: enough for a crop and a product. */
  static final int TEXT = 40;

  private static final int DECIMALS = 4;

  private PlantingTable() {}

  /** The crops of a layout, in the order of their first zones. */
  static List<String> crops(FieldLayout layout) {
    return layout.zones().stream().map(Zone::crop).distinct().toList();
  }

  static FeatureTable of(FieldLayout layout, String crop) {
    List<Zone> own = layout.zones().stream().filter(z -> z.crop().equals(crop)).toList();
    AreaUnit per = own.get(0).rate().per();
    AreaUnit area = areaUnit(layout, crop);
    List<Column> columns =
        List.of(
            Column.text("CROP", TEXT),
            Column.number("STRIP", 6, 0),
            Column.text("ZONE", 8),
            Column.text("PRODUCT", TEXT),
            Column.number("RATE", 14, DECIMALS),
            Column.text("RATE_UNIT", 8),
            Column.number("AREA_" + area.symbol().toUpperCase(Locale.ROOT), 12, DECIMALS));
    List<Feature> features = new ArrayList<>();
    for (Zone zone : layout.zones()) {
      if (zone.crop().equals(crop)) {
        features.add(row(zone, zone.kind().word(), zone.product(), zone.rate().in(per), area));
      } else if (layout.plan().handoff().offZones()) {
        features.add(row(zone, OFF, NO_PRODUCT, new SeedingRate(0, per), area));
      }
    }
    if (layout.plan().handoff().offZones()) {
      layout.waterways().forEach(way -> features.add(off(way, per, area)));
    }
    return new FeatureTable(crop, DeclaredCrs.LON_LAT, columns, features);
  }

  /** Acres if the rates of a crop are on acres, else hectares. */
  static AreaUnit areaUnit(FieldLayout layout, String crop) {
    boolean acres =
        layout.zones().stream()
            .filter(zone -> zone.crop().equals(crop))
            .limit(1)
            .anyMatch(zone -> zone.rate().per() == AreaUnit.ACRE);
    return acres ? AreaUnit.ACRE : AreaUnit.HECTARE;
  }

  private static Feature off(Waterway way, AreaUnit per, AreaUnit area) {
    return new Feature(
        way.polygon(),
        List.of(
            ZoneTable.NOTHING,
            0.0,
            OFF,
            NO_PRODUCT,
            0.0,
            new SeedingRate(0, per).unit(),
            rounded(way.areaSquareMetres() / area.squareMetres())));
  }

  private static Feature row(
      Zone zone, String kind, String product, SeedingRate rate, AreaUnit area) {
    return new Feature(
        zone.polygon(),
        List.of(
            zone.crop(),
            (double) zone.strip(),
            kind,
            product,
            rounded(rate.seeds()),
            rate.unit(),
            rounded(zone.areaSquareMetres() / area.squareMetres())));
  }

  /** What the column keeps, so that all formats say the same. */
  static double rounded(double value) {
    return BigDecimal.valueOf(value).setScale(DECIMALS, RoundingMode.HALF_UP).doubleValue();
  }
}
