package org.lynchet.formats.shapefile;

import java.nio.ByteBuffer;
import java.util.ArrayList;
import java.util.List;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.LineString;
import org.lynchet.formats.FaultList;

/** Decodes the content of one record (ESRI description, pages 6 to 17); Z and M are passed over. */
final class RecordDecoder {
  private static final int POINT_BYTES = 16;
  private static final int MIN_RING_POINTS = 4;

  /** Where the part starts begin: after the type, the box and the two counts. */
  private static final int STARTS = 44;

  private final ShapeType type;
  private final ByteBuffer in;
  private final String place;
  private final FaultList faults;

  RecordDecoder(ShapeType type, ByteBuffer in, String place, FaultList faults) {
    this.type = type;
    this.in = in;
    this.place = place;
    this.faults = faults;
  }

  /** The geometry, or an empty collection after a fault. */
  Geometry decode(GeometryFactory factory) {
    return type.kind == ShapeType.Kind.POINT ? decodePoint(factory) : decodeParts(factory);
  }

  private Geometry decodePoint(GeometryFactory factory) {
    int length = 4 + POINT_BYTES;
    if (!hasLength(length + (type.hasZ ? 8 : 0), type.hasM ? 8 : 0)) {
      return factory.createGeometryCollection();
    }
    Coordinate point = coordinate(4);
    if (!isFinite(point)) {
      faultNumber(point, place);
    }
    return factory.createPoint(point);
  }

  private Geometry decodeParts(GeometryFactory factory) {
    List<Coordinate[]> parts = hasCounts() ? parts() : List.of();
    if (parts.isEmpty()) {
      return factory.createGeometryCollection();
    }
    if (type.kind == ShapeType.Kind.LINE) {
      LineString[] lines = parts.stream().map(factory::createLineString).toArray(LineString[]::new);
      return lines.length == 1 ? lines[0] : factory.createMultiLineString(lines);
    }
    return new RingNesting(factory, parts.stream().map(factory::createLinearRing).toList())
        .toGeometry();
  }

  /** Whether the counts agree with the record's length, and the part starts with the counts. */
  private boolean hasCounts() {
    if (in.limit() < STARTS) {
      fault("it ends after " + in.limit() + " bytes", place, "at least 44 bytes");
      return false;
    }
    int parts = in.getInt(STARTS - 8);
    int points = in.getInt(STARTS - 4);
    if (parts < 1 || points < parts) {
      fault(parts + " parts with " + points + " points", place, "at least one part with points");
      return false;
    }
    long extra = 16 + 8L * points;
    long plain = STARTS + 4L * parts + (long) POINT_BYTES * points;
    return hasLength(plain + (type.hasZ ? extra : 0), type.hasM ? extra : 0)
        && hasStarts(parts, points);
  }

  /** Whether the record is as long as it must be; the M values may be left out. */
  private boolean hasLength(long bytes, long optional) {
    if (in.limit() == bytes || in.limit() == bytes + optional) {
      return true;
    }
    fault("it has " + in.limit() + " bytes for " + type, place, bytes + " bytes by its counts");
    return false;
  }

  private boolean hasStarts(int parts, int points) {
    int before = -1;
    for (int i = 0; i < parts; i++) {
      int start = in.getInt(STARTS + 4 * i);
      if (start <= before || start >= points || (i == 0 && start != 0)) {
        fault(
            "part " + (i + 1) + " starts at point " + start,
            place,
            "parts from point 0 on, one after the other, below " + points);
        return false;
      }
      before = start;
    }
    return true;
  }

  /** The parts, without those that have a fault. */
  private List<Coordinate[]> parts() {
    int count = in.getInt(STARTS - 8);
    int points = in.getInt(STARTS - 4);
    int first = STARTS + 4 * count;
    List<Coordinate[]> parts = new ArrayList<>(count);
    for (int i = 0; i < count; i++) {
      int start = in.getInt(STARTS + 4 * i);
      int end = i + 1 < count ? in.getInt(STARTS + 4 * (i + 1)) : points;
      String part = place + ", part " + (i + 1);
      Coordinate[] coordinates = new Coordinate[end - start];
      for (int k = 0; k < coordinates.length; k++) {
        coordinates[k] = coordinate(first + POINT_BYTES * (start + k));
        if (!isFinite(coordinates[k])) {
          faultNumber(coordinates[k], part + ", point " + (k + 1));
        }
      }
      if (isWhole(coordinates, part)) {
        parts.add(coordinates);
      }
    }
    return parts;
  }

  private boolean isWhole(Coordinate[] part, String where) {
    Coordinate first = part[0];
    Coordinate last = part[part.length - 1];
    if (type.kind == ShapeType.Kind.LINE) {
      if (part.length < 2) {
        fault("a line of one point", where, "at least 2 points in a line");
      }
      return part.length >= 2;
    }
    if (part.length < MIN_RING_POINTS) {
      fault(
          "a ring of " + part.length + " points",
          where,
          "at least 4 points, the last equal to the first");
      return false;
    }
    if (!first.equals2D(last)) {
      fault(
          "a ring that is not closed: it starts at " + shown(first) + ", ends at " + shown(last),
          where,
          "a last point equal to the first");
      return false;
    }
    return true;
  }

  private Coordinate coordinate(int position) {
    return new Coordinate(in.getDouble(position), in.getDouble(position + 8));
  }

  private static boolean isFinite(Coordinate point) {
    return Double.isFinite(point.x) && Double.isFinite(point.y);
  }

  private void faultNumber(Coordinate point, String where) {
    fault("a coordinate that is no number: " + shown(point), where, "finite numbers");
  }

  private static String shown(Coordinate point) {
    return point.x + " " + point.y;
  }

  private void fault(String what, String where, String allowed) {
    faults.add(what, where, allowed, "draw the shape again, or export the shapefile again");
  }
}
