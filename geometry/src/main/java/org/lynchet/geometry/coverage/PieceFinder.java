package org.lynchet.geometry.coverage;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Deque;
import java.util.List;
import java.util.function.ToIntFunction;
import org.lynchet.geometry.guidance.Guidance;

/** Finds the connected pieces of groups of cells. */
final class PieceFinder {
  private final Vertices vertices;
  private final List<Cell> cells;
  private final Guidance guidance;

  PieceFinder(Vertices vertices, List<Cell> cells, Guidance guidance) {
    this.guidance = guidance;
    this.vertices = vertices;
    this.cells = cells;
  }

  /** The pieces, in the order of their first cells; cells with a group below 0 are left out. */
  List<Piece> find(ToIntFunction<Cell> groupOf) {
    List<List<Integer>> neighbours = Neighbours.of(vertices, cells);
    boolean[] taken = new boolean[cells.size()];
    List<Piece> pieces = new ArrayList<>();
    for (int i = 0; i < taken.length; i++) {
      int group = groupOf.applyAsInt(cells.get(i));
      if (!taken[i] && group >= 0) {
        pieces.add(measure(group, connected(i, group, groupOf, neighbours, taken)));
      }
    }
    return pieces;
  }

  private List<Integer> connected(
      int start,
      int group,
      ToIntFunction<Cell> groupOf,
      List<List<Integer>> neighbours,
      boolean[] taken) {
    List<Integer> found = new ArrayList<>();
    Deque<Integer> next = new ArrayDeque<>(List.of(start));
    taken[start] = true;
    while (!next.isEmpty()) {
      int cell = next.pop();
      found.add(cell);
      for (int other : neighbours.get(cell)) {
        if (!taken[other] && groupOf.applyAsInt(cells.get(other)) == group) {
          taken[other] = true;
          next.push(other);
        }
      }
    }
    Collections.sort(found);
    return found;
  }

  private Piece measure(int group, List<Integer> members) {
    double minX = Double.POSITIVE_INFINITY;
    double minY = minX;
    double maxX = Double.NEGATIVE_INFINITY;
    double maxY = maxX;
    double area = 0;
    for (int member : members) {
      int[][] rings = cells.get(member).rings;
      area += Rings.area(vertices, rings);
      for (int vertex : rings[0]) {
        double x = vertices.x(vertex);
        double y = vertices.y(vertex);
        double offset = guidance.offsetMetres(x, y);
        double along = guidance.alongMetres(x, y);
        minX = Math.min(minX, offset);
        maxX = Math.max(maxX, offset);
        minY = Math.min(minY, along);
        maxY = Math.max(maxY, along);
      }
    }
    return new Piece(group, List.copyOf(members), minX, maxX, minY, maxY, area);
  }
}
