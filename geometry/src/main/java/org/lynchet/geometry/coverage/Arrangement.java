package org.lynchet.geometry.coverage;

import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.LineString;
import org.locationtech.jts.geom.LinearRing;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.geom.PrecisionModel;
import org.locationtech.jts.noding.NodedSegmentString;
import org.locationtech.jts.noding.SegmentString;
import org.locationtech.jts.noding.snapround.SnapRoundingNoder;
import org.locationtech.jts.operation.polygonize.Polygonizer;

/**
 * Nodes lines together on a grid and finds the faces between them.
 *
 * <p>Lines that meet, cross, or pass within half a grid step of a vertex come to share that vertex,
 * so that faces match. A node that is the grid point of a known vertex is that vertex, with its own
 * unrounded place; other nodes become new vertices.
 */
final class Arrangement {
  private static final GeometryFactory FACTORY = new GeometryFactory();

  private final Vertices vertices;
  private final Rings.Place place;
  private final PrecisionModel grid;
  private final Map<Coordinate, Integer> vertexAt = new HashMap<>();
  private final List<SegmentString> lines = new ArrayList<>();

  /**
   * Begins an arrangement.
   *
   * @param vertices gets new nodes added
   * @param place which of their places the lines are in
   * @param stepsPerUnit grid points in a metre or a degree
   */
  Arrangement(Vertices vertices, Rings.Place place, double stepsPerUnit) {
    this.vertices = vertices;
    this.place = place;
    this.grid = new PrecisionModel(stepsPerUnit);
  }

  /** Adds a ring of known vertices. */
  void addRing(int[] ring) {
    Coordinate[] line = Rings.coordinates(vertices, ring, place);
    for (int i = 0; i < ring.length; i++) {
      vertexAt.putIfAbsent(onGrid(line[i]), ring[i]);
    }
    addLine(line);
  }

  /** Adds any line. */
  void addLine(Coordinate[] line) {
    lines.add(new NodedSegmentString(line, null));
  }

  private Coordinate onGrid(Coordinate at) {
    Coordinate rounded = new Coordinate(at);
    grid.makePrecise(rounded);
    return rounded;
  }

  /** A face between lines. */
  static final class Face {
    /** A place inside it. */
    final Coordinate inside;

    /** An outer ring, counter-clockwise, and holes, clockwise. */
    final int[][] rings;

    Face(Coordinate inside, int[][] rings) {
      this.inside = inside;
      this.rings = rings;
    }
  }

  /** Nodes the lines; returns every bounded face. */
  List<Face> faces() {
    SnapRoundingNoder noder = new SnapRoundingNoder(grid);
    noder.computeNodes(lines);
    Collection<?> noded = noder.getNodedSubstrings();
    Map<Geometry, LineString> distinct = new LinkedHashMap<>();
    for (Object substring : noded) {
      Coordinate[] coordinates = ((SegmentString) substring).getCoordinates();
      for (int i = 0; i + 1 < coordinates.length; i++) {
        if (!coordinates[i].equals2D(coordinates[i + 1])) {
          LineString segment =
              FACTORY.createLineString(new Coordinate[] {coordinates[i], coordinates[i + 1]});
          distinct.putIfAbsent(segment.norm(), segment);
        }
      }
    }
    Polygonizer polygonizer = new Polygonizer();
    polygonizer.add(distinct.values());
    List<Face> faces = new ArrayList<>();
    for (Object polygon : polygonizer.getPolygons()) {
      faces.add(face((Polygon) polygon));
    }
    return faces;
  }

  private Face face(Polygon polygon) {
    int[][] rings = new int[1 + polygon.getNumInteriorRing()][];
    rings[0] = ring(polygon.getExteriorRing(), true);
    for (int i = 1; i < rings.length; i++) {
      rings[i] = ring(polygon.getInteriorRingN(i - 1), false);
    }
    return new Face(polygon.getInteriorPoint().getCoordinate(), rings);
  }

  private int[] ring(LinearRing line, boolean outer) {
    Coordinate[] coordinates = line.getCoordinates();
    boolean reverse = org.locationtech.jts.algorithm.Orientation.isCCW(coordinates) != outer;
    int[] ring = new int[coordinates.length - 1];
    for (int i = 0; i < ring.length; i++) {
      ring[reverse ? ring.length - 1 - i : i] = vertexOf(coordinates[i]);
    }
    return ring;
  }

  private int vertexOf(Coordinate node) {
    return vertexAt.computeIfAbsent(
        node,
        at ->
            place == Rings.Place.OFFSET
                ? vertices.add(at.x, at.y)
                : vertices.addLonLat(at.x, at.y));
  }
}
