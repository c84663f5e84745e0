package org.lynchet.geometry.coverage;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
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

  /**
   * The pieces, in the order of their first cells; cells with a group below 0 are left out.
   *
   * @param groupOf the group of a cell, a small number such as that of its pass
   */
  List<Piece> find(ToIntFunction<Cell> groupOf) {
    int[] groups = cells.stream().mapToInt(groupOf).toArray();
    int[] root = roots(groups);
    Map<Integer, List<Integer>> members = new LinkedHashMap<>();
    for (int i = 0; i < groups.length; i++) {
      if (groups[i] >= 0) {
        members.computeIfAbsent(find(root, i), key -> new ArrayList<>(4)).add(i);
      }
    }
    List<Piece> pieces = new ArrayList<>(members.size());
    members.forEach((first, piece) -> pieces.add(measure(groups[first], piece)));
    return pieces;
  }

  /** Leads cells of one group that share an edge to the same root. */
  private int[] roots(int[] groups) {
    int[] cellsOfGroup = new int[1 + Math.max(0, Arrays.stream(groups).max().orElse(0))];
    for (int group : groups) {
      if (group >= 0) {
        cellsOfGroup[group]++;
      }
    }
    boolean[] chosen = new boolean[groups.length];
    int[] root = new int[groups.length];
    for (int i = 0; i < groups.length; i++) {
      chosen[i] = groups[i] >= 0 && cellsOfGroup[groups[i]] > 1;
      root[i] = i;
    }
    Neighbours.forEachSharedEdge(
        vertices,
        cells,
        cell -> chosen[cell],
        (cell, other, length) -> {
          if (groups[cell] == groups[other]) {
            int a = find(root, cell);
            int b = find(root, other);
            root[Math.max(a, b)] = Math.min(a, b);
          }
        });
    return root;
  }

  private static int find(int[] root, int cell) {
    int at = cell;
    while (root[at] != at) {
      root[at] = root[root[at]];
      at = root[at];
    }
    return at;
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
