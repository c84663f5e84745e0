package org.lynchet.prescription.picture;

import java.util.List;
import org.lynchet.prescription.driving.Driving;
import org.lynchet.prescription.driving.PlanterDriving;
import org.lynchet.prescription.zone.FieldLayout;

/**
 * Puts the map of a field laid out, its legend and its loading charts on sheets, each at a place
 * and a scale of its own. They are those of {@link FieldMap}; a scale of 1 has letters of the same
 * size.
 */
public final class FieldOnSheet {
  /** Above the boxes of a loading chart. */
  private static final double GAP = 2;

  private final FieldLayout layout;
  private final UnitSystem units;
  private final Entries entries;
  private final GuidanceMarks line;
  private final SheetLegend legend;

  private FieldOnSheet(FieldLayout layout) {
    this.layout = layout;
    this.units = UnitSystem.of(layout);
    this.entries = Entries.of(layout);
    this.line = GuidanceMarks.of(layout);
    Legend signs =
        new Legend(layout, entries, units, line.isDrawn() ? layout.guidance().name() : "");
    this.legend = new SheetLegend(layout, entries, units, signs);
  }

  /** Draws a layout; it must have at least one zone. */
  public static FieldOnSheet of(FieldLayout layout) {
    return new FieldOnSheet(layout);
  }

  /** Adds the map with scale bar and north arrow, in a box. */
  public void addMap(
      Sheet sheet, double left, double top, double width, double height, double scale) {
    Box map = new Box(0, 0, width / scale, height / scale - Page.FOOT);
    MapMaker.filling(map, layout, entries, units, line)
        .fieldAndFoot()
        .forEach(layer -> sheet.place(layer.marks(), left, top, scale));
  }

  /** The height of the legend in points. */
  public double legendHeight(int columns, double scale) {
    return legend.columns().height(columns) * scale;
  }

  /** Adds the legend: rates and areas of what looks alike, and the signs of the map. */
  public void addLegend(Sheet sheet, double left, double top, int columns, double scale) {
    sheet.place(legend.columns().marks(0, 0, columns, Page.COLUMN_GAP), left, top, scale);
  }

  /** The height of the boxes of one loading chart in points. */
  public static double loadingHeight(double scale) {
    return (LoadingMarks.BOX_HEIGHT + GAP) * scale;
  }

  /**
   * Adds the row units of a planter as boxes, filled like the zones of what they are loaded with;
   * nothing where all are loaded alike.
   *
   * @return the height that they take
   */
  public double addLoading(
      Sheet sheet, PlanterDriving planter, double left, double top, double width, double scale) {
    LoadingMarks loading = new LoadingMarks(new Driving(List.of(planter), List.of()), entries);
    List<Mark> boxes = loading.boxes(width / scale);
    sheet.place(boxes, left, top + GAP * scale, scale);
    return boxes.isEmpty() ? 0 : loadingHeight(scale);
  }
}
