package org.lynchet.geometry.coverage;

import java.util.List;
import java.util.function.IntPredicate;

/** Finds which cells share edges, and how much. */
final class Neighbours {

  /** Visits every edge that two cells share. */
  interface Visitor {
    /** The cells' indexes and the edge's length in metres. */
    void visit(int cell, int other, double lengthMetres);
  }

  private Neighbours() {}

  /** Visits every shared edge once. */
  static void forEachSharedEdge(Vertices vertices, List<Cell> cells, Visitor visitor) {
    forEachSharedEdge(vertices, cells, cell -> true, visitor);
  }

  /** Visits every edge once that two cells of a choice share. */
  static void forEachSharedEdge(
      Vertices vertices, List<Cell> cells, IntPredicate chosen, Visitor visitor) {
    forEachSharedEdge(vertices, cells, chosen, cell -> false, visitor);
  }

  /**
   * Visits every edge once that two cells of a choice share, or one of them and one of some others.
   *
   * @param others cells that are not of the choice; edges that they share are not visited
   */
  static void forEachSharedEdge(
      Vertices vertices,
      List<Cell> cells,
      IntPredicate chosen,
      IntPredicate others,
      Visitor visitor) {
    EdgeMap owner = new EdgeMap(edges(cells, chosen));
    for (int cell = 0; cell < cells.size(); cell++) {
      if (chosen.test(cell)) {
        visit(vertices, cells, cell, owner, true, visitor);
      }
    }
    for (int cell = 0; cell < cells.size(); cell++) {
      if (others.test(cell)) {
        visit(vertices, cells, cell, owner, false, visitor);
      }
    }
  }

  /** Visits the edges of a cell that have an owner; the cell may come to own the others. */
  private static void visit(
      Vertices vertices, List<Cell> cells, int cell, EdgeMap owner, boolean owns, Visitor visitor) {
    for (int[] ring : cells.get(cell).rings) {
      int u = ring[ring.length - 1];
      for (int v : ring) {
        int other = owner.get(v, u);
        if (other != EdgeMap.ABSENT) {
          double dx = vertices.x(u) - vertices.x(v);
          double dy = vertices.y(u) - vertices.y(v);
          visitor.visit(cell, other, Math.sqrt(dx * dx + dy * dy));
        } else if (owns) {
          owner.put(u, v, cell);
        }
        u = v;
      }
    }
  }

  private static int edges(List<Cell> cells, IntPredicate chosen) {
    int edges = 0;
    for (int cell = 0; cell < cells.size(); cell++) {
      edges += chosen.test(cell) ? Rings.edges(cells.get(cell).rings) : 0;
    }
    return edges;
  }
}
