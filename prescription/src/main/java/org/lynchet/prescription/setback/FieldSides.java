package org.lynchet.prescription.setback;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.locationtech.jts.algorithm.Orientation;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.LineString;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.simplify.DouglasPeuckerSimplifier;
import org.lynchet.prescription.plan.PlannedSetback.Side;

/** Divides the outer boundary of a field by where it faces. */
final class FieldSides {
  /** How far the line may stray by which directions are judged, in metres. */
  private static final double STRAY = 5;

  private static final double QUARTER = 90;

  private final double headingDegrees;
  private final Map<Side, List<Geometry>> lines = new EnumMap<>(Side.class);

  private FieldSides(double headingDegrees) {
    this.headingDegrees = headingDegrees;
  }

  /**
   * The lines of each side.
   *
   * @param field its polygons in metres
   * @param headingDegrees where y points, clockwise from north
   */
  static Map<Side, List<Geometry>> of(Geometry field, double headingDegrees) {
    FieldSides sides = new FieldSides(headingDegrees);
    for (int i = 0; i < field.getNumGeometries(); i++) {
      if (field.getGeometryN(i) instanceof Polygon polygon) {
        sides.add(polygon.getExteriorRing());
      }
    }
    return sides.lines;
  }

  private void add(LineString ring) {
    Coordinate[] points = ring.getCoordinates();
    boolean anticlockwise = Orientation.isCCW(points);
    Coordinate[] judged = judged(ring);
    int from = 0;
    for (int i = 1; i < judged.length; i++) {
      int to = from + 1;
      while (to < points.length - 1 && !points[to].equals2D(judged[i])) {
        to++;
      }
      List<Coordinate> part = new ArrayList<>(List.of(points).subList(from, to + 1));
      Side side = facing(judged[i - 1], judged[i], anticlockwise);
      lines
          .computeIfAbsent(side, one -> new ArrayList<>())
          .add(ring.getFactory().createLineString(part.toArray(Coordinate[]::new)));
      from = to;
    }
  }

  /** Some of the ring's points, in order, the first and the last among them. */
  private static Coordinate[] judged(LineString ring) {
    LineString open = ring.getFactory().createLineString(ring.getCoordinateSequence());
    Coordinate[] simple = DouglasPeuckerSimplifier.simplify(open, STRAY).getCoordinates();
    return simple.length < 4 ? ring.getCoordinates() : simple;
  }

  private Side facing(Coordinate from, Coordinate to, boolean anticlockwise) {
    double along = headingDegrees + Math.toDegrees(Math.atan2(to.x - from.x, to.y - from.y));
    double outwards = along + (anticlockwise ? QUARTER : -QUARTER);
    double fromNorthWest = outwards + QUARTER / 2;
    return switch (Math.floorMod((int) Math.floor(fromNorthWest / QUARTER), 4)) {
      case 0 -> Side.NORTH;
      case 1 -> Side.EAST;
      case 2 -> Side.SOUTH;
      default -> Side.WEST;
    };
  }
}
