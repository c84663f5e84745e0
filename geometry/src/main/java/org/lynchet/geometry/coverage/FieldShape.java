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

  /** With more rings than this they are not held against each other one by one. */
  private static final int FEW_RINGS = 8;

  private final Vertices vertices;

  /** One polygon each: an outer ring and its holes. */
  private final ArrayList<int[][]> parts;

  private FieldShape(Vertices vertices, List<int[][]> parts) {
    this.vertices = vertices;
    this.parts = new ArrayList<>(parts);
  }

  /**
   * Takes a boundary in. Where its rings touch so finely that they cross in the plane, they are
   * parted there.
   *
   * @param boundary a valid polygon or multipolygon of longitudes (x) and latitudes (y) in degrees;
   *     rings of either direction
   * @param frame the frame of the AB line
   */
  public static FieldShape of(Geometry boundary, OffsetFrame frame) {
    Vertices vertices = new Vertices(frame, boundary.getNumPoints());
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
    return new FieldShape(vertices, isValid(vertices, parts) ? parts : mended(vertices, parts));
  }

  private static int[] ring(Vertices vertices, LinearRing line, boolean outer) {
    Coordinate[] coordinates = line.getCoordinates();
    int[] ring = new int[coordinates.length - 1];
    int size = 0;
    for (int i = 0; i < ring.length; i++) {
      int vertex = vertices.addLonLat(coordinates[i].x, coordinates[i].y);
      if (size == 0 || !vertices.isSamePlace(vertex, ring[size - 1])) {
        ring[size++] = vertex;
      }
    }
    while (size > 1 && vertices.isSamePlace(ring[0], ring[size - 1])) {
      size--;
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

  private static boolean isValid(Vertices vertices, List<int[][]> parts) {
    for (int[][] part : parts) {
      for (int[] ring : part) {
        if (ring.length < 3) {
          return false;
        }
      }
    }
    return (parts.size() == 1 && isCertain(vertices, parts.get(0)))
        || Rings.multiPolygon(vertices, parts, Rings.Place.OFFSET).isValid();
  }

  /** Whether no edges meet and every hole lies in the outer ring and in no other hole. */
  private static boolean isCertain(Vertices vertices, int[][] rings) {
    if (rings.length == 1 && new TwoChains(vertices, Rings.Place.OFFSET).areCertain(rings[0])) {
      return true;
    }
    if (rings.length > FEW_RINGS) {
      return false;
    }
    RingEdges edges = new RingEdges();
    edges.fill(vertices, rings, Rings.Place.OFFSET, vertex -> true);
    if (!EdgeSweep.noneMeet(edges)) {
      return false;
    }
    for (int hole = 1; hole < rings.length; hole++) {
      double x = vertices.x(rings[hole][0]);
      double y = vertices.y(rings[hole][0]);
      for (int r = 0; r < rings.length; r++) {
        if (r != hole && Rings.contains(vertices, Rings.Place.OFFSET, rings[r], x, y) != (r == 0)) {
          return false;
        }
      }
    }
    return true;
  }

  /**
   * A line that is straight in longitude and latitude is not straight in the plane, 12 mm off at
   * the middle of 800 m, so rings that touch an edge between its ends can come to cross it.
   */
  private static List<int[][]> mended(Vertices vertices, List<int[][]> parts) {
    Arrangement arrangement =
        new Arrangement(vertices, Rings.Place.OFFSET, Vertices.STEPS_PER_METRE);
    for (int[][] part : parts) {
      for (int[] ring : part) {
        if (ring.length > 2) {
          arrangement.addRing(ring, 0);
        }
      }
    }
    List<int[][]> faces = new ArrayList<>();
    for (Arrangement.Face face : arrangement.faces()) {
      if (face.areas.length > 0) {
        faces.add(face.rings);
      }
    }
    return FaceJoiner.join(vertices, Rings.Place.OFFSET, faces);
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
