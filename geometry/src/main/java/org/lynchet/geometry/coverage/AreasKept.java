package org.lynchet.geometry.coverage;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Set;

/**
 * Keeps the areas of cells over rounding, so that they still sum to the field: a cell that vanishes
 * leaves its area to a neighbour, one that falls apart shares it out.
 */
final class AreasKept {
  private AreasKept() {}

  /**
   * The areas of cells before rounding, those of cells that vanished added to the neighbour that
   * shares the longest edge with them.
   *
   * @param left indexes of the cells that did not vanish, at least one
   */
  static double[] areas(Vertices vertices, List<Cell> cells, Set<Integer> left) {
    double[] areas = new double[cells.size()];
    for (int i = 0; i < areas.length; i++) {
      areas[i] = Rings.area(vertices, cells.get(i).rings);
    }
    if (left.size() == cells.size()) {
      return areas;
    }
    int[] heir = new int[cells.size()];
    double[] longest = new double[cells.size()];
    // A cell with no neighbour left leaves its area, below a square centimetre, to the first cell.
    Arrays.fill(heir, left.iterator().next());
    Neighbours.forEachSharedEdge(
        vertices,
        cells,
        (cell, other, length) -> {
          inherit(cell, other, length, left, heir, longest);
          inherit(other, cell, length, left, heir, longest);
        });
    for (int i = 0; i < areas.length; i++) {
      if (!left.contains(i)) {
        areas[heir[i]] += areas[i];
      }
    }
    return areas;
  }

  private static void inherit(
      int from, int to, double length, Set<Integer> left, int[] heir, double[] longest) {
    if (!left.contains(from) && left.contains(to) && length > longest[from]) {
      longest[from] = length;
      heir[from] = to;
    }
  }

  /** The parts of a cell, its area shared out by theirs. */
  static List<Cell> share(Vertices vertices, Cell cell, double area, List<int[][]> parts) {
    double sum = 0;
    for (int[][] part : parts) {
      sum += Math.abs(Rings.area(vertices, part));
    }
    List<Cell> result = new ArrayList<>(parts.size());
    for (int[][] part : parts) {
      double share = sum > 0 ? Math.abs(Rings.area(vertices, part)) / sum : 1.0 / parts.size();
      result.add(cell.withRings(part).withAreaBeforeRounding(area * share));
    }
    return result;
  }
}
