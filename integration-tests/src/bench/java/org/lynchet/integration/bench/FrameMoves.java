package org.lynchet.integration.bench;

import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.CoordinateSequence;
import org.locationtech.jts.geom.CoordinateSequenceFilter;
import org.locationtech.jts.geom.Geometry;
import org.lynchet.geometry.guidance.OffsetFrame;

/** Moves geometries between longitude and latitude and an offset frame. */
final class FrameMoves {
  private FrameMoves() {}

  /** One move of one point. */
  private interface Move {
    Coordinate of(double x, double y);
  }

  /** A copy in offsets (x) and metres along the AB line (y). */
  static Geometry toOffset(Geometry lonLat, OffsetFrame frame) {
    return moved(lonLat, frame::toOffset);
  }

  /** A copy in longitude (x) and latitude (y), in degrees with 9 decimals. */
  static Geometry toLonLat(Geometry offset, OffsetFrame frame) {
    return moved(
        offset,
        (x, y) -> {
          Coordinate to = frame.toLonLat(x, y);
          to.x = Math.rint(to.x * 1e9) / 1e9;
          to.y = Math.rint(to.y * 1e9) / 1e9;
          return to;
        });
  }

  private static Geometry moved(Geometry geometry, Move move) {
    Geometry copy = geometry.copy();
    copy.apply(
        new CoordinateSequenceFilter() {
          @Override
          public void filter(CoordinateSequence points, int i) {
            Coordinate to = move.of(points.getX(i), points.getY(i));
            points.setOrdinate(i, CoordinateSequence.X, to.x);
            points.setOrdinate(i, CoordinateSequence.Y, to.y);
          }

          @Override
          public boolean isDone() {
            return false;
          }

          @Override
          public boolean isGeometryChanged() {
            return true;
          }
        });
    return copy;
  }
}
