package org.lynchet.formats.kml;

import org.locationtech.jts.algorithm.Orientation;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.LineString;
import org.locationtech.jts.geom.LinearRing;
import org.locationtech.jts.geom.Point;
import org.locationtech.jts.geom.Polygon;
import org.lynchet.formats.PlainDecimal;
import org.lynchet.formats.XmlOutput;

/** Writes geometries; outer rings run counter-clockwise, holes clockwise. */
final class KmlGeometry {
  private final XmlOutput out;

  KmlGeometry(XmlOutput out) {
    this.out = out;
  }

  /** Writes any geometry; several parts, and none, as a MultiGeometry. */
  void write(Geometry geometry) {
    if (geometry.getNumGeometries() != 1 || geometry.isEmpty()) {
      out.start("MultiGeometry");
      for (int i = 0; i < geometry.getNumGeometries(); i++) {
        if (!geometry.isEmpty()) {
          write(geometry.getGeometryN(i));
        }
      }
      out.end();
      return;
    }
    Geometry part = geometry.getGeometryN(0);
    if (part instanceof Polygon polygon) {
      polygon(polygon);
    } else if (part instanceof LineString line) {
      out.start("LineString").element("coordinates", text(line.getCoordinates())).end();
    } else if (part instanceof Point point) {
      out.start("Point").element("coordinates", text(point.getCoordinates())).end();
    } else {
      throw new IllegalArgumentException("no place in KML for " + part.getGeometryType());
    }
  }

  private void polygon(Polygon polygon) {
    out.start("Polygon");
    ring("outerBoundaryIs", polygon.getExteriorRing(), true);
    for (int i = 0; i < polygon.getNumInteriorRing(); i++) {
      ring("innerBoundaryIs", polygon.getInteriorRingN(i), false);
    }
    out.end();
  }

  private void ring(String role, LinearRing ring, boolean counterClockwise) {
    boolean turns = Orientation.isCCW(ring.getCoordinateSequence()) != counterClockwise;
    Coordinate[] points = (turns ? ring.reverse() : ring).getCoordinates();
    out.start(role).start("LinearRing").element("coordinates", text(points)).end().end();
  }

  private static String text(Coordinate[] points) {
    StringBuilder text = new StringBuilder();
    for (Coordinate at : points) {
      text.append(text.isEmpty() ? "" : " ").append(PlainDecimal.rounded(at.x)).append(',');
      text.append(PlainDecimal.rounded(at.y));
    }
    return text.toString();
  }
}
