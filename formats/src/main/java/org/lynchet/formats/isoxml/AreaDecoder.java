package org.lynchet.formats.isoxml;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.locationtech.jts.algorithm.Area;
import org.locationtech.jts.algorithm.PointLocation;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.LinearRing;
import org.locationtech.jts.geom.MultiPolygon;
import org.locationtech.jts.geom.Polygon;
import org.lynchet.formats.FaultList;
import org.lynchet.formats.PlainDecimal;
import org.lynchet.formats.XmlElement;

/** Reads polygons (PLN), each with one or more exterior rings and the interior ones in them. */
final class AreaDecoder {
  private static final GeometryFactory GEOMETRIES = new GeometryFactory();
  private static final int MOST_RINGS = 20_000;

  /** The part by which the areas of the same ring, walked from elsewhere, may differ. */
  private static final double SAME_AREA = 1e-9;

  private final TaskTree tree;
  private final FaultList faults;

  AreaDecoder(TaskTree tree, FaultList faults) {
    this.tree = tree;
    this.faults = faults;
  }

  /** The polygons of some types in an element as one area; empty if there are none. */
  MultiPolygon area(XmlElement element, List<String> types) {
    List<Polygon> polygons = new ArrayList<>();
    for (XmlElement polygon : element.children("PLN")) {
      if (types.contains(polygon.attribute("A"))) {
        polygons.addAll(polygons(polygon));
      }
    }
    return GEOMETRIES.createMultiPolygon(polygons.toArray(new Polygon[0]));
  }

  private List<Polygon> polygons(XmlElement polygon) {
    List<Shell> shells = new ArrayList<>();
    List<XmlElement> segments = polygon.children("LSG");
    if (segments.size() > MOST_RINGS) {
      faults.add(
          segments.size() + " rings in one polygon",
          tree.where(polygon),
          "at most " + MOST_RINGS,
          "export one field only");
      return List.of();
    }
    for (XmlElement segment : segments) {
      if (segment.attribute("A").equals("1")) {
        ring(segment).ifPresent(ring -> shells.add(Shell.of(ring)));
      }
    }
    for (XmlElement segment : segments) {
      if (segment.attribute("A").equals("2")) {
        ring(segment).ifPresent(ring -> addHole(shells, ring, segment));
      }
    }
    return shells.stream().map(Shell::toPolygon).toList();
  }

  private Optional<LinearRing> ring(XmlElement segment) {
    List<Coordinate> points = points(segment);
    if (points.isEmpty() || !points.get(0).equals2D(points.get(points.size() - 1))) {
      points.addAll(points.isEmpty() ? List.of() : List.of(points.get(0).copy()));
    }
    if (points.size() < 4) {
      faults.add(
          "a ring of " + Math.max(0, points.size() - 1) + " points",
          tree.where(segment),
          "at least 3 different points",
          "draw the outline again");
      return Optional.empty();
    }
    return Optional.of(GEOMETRIES.createLinearRing(points.toArray(new Coordinate[0])));
  }

  private void addHole(List<Shell> shells, LinearRing hole, XmlElement segment) {
    Shell around = shells.size() == 1 ? shells.get(0) : around(shells, hole);
    if (around == null) {
      faults.add(
          "an interior ring outside of every exterior one",
          tree.where(segment),
          "interior rings inside the polygon's exterior ring",
          "draw the outline again");
    } else {
      around.holes.add(hole);
    }
  }

  /**
   * The smallest exterior ring that the hole lies in and that is larger than it: another one may
   * fill the hole, or lie around the ring that the hole belongs to.
   */
  private static @Nullable Shell around(List<Shell> shells, LinearRing hole) {
    Polygon filled = GEOMETRIES.createPolygon(hole);
    double least = filled.getArea() * (1 + SAME_AREA);
    Coordinate inside = filled.getInteriorPoint().getCoordinate();
    Shell smallest = null;
    for (Shell shell : shells) {
      if (shell.area > least
          && (smallest == null || shell.area < smallest.area)
          && shell.ring.getEnvelopeInternal().covers(hole.getEnvelopeInternal())
          && PointLocation.isInRing(inside, shell.ring.getCoordinates())) {
        smallest = shell;
      }
    }
    return smallest;
  }

  /** The points of a line, longitude as x; those that are no place on earth become faults. */
  List<Coordinate> points(XmlElement segment) {
    List<Coordinate> points = new ArrayList<>();
    for (XmlElement point : segment.children("PNT")) {
      double latitude = degrees(point, "C", 90);
      double longitude = degrees(point, "D", 180);
      if (!Double.isNaN(latitude) && !Double.isNaN(longitude)) {
        points.add(new Coordinate(longitude, latitude));
      }
    }
    return points;
  }

  private double degrees(XmlElement point, String attribute, double most) {
    String text = point.attribute(attribute).strip();
    double value = PlainDecimal.parse(text);
    if (Math.abs(value) <= most) {
      return value;
    }
    faults.add(
        "the point's "
            + (attribute.equals("C") ? "latitude" : "longitude")
            + " is '"
            + IsoText.shown(text)
            + "'",
        tree.where(point) + " " + attribute,
        "degrees from -" + (int) most + " to " + (int) most,
        "export it in WGS 84 degrees, latitude in C and longitude in D");
    return Double.NaN;
  }

  /** An exterior ring and the interior rings found in it. */
  private record Shell(LinearRing ring, double area, List<LinearRing> holes) {
    static Shell of(LinearRing ring) {
      return new Shell(ring, Area.ofRing(ring.getCoordinateSequence()), new ArrayList<>());
    }

    Polygon toPolygon() {
      return GEOMETRIES.createPolygon(ring, holes.toArray(new LinearRing[0]));
    }
  }
}
