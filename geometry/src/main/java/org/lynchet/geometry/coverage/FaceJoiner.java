package org.lynchet.geometry.coverage;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;

/**
 * Joins polygons that share edges vertex for vertex.
 *
 * <p>Edges that two of them walk in opposite directions lie inside and drop out. The rest is
 * chained into rings; where rings meet in a vertex they are kept apart, so that the results are
 * valid: each has a connected inside, and rings touch in single vertices at most.
 */
final class FaceJoiner {
  private static final int NONE = -1;

  /** Where vertices are numbered this much more widely than edges, no table of them is made. */
  private static final int FAR_APART = 16;

  private final Vertices vertices;
  private final Rings.Place place;

  /** The edges that are kept, by number: the place of the vertex at either end. */
  private final VertexList from = new VertexList();

  private final VertexList to = new VertexList();

  /** The vertices at which kept edges begin, by place, in the order in which they appear. */
  private final VertexList vertexAt = new VertexList();

  /** The first edge that is left at each place; from there the others by {@link #nextEdge}. */
  private int[] firstEdge = {};

  private int[] nextEdge = {};

  /** Where on the path a place is, or {@link #NONE}. */
  private int[] onPath = {};

  private FaceJoiner(Vertices vertices, Rings.Place place) {
    this.vertices = vertices;
    this.place = place;
  }

  /**
   * Joins.
   *
   * @param place in which of the vertices' places the polygons are valid
   * @param polygons each an outer ring, counter-clockwise, and holes, clockwise
   * @return polygons of the same form, one for each connected part; none if nothing has area
   */
  static List<int[][]> join(Vertices vertices, Rings.Place place, List<int[][]> polygons) {
    if (!polygons.isEmpty() && areApart(vertices, place, polygons)) {
      return polygons.stream()
          .sorted(Comparator.comparingDouble(rings -> Rings.signedArea(vertices, place, rings[0])))
          .toList();
    }
    FaceJoiner joiner = new FaceJoiner(vertices, place);
    joiner.linkEdges(joiner.keepOutsideEdges(polygons));
    List<int[]> outer = new ArrayList<>();
    List<int[]> holes = new ArrayList<>();
    for (int[] loop : joiner.loops()) {
      double area = Rings.signedArea(vertices, place, loop);
      if (area > 0) {
        outer.add(loop);
      } else if (area < 0) {
        holes.add(loop);
      }
    }
    return joiner.assemble(outer, holes);
  }

  /**
   * Whether no vertex occurs twice: then no edge drops out and no rings meet, so polygons stay what
   * they are.
   */
  private static boolean areApart(Vertices vertices, Rings.Place place, List<int[][]> polygons) {
    int least = Integer.MAX_VALUE;
    int greatest = 0;
    int edges = 0;
    for (int[][] polygon : polygons) {
      for (int[] ring : polygon) {
        for (int vertex : ring) {
          least = Math.min(least, vertex);
          greatest = Math.max(greatest, vertex);
        }
        edges += ring.length;
      }
    }
    if (greatest - least > (long) FAR_APART * edges) {
      return false;
    }
    boolean[] seen = new boolean[greatest - least + 1];
    for (int[][] polygon : polygons) {
      for (int r = 0; r < polygon.length; r++) {
        for (int vertex : polygon[r]) {
          if (seen[vertex - least]) {
            return false;
          }
          seen[vertex - least] = true;
        }
        double area = Rings.signedArea(vertices, place, polygon[r]);
        if (!(r == 0 ? area > 0 : area < 0)) {
          return false;
        }
      }
    }
    return true;
  }

  /** Keeps the edges that lie outside; returns the place of each vertex where one begins. */
  private EdgeMap keepOutsideEdges(List<int[][]> polygons) {
    EdgeMap count = new EdgeMap(polygons.stream().mapToInt(Rings::edges).sum());
    forEachEdge(polygons, (u, v) -> count.put(u, v, Math.max(0, count.get(u, v)) + 1));
    EdgeMap placeOf = new EdgeMap(16);
    forEachEdge(
        polygons,
        (u, v) -> {
          int opposite = count.get(v, u);
          if (opposite > 0) {
            count.put(v, u, opposite - 1);
          } else {
            // A vertex is looked up as the edge from itself to itself.
            if (placeOf.get(u, u) == EdgeMap.ABSENT) {
              placeOf.put(u, u, vertexAt.size());
              vertexAt.add(u);
            }
            from.add(placeOf.get(u, u));
            to.add(v);
          }
        });
    return placeOf;
  }

  private void linkEdges(EdgeMap placeOf) {
    firstEdge = new int[vertexAt.size()];
    onPath = new int[vertexAt.size()];
    nextEdge = new int[from.size()];
    Arrays.fill(firstEdge, NONE);
    Arrays.fill(onPath, NONE);
    for (int edge = from.size() - 1; edge >= 0; edge--) {
      int end = placeOf.get(to.get(edge), to.get(edge));
      if (end == EdgeMap.ABSENT) {
        throw openRing(to.get(edge));
      }
      to.set(edge, end);
      nextEdge[edge] = firstEdge[from.get(edge)];
      firstEdge[from.get(edge)] = edge;
    }
  }

  private static IllegalStateException openRing(int vertex) {
    return new IllegalStateException("an open ring at vertex " + vertex);
  }

  private interface EdgeVisitor {
    void visit(int from, int to);
  }

  private static void forEachEdge(List<int[][]> polygons, EdgeVisitor visitor) {
    for (int[][] polygon : polygons) {
      for (int[] ring : polygon) {
        for (int i = 0; i < ring.length; i++) {
          visitor.visit(ring[i], ring[(i + 1) % ring.length]);
        }
      }
    }
  }

  /** Takes all edges up into closed loops that visit each vertex once. */
  private List<int[]> loops() {
    List<int[]> loops = new ArrayList<>();
    for (int place = 0; place < vertexAt.size(); place++) {
      while (firstEdge[place] != NONE) {
        splitAtRepeats(trace(place), loops);
      }
    }
    return loops;
  }

  /** Walks from a place until it is back, at each meeting taking the leftmost way. */
  private VertexList trace(int start) {
    VertexList ring = new VertexList();
    int before = start;
    int at = take(start, firstEdge[start]);
    ring.add(start);
    while (at != start) {
      ring.add(at);
      int edge = firstEdge[at];
      if (edge == NONE) {
        throw openRing(vertexAt.get(at));
      }
      int next = take(at, nextEdge[edge] == NONE ? edge : leftmost(before, at));
      before = at;
      at = next;
    }
    return ring;
  }

  /** Takes an edge that begins at a place out; returns where it ends. */
  private int take(int place, int edge) {
    if (firstEdge[place] == edge) {
      firstEdge[place] = nextEdge[edge];
    } else {
      int before = firstEdge[place];
      while (nextEdge[before] != edge) {
        before = nextEdge[before];
      }
      nextEdge[before] = nextEdge[edge];
    }
    return to.get(edge);
  }

  /** The first way out clockwise from the way back: it bounds the inside that was on the left. */
  private int leftmost(int before, int at) {
    double back = angle(at, before);
    int best = NONE;
    double bestTurn = Double.POSITIVE_INFINITY;
    for (int edge = firstEdge[at]; edge != NONE; edge = nextEdge[edge]) {
      double turn = back - angle(at, to.get(edge));
      turn = turn <= 0 ? turn + 2 * Math.PI : turn;
      if (turn < bestTurn) {
        bestTurn = turn;
        best = edge;
      }
    }
    return best;
  }

  private double angle(int fromPlace, int toPlace) {
    int u = vertexAt.get(fromPlace);
    int v = vertexAt.get(toPlace);
    return Math.atan2(
        vertices.second(place, v) - vertices.second(place, u),
        vertices.first(place, v) - vertices.first(place, u));
  }

  private void splitAtRepeats(VertexList ring, List<int[]> loops) {
    VertexList path = new VertexList();
    for (int i = 0; i < ring.size(); i++) {
      int at = ring.get(i);
      if (onPath[at] != NONE) {
        loops.add(cutOff(path, onPath[at]));
      }
      onPath[at] = path.size();
      path.add(at);
    }
    loops.add(cutOff(path, 0));
  }

  /** Takes the end of a path off; returns its vertices. */
  private int[] cutOff(VertexList path, int start) {
    int[] loop = new int[path.size() - start];
    for (int i = 0; i < loop.length; i++) {
      int at = path.get(start + i);
      onPath[at] = NONE;
      loop[i] = vertexAt.get(at);
    }
    path.shorten(start);
    return loop;
  }

  /** Gives each hole to the smallest outer ring around it. */
  private List<int[][]> assemble(List<int[]> outer, List<int[]> holes) {
    if (outer.size() == 1 && holes.isEmpty()) {
      int[][] rings = {outer.get(0)};
      return List.<int[][]>of(rings);
    }
    List<List<int[]>> polygons = new ArrayList<>();
    outer.stream()
        .sorted(Comparator.comparingDouble(ring -> Rings.signedArea(vertices, place, ring)))
        .forEach(ring -> polygons.add(new ArrayList<>(List.of(ring))));
    for (int[] hole : holes) {
      double x = (vertices.first(place, hole[0]) + vertices.first(place, hole[1])) / 2;
      double y = (vertices.second(place, hole[0]) + vertices.second(place, hole[1])) / 2;
      polygons.stream()
          .filter(polygon -> Rings.contains(vertices, place, polygon.get(0), x, y))
          .findFirst()
          .ifPresent(polygon -> polygon.add(hole));
    }
    return polygons.stream().map(rings -> rings.toArray(new int[0][])).toList();
  }
}
