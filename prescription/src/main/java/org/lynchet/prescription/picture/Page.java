package org.lynchet.prescription.picture;

import java.util.List;
import org.locationtech.jts.geom.Coordinate;
import org.lynchet.geometry.guidance.OffsetFrame;

/**
 * Divides the page: title above, map below it, the legend to the right of the map or under it,
 * scale, north arrow and loading charts at the map's foot.
 *
 * @param map where the map and its labels are
 * @param plane places the field in it
 * @param legend the legend's top left corner and its room
 * @param legendColumns columns of the legend
 */
record Page(Box map, MapPlane plane, Box legend, int legendColumns) {
  static final double MARGIN = 28;

  /** Height of the title and the line under it. */
  static final double TITLE = 44;

  /** Height of what is at the map's foot. */
  static final double FOOT = 36;

  static final double COLUMN_GAP = 8;

  private static final double LEGEND_GAP = 16;
  private static final int COLUMNS_BELOW = 3;

  /** Room around the field for labels, in points: any side, and where the AB line leaves it. */
  private static final double ANY_SIDE = 8;

  private static final double AT_ENDS = 36;

  /**
   * The one of both ways to place the legend that shows the field larger.
   *
   * @param charts height of what is below the scale
   */
  static Page of(List<Coordinate> offsets, OffsetFrame frame, Legend legend, double charts) {
    Page beside = beside(offsets, frame, charts);
    Page below = below(offsets, frame, legend.columns().height(COLUMNS_BELOW), charts);
    boolean fits = legend.columns().height(1) <= beside.legend().height();
    return fits && beside.plane().pointsPerMetre() >= below.plane().pointsPerMetre()
        ? beside
        : below;
  }

  private static Page beside(List<Coordinate> offsets, OffsetFrame frame, double charts) {
    double right = Scene.WIDTH - MARGIN - LegendRow.WIDTH;
    double bottom = Scene.HEIGHT - MARGIN;
    Box map = new Box(MARGIN, MARGIN + TITLE, right - LEGEND_GAP, bottom - FOOT - charts);
    Box legend = new Box(right, MARGIN, Scene.WIDTH - MARGIN, bottom);
    return new Page(map, plane(offsets, frame, map), legend, 1);
  }

  private static Page below(
      List<Coordinate> offsets, OffsetFrame frame, double height, double charts) {
    double bottom = Scene.HEIGHT - MARGIN;
    double top = bottom - height;
    double right = Scene.WIDTH - MARGIN;
    Box map = new Box(MARGIN, MARGIN + TITLE, right, top - FOOT - LEGEND_GAP - charts);
    Box legend = new Box(MARGIN, top, right, bottom);
    return new Page(map, plane(offsets, frame, map), legend, COLUMNS_BELOW);
  }

  /** The plane in which places just fit into a map's box, with room around them for labels. */
  static MapPlane plane(List<Coordinate> offsets, OffsetFrame frame, Box map) {
    double heading = Math.toRadians(frame.headingDegrees());
    Box room =
        map.shrunk(
            ANY_SIDE + AT_ENDS * Math.abs(Math.sin(heading)),
            ANY_SIDE + AT_ENDS * Math.abs(Math.cos(heading)));
    return MapPlane.fitting(offsets, frame, room);
  }
}
