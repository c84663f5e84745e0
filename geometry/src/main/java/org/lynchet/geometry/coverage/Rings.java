package org.lynchet.geometry.coverage;

import java.util.ArrayList;
import java.util.List;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.LinearRing;
import org.locationtech.jts.geom.MultiPolygon;
import org.locationtech.jts.geom.Polygon;

/** Measures and converts rings of vertices; a ring does not repeat its first vertex. */
final class Rings {
  static final GeometryFactory FACTORY = new GeometryFactory();

  private Rings() {}

  /** Which of its two places a vertex is looked up by. */
  enum Place {
    OFFSET,
    LON_LAT
  }

  /** The area that a ring bounds in square metres; negative if it bounds it on its right. */
  static double signedArea(Vertices vertices, int[] ring) {
    return signedArea(vertices, Place.OFFSET, ring);
  }

  /** The area that a ring bounds in square metres or degrees; negative if on its right. */
  static double signedArea(Vertices vertices, Place place, int[] ring) {
    double[] x = vertices.firsts(place);
    double[] y = vertices.seconds(place);
    double x0 = x[ring[0]];
    double y0 = y[ring[0]];
    double twice = 0;
    double px = x[ring[ring.length - 1]] - x0;
    double py = y[ring[ring.length - 1]] - y0;
    for (int vertex : ring) {
      double qx = x[vertex] - x0;
      double qy = y[vertex] - y0;
      twice += px * qy - qx * py;
      px = qx;
      py = qy;
    }
    return twice / 2;
  }

  /** The area of a polygon, its rings an outer one and its holes. */
  static double area(Vertices vertices, int[][] rings) {
    double area = 0;
    for (int[] ring : rings) {
      area += signedArea(vertices, ring);
    }
    return area;
  }

  /** How many edges the rings of a polygon have together. */
  static int edges(int[][] rings) {
    int edges = 0;
    for (int[] ring : rings) {
      edges += ring.length;
    }
    return edges;
  }

  /** Whether a ring winds around a place that is not on it. */
  static boolean contains(Vertices vertices, Place place, int[] ring, double x, double y) {
    boolean inside = false;
    int u = ring[ring.length - 1];
    for (int v : ring) {
      double uy = vertices.second(place, u);
      double vy = vertices.second(place, v);
      if (uy > y != vy > y) {
        double ux = vertices.first(place, u);
        double crossing = ux + (vertices.first(place, v) - ux) * ((y - uy) / (vy - uy));
        if (crossing > x) {
          inside = !inside;
        }
      }
      u = v;
    }
    return inside;
  }

  /** A polygon of JTS, its rings an outer one and its holes. */
  static Polygon polygon(Vertices vertices, int[][] rings, Place place) {
    LinearRing[] holes = new LinearRing[rings.length - 1];
    for (int i = 0; i < holes.length; i++) {
      holes[i] = FACTORY.createLinearRing(coordinates(vertices, rings[i + 1], place));
    }
    return FACTORY.createPolygon(
        FACTORY.createLinearRing(coordinates(vertices, rings[0], place)), holes);
  }

  /** A multipolygon of JTS of polygons, their rings an outer one and its holes. */
  static MultiPolygon multiPolygon(Vertices vertices, List<int[][]> polygons, Place place) {
    return multiPolygon(polygons.stream().map(rings -> polygon(vertices, rings, place)).toList());
  }

  static MultiPolygon multiPolygon(List<Polygon> polygons) {
    return FACTORY.createMultiPolygon(polygons.toArray(new Polygon[0]));
  }

  /** The polygons of a geometry; points and lines in it are left out. */
  static List<Polygon> polygons(Geometry geometry) {
    List<Polygon> polygons = new ArrayList<>();
    for (int i = 0; i < geometry.getNumGeometries(); i++) {
      if (geometry.getGeometryN(i) instanceof Polygon polygon && !polygon.isEmpty()) {
        polygons.add(polygon);
      }
    }
    return polygons;
  }

  /** The coordinates of a ring, the first repeated at the end. */
  static Coordinate[] coordinates(Vertices vertices, int[] ring, Place place) {
    Coordinate[] coordinates = new Coordinate[ring.length + 1];
    for (int i = 0; i < ring.length; i++) {
      coordinates[i] = coordinate(vertices, ring[i], place);
    }
    coordinates[ring.length] = coordinates[0];
    return coordinates;
  }

  static Coordinate coordinate(Vertices vertices, int vertex, Place place) {
    return new Coordinate(vertices.first(place, vertex), vertices.second(place, vertex));
  }
}
