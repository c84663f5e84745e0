package org.lynchet.geometry.coverage;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.locationtech.jts.algorithm.Orientation;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.LinearRing;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.geom.PrecisionModel;
import org.locationtech.jts.noding.NodedSegmentString;
import org.locationtech.jts.noding.SegmentString;
import org.locationtech.jts.operation.polygonize.Polygonizer;

/**
 * Nodes areas and lines together on a grid and finds the faces between them.
 *
 * <p>Lines that meet, cross, or pass within half a grid step of a vertex come to share that vertex,
 * so that faces match. A node at the place of a known vertex is that vertex, others become new
 * ones. What a face lies in is not asked of a place in it, since faces can be as thin as the grid,
 * but follows from the edges around it: see {@link Windings}.
 */
final class Arrangement {
  private static final GeometryFactory FACTORY = new GeometryFactory();

  /** No two rings have a directed edge in common. */
  private static final Comparator<int[]> BY_FIRST_EDGE =
      Comparator.comparingInt((int[] ring) -> ring[0]).thenComparingInt(ring -> ring[1]);

  private final Vertices vertices;
  private final Rings.Place place;
  private final PrecisionModel grid;
  private final Map<Coordinate, Integer> vertexAt = new HashMap<>();
  private final List<SegmentString> lines = new ArrayList<>();
  private final EdgeMap lineAlong = new EdgeMap(64);

  /** What a line was added as: the border of an area, which is on its left, or a mere line. */
  private record Source(int number, boolean isArea) {}

  /**
   * Begins an arrangement.
   *
   * @param vertices places on the grid; gets new nodes added
   * @param place which of their places the lines are in
   * @param stepsPerUnit grid points in a metre or a degree
   */
  Arrangement(Vertices vertices, Rings.Place place, double stepsPerUnit) {
    this.vertices = vertices;
    this.place = place;
    this.grid = new PrecisionModel(stepsPerUnit);
  }

  /** Adds a ring of known vertices that has an area on its left. */
  void addRing(int[] ring, int area) {
    Coordinate[] line = Rings.coordinates(vertices, ring, place);
    for (int i = 0; i < ring.length; i++) {
      Coordinate onGrid = new Coordinate(line[i]);
      grid.makePrecise(onGrid);
      vertexAt.putIfAbsent(onGrid, ring[i]);
    }
    addRing(line, area);
  }

  /** Adds a closed line that has an area on its left. */
  void addRing(Coordinate[] line, int area) {
    lines.add(new NodedSegmentString(line, new Source(area, true)));
  }

  /** Adds an open line. */
  void addLine(Coordinate[] line, int number) {
    lines.add(new NodedSegmentString(line, new Source(number, false)));
  }

  /** A face between lines. */
  static final class Face {
    /** An outer ring, counter-clockwise, and holes, clockwise. */
    final int[][] rings;

    /** Numbers of the areas that it lies in, rising. */
    final int[] areas;

    Face(int[][] rings, int[] areas) {
      this.rings = rings;
      this.areas = areas;
    }
  }

  /** Nodes the lines; returns every bounded face, in an order that depends on the lines alone. */
  List<Face> faces() {
    Windings windings = new Windings();
    VertexList edges = edges(new LineNoder(grid).noded(lines), windings);
    List<int[][]> faces = faces(edges);
    faces.forEach(Arrangement::beginWithFirst);
    faces.sort(Comparator.comparing(face -> face[0], BY_FIRST_EDGE));
    int[][] areas = windings.areasOf(faces);
    List<Face> result = new ArrayList<>(areas.length);
    for (int f = 0; f < areas.length; f++) {
      result.add(new Face(faces.get(f), areas[f]));
    }
    return result;
  }

  /** Labels the edges of noded lines; returns the two ends of each, every edge once. */
  private VertexList edges(List<SegmentString> nodedLines, Windings windings) {
    EdgeMap known = new EdgeMap(1024);
    VertexList edges = new VertexList();
    for (SegmentString noded : nodedLines) {
      Coordinate[] coordinates = noded.getCoordinates();
      int u = vertexOf(coordinates[0]);
      for (int i = 1; i < coordinates.length; i++) {
        int v = vertexOf(coordinates[i]);
        if (u != v) {
          label(u, v, (Source) noded.getData(), windings);
          if (known.put(Math.min(u, v), Math.max(u, v), 1) == EdgeMap.ABSENT) {
            edges.add(u);
            edges.add(v);
          }
        }
        u = v;
      }
    }
    return edges;
  }

  private List<int[][]> faces(VertexList edges) {
    Coordinate[] nodes = new Coordinate[vertices.size()];
    vertexAt.forEach((node, vertex) -> nodes[vertex] = node);
    List<int[]> chains = new Chains(edges, vertices.size()).strung();
    return FaceTracer.faces(chains, nodes).orElseGet(() -> polygonized(chains, nodes));
  }

  /** Chains in place of edges: the polygonizer has far fewer lines to sort around their ends. */
  private List<int[][]> polygonized(List<int[]> chains, Coordinate[] nodes) {
    Polygonizer polygonizer = new Polygonizer();
    for (int[] chain : chains) {
      Coordinate[] line = new Coordinate[chain.length];
      for (int i = 0; i < chain.length; i++) {
        line[i] = nodes[chain[i]];
      }
      polygonizer.add(FACTORY.createLineString(line));
    }
    List<int[][]> faces = new ArrayList<>();
    for (Object polygon : polygonizer.getPolygons()) {
      faces.add(rings((Polygon) polygon));
    }
    return faces;
  }

  /**
   * The number of the open line that runs along an edge of a face; its complement if it runs the
   * other way; {@link EdgeMap#ABSENT} if none does.
   */
  int lineAlong(int from, int to) {
    return lineAlong.get(from, to);
  }

  private void label(int u, int v, Source source, Windings windings) {
    if (source.isArea()) {
      windings.add(u, v, source.number());
    } else {
      lineAlong.put(u, v, source.number());
      lineAlong.put(v, u, ~source.number());
    }
  }

  private int[][] rings(Polygon polygon) {
    int[][] rings = new int[1 + polygon.getNumInteriorRing()][];
    rings[0] = ring(polygon.getExteriorRing(), true);
    for (int i = 1; i < rings.length; i++) {
      rings[i] = ring(polygon.getInteriorRingN(i - 1), false);
    }
    return rings;
  }

  private int[] ring(LinearRing line, boolean outer) {
    Coordinate[] coordinates = line.getCoordinates();
    boolean reverse = Orientation.isCCW(coordinates) != outer;
    int[] ring = new int[coordinates.length - 1];
    for (int i = 0; i < ring.length; i++) {
      ring[i] = vertexOf(coordinates[reverse ? ring.length - i : i]);
    }
    return ring;
  }

  /**
   * Turns rings so that they begin with their first vertex, and sorts holes: both may be found in
   * any order.
   */
  private static void beginWithFirst(int[][] rings) {
    for (int r = 0; r < rings.length; r++) {
      int[] ring = rings[r];
      int first = 0;
      for (int i = 1; i < ring.length; i++) {
        first = ring[i] < ring[first] ? i : first;
      }
      int[] turned = new int[ring.length];
      System.arraycopy(ring, first, turned, 0, ring.length - first);
      System.arraycopy(ring, 0, turned, ring.length - first, first);
      rings[r] = turned;
    }
    Arrays.sort(rings, 1, rings.length, BY_FIRST_EDGE);
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
