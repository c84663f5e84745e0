package org.lynchet.geometry.coverage;

import java.io.Serializable;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.LinearRing;
import org.locationtech.jts.geom.Polygon;
import org.lynchet.geometry.guidance.OffsetFrame;

/** Takes a boundary into the offset frame of an AB line. */
public final class FieldShape implements Serializable {
  private static final long serialVersionUID = 1L;

  private final Vertices vertices;

  /** One polygon each: an outer ring and its holes. */
  private final ArrayList<int[][]> parts;

  private FieldShape(Vertices vertices, List<int[][]> parts) {
    this.vertices = vertices;
    this.parts = new ArrayList<>(parts);
  }

  /**
   * Takes a boundary in.
   *
   * @param boundary a valid polygon or multipolygon of longitudes (x) and latitudes (y) in degrees;
   *     rings of either direction
   * @param frame the frame of the AB line
   */
  public static FieldShape of(Geometry boundary, OffsetFrame frame) {
    Vertices vertices = new Vertices(frame, boundary.getNumPoints() * 4);
    ArrayList<int[][]> parts = new ArrayList<>();
    for (int i = 0; i < boundary.getNumGeometries(); i++) {
      if (boundary.getGeometryN(i) instanceof Polygon polygon && !polygon.isEmpty()) {
        int[][] rings = new int[1 + polygon.getNumInteriorRing()][];
        rings[0] = ring(vertices, polygon.getExteriorRing(), true);
        for (int hole = 0; hole < polygon.getNumInteriorRing(); hole++) {
          rings[hole + 1] = ring(vertices, polygon.getInteriorRingN(hole), false);
        }
        parts.add(rings);
      }
    }
    return new FieldShape(vertices, parts);
  }

  private static int[] ring(Vertices vertices, LinearRing line, boolean outer) {
    Coordinate[] coordinates = line.getCoordinates();
    int[] ring = new int[coordinates.length - 1];
    int size = 0;
    for (int i = 0; i < ring.length; i++) {
      if (!coordinates[i].equals2D(coordinates[i + 1])) {
        ring[size++] = vertices.addLonLat(coordinates[i].x, coordinates[i].y);
      }
    }
    ring = Arrays.copyOf(ring, size);
    if (Rings.signedArea(vertices, ring) > 0 != outer) {
      for (int i = 0, j = size - 1; i < j; i++, j--) {
        int swap = ring[i];
        ring[i] = ring[j];
        ring[j] = swap;
      }
    }
    return ring;
  }

  /** The area in square metres, in the plane. */
  public double areaSquareMetres() {
    double area = 0;
    for (int[][] part : parts) {
      area += Rings.area(vertices, part);
    }
    return area;
  }

  Vertices vertices() {
    return vertices;
  }

  List<int[][]> parts() {
    return parts;
  }
}
