package org.lynchet.prescription.picture;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;
import org.lynchet.geometry.coverage.Waterway;
import org.lynchet.prescription.zone.FieldLayout;
import org.lynchet.prescription.zone.Zone;

/**
 * Lists the entries with look, crop, product, rate and area, then the whole field and the other
 * signs of the map.
 */
final class Legend {
  /** With more entries than this the last line sums the rest up. */
  private static final int MOST_ENTRIES = 18;

  private static final double LONGEST_ZONE = 56;

  private final FieldLayout layout;
  private final Entries entries;
  private final UnitSystem units;
  private final List<LegendRow> rows = new ArrayList<>();
  private final int entryRows;

  /**
   * The legend of a layout.
   *
   * @param line what the guidance line is called; empty if the map does not show it
   */
  Legend(FieldLayout layout, Entries entries, UnitSystem units, String line) {
    this.layout = layout;
    this.entries = entries;
    this.units = units;
    addEntries();
    this.entryRows = rows.size();
    addWaterways();
    addTotal();
    addPartial();
    if (!line.isEmpty()) {
      rows.add(new LegendRow(AbLineMarks::sign, line, "", "", false));
    }
    addManagementZones();
  }

  /** Its rows in columns. */
  LegendColumns columns() {
    return new LegendColumns(rows);
  }

  /** The rows below those of the entries. */
  List<LegendRow> signs() {
    return List.copyOf(rows.subList(entryRows, rows.size()));
  }

  private void addEntries() {
    List<Entry> all = entries.list();
    int shown = all.size() > MOST_ENTRIES ? MOST_ENTRIES - 1 : all.size();
    for (Entry entry : all.subList(0, shown)) {
      rows.add(row(entry));
    }
    List<Entry> rest = all.subList(shown, all.size());
    if (!rest.isEmpty()) {
      double area = rest.stream().mapToDouble(entries::squareMetres).sum();
      rows.add(
          new LegendRow(
              LegendRow.Sign.NONE, "and " + rest.size() + " more", "", area(area), false));
    }
  }

  private LegendRow row(Entry entry) {
    String area = area(entries.squareMetres(entry));
    String rate = " \u00b7 " + RateText.of(entry.rate());
    double productRoom = LegendRow.roomBelow() - TextWidth.of(rate, LegendRow.SIZE, false);
    String product =
        TextWidth.cut(SafeText.of(entry.product()), productRoom, LegendRow.SIZE, false);
    return new LegendRow(
        LegendRow.Sign.of(entries.look(entry)),
        place(entry, LegendRow.roomBeside(area)),
        product + rate,
        area,
        true);
  }

  /** Crop, part of the field, management zone; names give way, the part does not. */
  private static String place(Entry entry, double room) {
    String zone = entry.managementZone();
    String part = ", " + entry.kind().word();
    if (zone != null) {
      part += ", " + TextWidth.cut(SafeText.of(zone), LONGEST_ZONE, LegendRow.SIZE, true);
    }
    double cropRoom = room - TextWidth.of(part, LegendRow.SIZE, true);
    return TextWidth.cut(SafeText.of(entry.crop()), cropRoom, LegendRow.SIZE, true) + part;
  }

  private void addTotal() {
    rows.add(
        new LegendRow(
            LegendRow.Sign.NONE, "whole field", "", area(layout.areaSquareMetres()), true));
  }

  private void addWaterways() {
    double area = layout.waterways().stream().mapToDouble(Waterway::areaSquareMetres).sum();
    if (area > 0) {
      rows.add(
          new LegendRow(
              LegendRow.Sign.of(WaterwayMarks.LOOK),
              "waterway, not planted",
              "",
              area(area),
              false));
    }
  }

  private void addPartial() {
    double partial =
        layout.zones().stream().filter(Zone::partial).mapToDouble(Zone::areaSquareMetres).sum();
    if (partial > 0) {
      List<Hatch> hatches = new Looks(layout.frame().headingDegrees()).partial();
      LegendRow.Sign sign =
          box ->
              List.of(
                  new Mark.Area(Outline.of(box), OptionalInt.of(Scene.WHITE), hatches),
                  new Mark.Line(Outline.of(box), Scene.INK, 0.7, 0));
      rows.add(new LegendRow(sign, "of which partial passes", "", area(partial), false));
    }
  }

  private void addManagementZones() {
    if (layout.zones().stream().anyMatch(zone -> zone.managementZone() != null)) {
      LegendRow.Sign sign =
          box ->
              List.of(
                  new Mark.Line(
                      Outline.line(box.left(), box.centreY(), box.right(), box.centreY()),
                      Scene.INK,
                      ManagementZoneMarks.WIDTH,
                      ManagementZoneMarks.DASH));
      rows.add(new LegendRow(sign, "edge of a management zone", "", "", false));
    }
  }

  private String area(double squareMetres) {
    return units.area(squareMetres, layout.areaSquareMetres());
  }
}
