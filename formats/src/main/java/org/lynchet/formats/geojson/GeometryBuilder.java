package org.lynchet.formats.geojson;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.LineString;
import org.locationtech.jts.geom.LinearRing;
import org.locationtech.jts.geom.Polygon;

/**
 * Makes geometries of what {@code coordinates} hold (RFC 7946, section 3.1). What has a fault is
 * left out; the file is refused at the end in any case.
 */
final class GeometryBuilder {
  private static final int MIN_RING_POSITIONS = 4;

  private final GeometryFactory factory = new GeometryFactory();
  private final JsonFaults faults;

  GeometryBuilder(JsonFaults faults) {
    this.faults = faults;
  }

  /** The geometry; an empty collection if there is none. */
  Geometry build(@Nullable GeoObject object) {
    if (object == null) {
      return factory.createGeometryCollection();
    }
    String type = object.type == null ? "" : object.type;
    if (type.equals("GeometryCollection")) {
      return collection(object);
    }
    Nest nest = object.coordinates;
    if (nest == null) {
      fault(
          type.isEmpty() ? "neither type nor coordinates" : type + " without coordinates",
          object.spot,
          object.path,
          "a geometry with type and coordinates");
      return factory.createGeometryCollection();
    }
    String path = object.member("coordinates");
    return switch (type) {
      case "Point" -> {
        Coordinate point = position(nest, path);
        yield point == null ? factory.createGeometryCollection() : factory.createPoint(point);
      }
      case "MultiPoint" -> factory.createMultiPointFromCoords(positions(nest, path));
      case "LineString" -> simple(lines(new Nest.Items(List.of(nest), nest.spot()), path, false));
      case "MultiLineString" ->
          factory.createMultiLineString(lines(nest, path, true).toArray(new LineString[0]));
      case "Polygon" -> simple(polygonOf(nest, path));
      case "MultiPolygon" -> multiPolygon(nest, path);
      default -> {
        fault("its type is " + type, object.spot, object.path, "a geometry's type of RFC 7946");
        yield factory.createGeometryCollection();
      }
    };
  }

  private Geometry simple(List<? extends Geometry> zeroOrOne) {
    return zeroOrOne.isEmpty() ? factory.createGeometryCollection() : zeroOrOne.get(0);
  }

  private Geometry collection(GeoObject object) {
    if (object.geometries == null) {
      fault("no geometries in it", object.spot, object.path, "an array called geometries");
      return factory.createGeometryCollection();
    }
    List<Geometry> parts = new ArrayList<>();
    for (GeoObject member : object.geometries) {
      Geometry geometry = build(member);
      for (int i = 0; i < geometry.getNumGeometries(); i++) {
        parts.add(geometry.getGeometryN(i));
      }
    }
    parts.removeIf(Geometry::isEmpty);
    return !parts.isEmpty() && parts.stream().allMatch(p -> p instanceof Polygon)
        ? factory.createMultiPolygon(parts.toArray(new Polygon[0]))
        : factory.createGeometryCollection(parts.toArray(new Geometry[0]));
  }

  private Geometry multiPolygon(Nest nest, String path) {
    List<Polygon> polygons = new ArrayList<>();
    List<Nest> items = items(nest, path);
    for (int i = 0; i < items.size(); i++) {
      polygons.addAll(polygonOf(items.get(i), path + "[" + i + "]"));
    }
    return factory.createMultiPolygon(polygons.toArray(new Polygon[0]));
  }

  /** The polygon, or nothing if it has no rings. */
  private List<Polygon> polygonOf(Nest nest, String path) {
    List<LinearRing> rings = new ArrayList<>();
    List<Nest> items = items(nest, path);
    for (int i = 0; i < items.size(); i++) {
      LinearRing ring = ring(items.get(i), path + "[" + i + "]");
      if (ring != null) {
        rings.add(ring);
      }
    }
    if (rings.isEmpty()) {
      return List.of();
    }
    LinearRing[] holes = rings.subList(1, rings.size()).toArray(new LinearRing[0]);
    return List.of(factory.createPolygon(rings.get(0), holes));
  }

  private @Nullable LinearRing ring(Nest nest, String path) {
    if (nest instanceof Nest.Broken) {
      return null;
    }
    int seen = items(nest, path).size();
    Coordinate[] points = positions(nest, path);
    if (points.length != seen || nest instanceof Nest.Position) {
      return null; // told already
    }
    if (seen < MIN_RING_POSITIONS) {
      fault("a ring of " + seen + " positions", nest.spot(), path, "at least 4, first = last");
      return null;
    }
    Coordinate first = points[0];
    Coordinate last = points[seen - 1];
    if (!first.equals2D(last)) {
      fault(
          "a ring that is not closed: from " + shown(first) + " to " + shown(last),
          nest.spot(),
          path + "[" + (seen - 1) + "]",
          "a last position equal to the first");
      return null;
    }
    return factory.createLinearRing(points);
  }

  private List<LineString> lines(Nest nest, String path, boolean many) {
    List<LineString> lines = new ArrayList<>();
    List<Nest> items = items(nest, path);
    for (int i = 0; i < items.size(); i++) {
      String where = many ? path + "[" + i + "]" : path;
      Coordinate[] points = positions(items.get(i), where);
      if (points.length >= 2) {
        lines.add(factory.createLineString(points));
      } else if (points.length == 1) {
        fault("a line of one position", items.get(i).spot(), where, "at least 2 positions");
      }
    }
    return lines;
  }

  private Coordinate[] positions(Nest nest, String path) {
    List<Coordinate> points = new ArrayList<>();
    List<Nest> items = items(nest, path);
    for (int i = 0; i < items.size(); i++) {
      if (items.get(i) instanceof Nest.Position position) {
        points.add(position.coordinate());
      } else {
        position(items.get(i), path + "[" + i + "]");
      }
    }
    return points.toArray(new Coordinate[0]);
  }

  private @Nullable Coordinate position(Nest nest, String path) {
    if (nest instanceof Nest.Position position) {
      return position.coordinate();
    }
    if (nest instanceof Nest.Items items && !(items.items().isEmpty() && !path.endsWith("]"))) {
      fault("it is an array of " + items.items().size(), nest.spot(), path, "a position");
    }
    return null;
  }

  private List<Nest> items(Nest nest, String path) {
    if (nest instanceof Nest.Items items) {
      return items.items();
    }
    if (nest instanceof Nest.Position) {
      fault("it is one position", nest.spot(), path, "an array of them");
    }
    return List.of();
  }

  private static String shown(Coordinate point) {
    return point.x + " " + point.y;
  }

  private void fault(String what, JsonSpot spot, String path, String allowed) {
    faults.add(what, spot, path, allowed);
  }
}
