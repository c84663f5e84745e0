package org.lynchet.formats.geojson;

import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import org.locationtech.jts.algorithm.Orientation;
import org.locationtech.jts.geom.CoordinateSequence;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryCollection;
import org.locationtech.jts.geom.LineString;
import org.locationtech.jts.geom.MultiLineString;
import org.locationtech.jts.geom.MultiPolygon;
import org.locationtech.jts.geom.Point;
import org.locationtech.jts.geom.Polygon;
import org.lynchet.formats.PlainDecimal;

/** Writes one geometry as a JSON object (RFC 7946, section 3.1). */
final class GeometryEncoder {
  private final JsonGenerator out;

  GeometryEncoder(JsonGenerator out) {
    this.out = out;
  }

  /**
   * Writes the geometry, or null for an empty one (section 3.2: an unlocated feature).
   *
   * @throws IllegalArgumentException if it is of another kind, or leaves longitude and latitude
   */
  void write(Geometry geometry) throws IOException {
    if (geometry.isEmpty()) {
      out.writeNull();
      return;
    }
    out.writeStartObject();
    out.writeStringField("type", type(geometry));
    out.writeFieldName("coordinates");
    if (geometry instanceof GeometryCollection many) {
      out.writeStartArray();
      for (int i = 0; i < many.getNumGeometries(); i++) {
        writeOne(many.getGeometryN(i));
      }
      out.writeEndArray();
    } else {
      writeOne(geometry);
    }
    out.writeEndObject();
  }

  private static String type(Geometry geometry) {
    boolean known =
        geometry instanceof Polygon
            || geometry instanceof LineString
            || geometry instanceof Point
            || geometry instanceof MultiPolygon
            || geometry instanceof MultiLineString;
    if (!known) {
      throw new IllegalArgumentException("not written: " + geometry.getGeometryType());
    }
    return geometry.getGeometryType().equals("LinearRing")
        ? "LineString"
        : geometry.getGeometryType();
  }

  private void writeOne(Geometry one) throws IOException {
    if (one instanceof Polygon polygon) {
      out.writeStartArray();
      writeRing(polygon.getExteriorRing(), true);
      for (int i = 0; i < polygon.getNumInteriorRing(); i++) {
        writeRing(polygon.getInteriorRingN(i), false);
      }
      out.writeEndArray();
    } else if (one instanceof LineString line) {
      writePositions(line.getCoordinateSequence(), false);
    } else if (one instanceof Point point) {
      writePosition(point.getCoordinateSequence(), 0);
    }
  }

  /** Turns the ring where needed: exterior rings counter-clockwise, others clockwise (3.1.6). */
  private void writeRing(LineString ring, boolean counterClockwise) throws IOException {
    CoordinateSequence points = ring.getCoordinateSequence();
    if (points.size() < 4) {
      throw new IllegalArgumentException("a ring of " + points.size() + " positions");
    }
    writePositions(points, Orientation.isCCW(points) != counterClockwise);
  }

  private void writePositions(CoordinateSequence points, boolean backwards) throws IOException {
    out.writeStartArray();
    for (int i = 0; i < points.size(); i++) {
      writePosition(points, backwards ? points.size() - 1 - i : i);
    }
    out.writeEndArray();
  }

  private void writePosition(CoordinateSequence points, int i) throws IOException {
    double lon = points.getX(i);
    double lat = points.getY(i);
    if (!(Math.abs(lon) <= 180 && Math.abs(lat) <= 90)) {
      throw new IllegalArgumentException("no longitude and latitude: " + lon + " " + lat);
    }
    out.writeStartArray();
    out.writeNumber(PlainDecimal.rounded(lon));
    out.writeNumber(PlainDecimal.rounded(lat));
    out.writeEndArray();
  }
}
