package org.lynchet.geometry.coverage;

import java.util.ArrayList;
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

  /**
   * The pieces, in the order of their first cells; cells with a group below 0 are left out.
   *
   * @param groupOf the group of a cell, a small number such as that of its pass
   */
  List<Piece> find(ToIntFunction<Cell> groupOf) {
    int[] groups = new int[cells.size()];
    for (int i = 0; i < groups.length; i++) {
      groups[i] = groupOf.applyAsInt(cells.get(i));
    }
    int[] root = roots(groups);
    int[] pieceOf = new int[groups.length];
    List<List<Integer>> members = new ArrayList<>();
    for (int i = 0; i < groups.length; i++) {
      if (groups[i] >= 0) {
        // The root of a piece is its first cell.
        int first = find(root, i);
        if (first == i) {
          pieceOf[i] = members.size();
          members.add(new ArrayList<>(2));
        }
        members.get(pieceOf[first]).add(i);
      }
    }
    List<Piece> pieces = new ArrayList<>(members.size());
    for (List<Integer> piece : members) {
      pieces.add(measure(groups[piece.get(0)], piece));
    }
    return pieces;
  }

  /** Leads cells of one group that share an edge to the same root. */
  private int[] roots(int[] groups) {
    int greatest = 0;
    for (int group : groups) {
      greatest = Math.max(greatest, group);
    }
    int[] cellsOfGroup = new int[1 + greatest];
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
        minX = offset < minX ? offset : minX;
        maxX = offset > maxX ? offset : maxX;
        minY = along < minY ? along : minY;
        maxY = along > maxY ? along : maxY;
      }
    }
    return new Piece(group, List.copyOf(members), minX, maxX, minY, maxY, area);
  }
}
