package org.lynchet.geometry.coverage;

import java.util.ArrayList;
import java.util.List;

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
    EdgeMap owner = new EdgeMap(cells.size() * 8);
    for (int cell = 0; cell < cells.size(); cell++) {
      for (int[] ring : cells.get(cell).rings) {
        int u = ring[ring.length - 1];
        for (int v : ring) {
          int other = owner.get(v, u);
          if (other == EdgeMap.ABSENT) {
            owner.put(u, v, cell);
          } else {
            double dx = vertices.x(u) - vertices.x(v);
            double dy = vertices.y(u) - vertices.y(v);
            visitor.visit(cell, other, Math.sqrt(dx * dx + dy * dy));
          }
          u = v;
        }
      }
    }
  }

  /** The cells that share edges with each cell. */
  static List<List<Integer>> of(Vertices vertices, List<Cell> cells) {
    List<List<Integer>> neighbours = new ArrayList<>();
    for (int i = 0; i < cells.size(); i++) {
      neighbours.add(new ArrayList<>(4));
    }
    forEachSharedEdge(
        vertices,
        cells,
        (cell, other, length) -> {
          neighbours.get(cell).add(other);
          neighbours.get(other).add(cell);
        });
    return neighbours;
  }
}
