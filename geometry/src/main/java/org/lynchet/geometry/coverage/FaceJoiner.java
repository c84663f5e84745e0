package org.lynchet.geometry.coverage;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * Joins polygons that share edges vertex for vertex.
 *
 * <p>Edges that two of them walk in opposite directions lie inside and drop out. The rest is
 * chained into rings; where rings meet in a vertex they are kept apart, so that the results are
 * valid: each has a connected inside, and rings touch in single vertices at most.
 */
final class FaceJoiner {
  private final Vertices vertices;
  private final Rings.Place place;
  private final Map<Integer, List<Integer>> outgoing = new LinkedHashMap<>();

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
    FaceJoiner joiner = new FaceJoiner(vertices, place);
    joiner.keepOutsideEdges(polygons);
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

  private void keepOutsideEdges(List<int[][]> polygons) {
    EdgeMap count = new EdgeMap(1024);
    forEachEdge(polygons, (u, v) -> count.put(u, v, Math.max(0, count.get(u, v)) + 1));
    forEachEdge(
        polygons,
        (u, v) -> {
          int opposite = count.get(v, u);
          if (opposite > 0) {
            count.put(v, u, opposite - 1);
          } else {
            outgoing.computeIfAbsent(u, key -> new ArrayList<>(1)).add(v);
          }
        });
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
    for (Map.Entry<Integer, List<Integer>> entry : outgoing.entrySet()) {
      while (!entry.getValue().isEmpty()) {
        splitAtRepeats(trace(entry.getKey()), loops);
      }
    }
    return loops;
  }

  /** Walks from a vertex until it is back, at each meeting taking the leftmost way. */
  private List<Integer> trace(int start) {
    List<Integer> ring = new ArrayList<>();
    int from = start;
    int to = waysFrom(start).remove(0);
    ring.add(start);
    while (to != start) {
      ring.add(to);
      List<Integer> ways = waysFrom(to);
      int next = ways.remove(ways.size() == 1 ? 0 : leftmost(from, to, ways));
      from = to;
      to = next;
    }
    return ring;
  }

  private List<Integer> waysFrom(int vertex) {
    List<Integer> ways = outgoing.get(vertex);
    if (ways == null || ways.isEmpty()) {
      throw new IllegalStateException("an open ring at vertex " + vertex);
    }
    return ways;
  }

  /** The first way out clockwise from the way back: it bounds the inside that was on the left. */
  private int leftmost(int from, int at, List<Integer> ways) {
    double back = angle(at, from);
    int best = 0;
    double bestTurn = Double.POSITIVE_INFINITY;
    for (int i = 0; i < ways.size(); i++) {
      double turn = back - angle(at, ways.get(i));
      turn = turn <= 0 ? turn + 2 * Math.PI : turn;
      if (turn < bestTurn) {
        bestTurn = turn;
        best = i;
      }
    }
    return best;
  }

  private double angle(int from, int to) {
    return Math.atan2(
        vertices.second(place, to) - vertices.second(place, from),
        vertices.first(place, to) - vertices.first(place, from));
  }

  private static void splitAtRepeats(List<Integer> ring, List<int[]> loops) {
    Map<Integer, Integer> placeOf = new HashMap<>();
    List<Integer> path = new ArrayList<>();
    for (int i = 0; i < ring.size(); i++) {
      Integer before = placeOf.get(ring.get(i));
      if (before != null) {
        List<Integer> loop = path.subList(before, path.size());
        loops.add(loop.stream().mapToInt(Integer::intValue).toArray());
        loop.forEach(placeOf::remove);
        loop.clear();
      }
      placeOf.put(ring.get(i), path.size());
      path.add(ring.get(i));
    }
    loops.add(path.stream().mapToInt(Integer::intValue).toArray());
  }

  /** Gives each hole to the smallest outer ring around it. */
  private List<int[][]> assemble(List<int[]> outer, List<int[]> holes) {
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
