package org.lynchet.formats.csv;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.SortedMap;
import java.util.TreeMap;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.LinearRing;
import org.locationtech.jts.geom.Polygon;
import org.lynchet.formats.FaultList;

/** Gathers vertices by part and ring, and makes the area, or the lines, of them. */
final class VertexRings {
  private static final int MIN_VERTICES = 3;
  private static final int MIN_OF_LINE = 2;

  private final String file;
  private final FaultList faults;
  private final GeometryFactory factory = new GeometryFactory();
  private final SortedMap<Integer, SortedMap<Integer, List<Coordinate>>> parts = new TreeMap<>();

  VertexRings(String file, FaultList faults) {
    this.file = file;
    this.faults = faults;
  }

  void add(int part, int ring, Coordinate vertex) {
    parts
        .computeIfAbsent(part, p -> new TreeMap<>())
        .computeIfAbsent(ring, r -> new ArrayList<>())
        .add(vertex);
  }

  /**
   * Tells which rings have too few vertices, if the rows had no faults.
   *
   * @param lines whether they are lines
   */
  void check(boolean lines) {
    if (!faults.isEmpty()) {
      return;
    }
    if (parts.isEmpty()) {
      faults.add("no rows after the header", file, "one row for each vertex", "export it again");
    }
    String kind = lines ? "line" : "ring";
    int least = lines ? MIN_OF_LINE : MIN_VERTICES;
    parts.forEach(
        (part, rings) ->
            rings.forEach(
                (ring, points) -> {
                  int different = new HashSet<>(points).size();
                  if (different < least) {
                    faults.add(
                        "a " + kind + " of " + different + " different vertices",
                        file + ", part " + part + ", ring " + ring,
                        "at least " + least,
                        "give the whole " + kind + ", or leave it out");
                  }
                }));
  }

  Geometry toGeometry() {
    List<Polygon> polygons = new ArrayList<>();
    for (SortedMap<Integer, List<Coordinate>> part : parts.values()) {
      List<LinearRing> rings = part.values().stream().map(this::closed).toList();
      LinearRing[] holes = rings.subList(1, rings.size()).toArray(new LinearRing[0]);
      polygons.add(factory.createPolygon(rings.get(0), holes));
    }
    return polygons.size() == 1
        ? polygons.get(0)
        : factory.createMultiPolygon(polygons.toArray(new Polygon[0]));
  }

  List<Geometry> toLines() {
    List<Geometry> lines = new ArrayList<>();
    for (SortedMap<Integer, List<Coordinate>> part : parts.values()) {
      for (List<Coordinate> points : part.values()) {
        lines.add(factory.createLineString(points.toArray(new Coordinate[0])));
      }
    }
    return lines;
  }

  private LinearRing closed(List<Coordinate> vertices) {
    List<Coordinate> points = new ArrayList<>(vertices);
    if (!points.get(0).equals2D(points.get(points.size() - 1))) {
      points.add(points.get(0).copy());
    }
    return factory.createLinearRing(points.toArray(new Coordinate[0]));
  }
}
