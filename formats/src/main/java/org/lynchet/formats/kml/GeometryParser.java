package org.lynchet.formats.kml;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.LinearRing;
import org.locationtech.jts.geom.Polygon;
import org.lynchet.formats.Excerpt;
import org.lynchet.formats.FaultList;
import org.lynchet.formats.PlainDecimal;
import org.lynchet.formats.XmlElement;

/** Reads geometries; heights are passed over, open rings are closed. */
final class GeometryParser {
  private static final Pattern BLANKS = Pattern.compile("\\s+");
  private static final int SHOWN = 40;

  private final GeometryFactory factory = new GeometryFactory();
  private final String place;
  private final FaultList faults;

  GeometryParser(String place, FaultList faults) {
    this.place = place;
    this.faults = faults;
  }

  /** The geometry of a placemark; an empty collection if it has none. */
  Geometry geometry(XmlElement placemark) {
    List<Geometry> parts = new ArrayList<>();
    collect(placemark, parts);
    return parts.size() == 1 ? parts.get(0) : factory.buildGeometry(parts);
  }

  private void collect(XmlElement element, List<Geometry> parts) {
    for (XmlElement child : element.children()) {
      switch (child.name()) {
        case "MultiGeometry" -> collect(child, parts);
        case "Polygon" -> polygon(child).ifPresent(parts::add);
        case "Point" -> {
          List<Coordinate> points = points(child);
          if (points.size() == 1) {
            parts.add(factory.createPoint(points.get(0)));
          }
        }
        case "LineString", "LinearRing" -> {
          List<Coordinate> points = points(child);
          if (points.size() > 1) {
            parts.add(factory.createLineString(points.toArray(new Coordinate[0])));
          }
        }
        default -> {
          // Models, tracks and all that is no geometry.
        }
      }
    }
  }

  private Optional<Polygon> polygon(XmlElement polygon) {
    List<LinearRing> outer = rings(polygon, "outerBoundaryIs");
    List<LinearRing> inner = rings(polygon, "innerBoundaryIs");
    if (outer.size() != 1) {
      fault(polygon, "a polygon with " + outer.size() + " outer rings", "one outer ring");
      return Optional.empty();
    }
    return Optional.of(factory.createPolygon(outer.get(0), inner.toArray(new LinearRing[0])));
  }

  private List<LinearRing> rings(XmlElement polygon, String role) {
    List<LinearRing> rings = new ArrayList<>();
    for (XmlElement boundary : polygon.children(role)) {
      for (XmlElement ring : boundary.children("LinearRing")) {
        List<Coordinate> points = points(ring);
        if (!points.isEmpty() && !points.get(0).equals2D(points.get(points.size() - 1))) {
          points.add(points.get(0).copy());
        }
        if (points.size() < 4) {
          fault(ring, "a ring of " + points.size() + " points", "at least 3 different points");
        } else {
          rings.add(factory.createLinearRing(points.toArray(new Coordinate[0])));
        }
      }
    }
    return rings;
  }

  private List<Coordinate> points(XmlElement element) {
    List<Coordinate> points = new ArrayList<>();
    for (XmlElement coordinates : element.children("coordinates")) {
      if (!coordinates.text().isEmpty()) {
        for (String tuple : BLANKS.split(coordinates.text(), -1)) {
          point(tuple, coordinates).ifPresent(points::add);
        }
      }
    }
    return points;
  }

  private Optional<Coordinate> point(String tuple, XmlElement coordinates) {
    int comma = tuple.indexOf(',');
    int second = tuple.indexOf(',', comma + 1);
    String longitude = comma < 0 ? tuple : tuple.substring(0, comma);
    String latitude =
        comma < 0 ? "" : tuple.substring(comma + 1, second < 0 ? tuple.length() : second);
    double x = PlainDecimal.parse(longitude);
    double y = PlainDecimal.parse(latitude);
    if (Math.abs(x) <= 180 && Math.abs(y) <= 90) {
      return Optional.of(new Coordinate(x, y));
    }
    fault(
        coordinates,
        "'" + Excerpt.of(tuple, SHOWN) + "' is no place",
        "longitude,latitude in degrees, blanks between places only");
    return Optional.empty();
  }

  private void fault(XmlElement element, String what, String allowed) {
    faults.add(what, place + " line " + element.line(), allowed, "export it again");
  }
}
