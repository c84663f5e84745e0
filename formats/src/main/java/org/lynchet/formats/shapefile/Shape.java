package org.lynchet.formats.shapefile;

import java.util.ArrayList;
import java.util.List;
import org.locationtech.jts.algorithm.Orientation;
import org.locationtech.jts.geom.CoordinateSequence;
import org.locationtech.jts.geom.CoordinateSequences;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.LineString;
import org.locationtech.jts.geom.Point;
import org.locationtech.jts.geom.Polygon;

/**
 * Takes one geometry apart into the parts of a record, each ring in its direction: outer rings
 * clockwise, holes counter-clockwise (ESRI description, page 8).
 *
 * @param type one of the types without Z and M
 * @param parts the rings, lines, or the one point
 * @param box the smallest box around them
 */
record Shape(ShapeType type, List<CoordinateSequence> parts, Envelope box) {

  static Shape of(Geometry geometry) {
    if (geometry.isEmpty()) {
      throw new IllegalArgumentException("an empty " + geometry.getGeometryType());
    }
    List<CoordinateSequence> parts = new ArrayList<>();
    ShapeType type = null;
    for (int i = 0; i < geometry.getNumGeometries(); i++) {
      ShapeType next = take(geometry.getGeometryN(i), parts);
      if (type != null && (type != next || next == ShapeType.POINT)) {
        throw new IllegalArgumentException("no shape can hold a " + geometry.getGeometryType());
      }
      type = next;
    }
    if (type == null) {
      throw new IllegalArgumentException("a geometry without parts");
    }
    parts.forEach(Shape::requireFinite);
    return new Shape(type, parts, geometry.getEnvelopeInternal());
  }

  int pointCount() {
    return parts.stream().mapToInt(CoordinateSequence::size).sum();
  }

  /** The length of the record's content in bytes; neither record header is part of it. */
  int contentBytes() {
    if (type.kind == ShapeType.Kind.POINT) {
      return 4 + 16;
    }
    long bytes = 4 + 32 + 8 + 4L * parts.size() + 16L * pointCount();
    return Math.toIntExact(bytes);
  }

  private static ShapeType take(Geometry one, List<CoordinateSequence> parts) {
    if (one instanceof Polygon polygon) {
      parts.add(directed(polygon.getExteriorRing(), false));
      for (int i = 0; i < polygon.getNumInteriorRing(); i++) {
        parts.add(directed(polygon.getInteriorRingN(i), true));
      }
      return ShapeType.POLYGON;
    }
    if (one instanceof LineString line) {
      parts.add(line.getCoordinateSequence());
      return ShapeType.LINE;
    }
    if (one instanceof Point point) {
      parts.add(point.getCoordinateSequence());
      return ShapeType.POINT;
    }
    throw new IllegalArgumentException("no shape can hold a " + one.getGeometryType());
  }

  private static CoordinateSequence directed(LineString ring, boolean counterClockwise) {
    CoordinateSequence points = ring.getCoordinateSequence();
    if (points.size() < 4) {
      throw new IllegalArgumentException("a ring of " + points.size() + " points");
    }
    if (Orientation.isCCW(points) == counterClockwise) {
      return points;
    }
    CoordinateSequence turned = points.copy();
    CoordinateSequences.reverse(turned);
    return turned;
  }

  private static void requireFinite(CoordinateSequence points) {
    for (int i = 0; i < points.size(); i++) {
      if (!Double.isFinite(points.getX(i)) || !Double.isFinite(points.getY(i))) {
        throw new IllegalArgumentException(
            "a coordinate that is no number: " + points.getX(i) + " " + points.getY(i));
      }
    }
  }
}
