package org.lynchet.prescription.handoff;

import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import org.locationtech.jts.geom.Geometry;
import org.lynchet.formats.Column;
import org.lynchet.formats.DeclaredCrs;
import org.lynchet.formats.Feature;
import org.lynchet.formats.FeatureTable;
import org.lynchet.prescription.quantity.AreaUnit;
import org.lynchet.prescription.setback.SprayPlan.SetAside;
import org.lynchet.prescription.spraying.SprayPass;
import org.lynchet.prescription.spraying.SprayedArea;
import org.lynchet.prescription.zone.FieldLayout;

/**
 * Makes the tables of one crop's spraying files: what each pass sprays, and the line that it
 * drives. Columns are named as in the planting files; there is no null anywhere, and no product or
 * rate.
 */
final class SprayTable {
  private static final int DECIMALS = 4;
  private static final Column OFFSET = Column.number("OFFSET_M", 14, DECIMALS);

  private SprayTable() {}

  /**
   * The polygons, headland first as strip 0 and pass 0.
   *
   * @param sprayed the areas of all crops
   */
  static FeatureTable areas(FieldLayout layout, List<SprayedArea> sprayed, String crop) {
    AreaUnit unit = PlantingTable.areaUnit(layout, crop);
    Column area = Column.number("AREA_" + unit.symbol().toUpperCase(Locale.ROOT), 12, DECIMALS);
    return table(
        crop,
        area,
        sprayed.stream().filter(one -> one.crop().equals(crop)).map(one -> row(one, unit)));
  }

  /** What is set aside, where it has any area. */
  static FeatureTable setAside(List<SetAside> setAside) {
    return new FeatureTable(
        "set-aside",
        DeclaredCrs.LON_LAT,
        List.of(Column.text("crop", PlantingTable.TEXT), Column.number("area_m2", 14, DECIMALS)),
        setAside.stream()
            .filter(one -> !one.shape().isEmpty())
            .map(
                one ->
                    new Feature(
                        one.shape(),
                        List.of(one.crop(), PlantingTable.rounded(one.areaSquareMetres()))))
            .toList());
  }

  /** The lines, left to right. */
  static FeatureTable lines(FieldLayout layout, String crop) {
    return table(
        crop,
        OFFSET,
        layout.spraying().passes().stream()
            .filter(pass -> pass.crop().equals(crop))
            .map(SprayTable::row));
  }

  private static FeatureTable table(String crop, Column last, Stream<Feature> features) {
    return new FeatureTable(
        crop,
        DeclaredCrs.LON_LAT,
        List.of(
            Column.text("CROP", PlantingTable.TEXT),
            Column.number("STRIP", 6, 0),
            Column.number("PASS", 6, 0),
            Column.number("OPEN_FROM", 6, 0),
            Column.number("OPEN_TO", 6, 0),
            last),
        features.toList());
  }

  private static Feature row(SprayedArea of, AreaUnit unit) {
    double area = PlantingTable.rounded(of.areaSquareMetres() / unit.squareMetres());
    return row(of.polygon(), of.crop(), of.strip(), of.pass(), of.firstOpen(), of.lastOpen(), area);
  }

  private static Feature row(SprayPass of) {
    double offset = PlantingTable.rounded(of.offsetMetres());
    return row(
        of.line(), of.crop(), of.strip(), of.number(), of.firstOpen(), of.lastOpen(), offset);
  }

  private static Feature row(
      Geometry shape, String crop, int strip, int pass, int openFrom, int openTo, double last) {
    return new Feature(
        shape,
        List.of(crop, (double) strip, (double) pass, (double) openFrom, (double) openTo, last));
  }
}
