package org.lynchet.geometry.coverage;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * Merges vertices that rounding brought to the same place along an edge, so that no ring repeats a
 * place. Of 100,000 boundary vertices some always lie that near to a cut.
 */
final class SamePlaces {
  private final Vertices vertices;
  private final int[] mergedWith;

  private SamePlaces(Vertices vertices) {
    this.vertices = vertices;
    this.mergedWith = new int[vertices.size()];
    Arrays.setAll(mergedWith, v -> v);
  }

  /** Merges; cells without such edges come back as they are. */
  static List<Cell> merge(Vertices vertices, List<Cell> cells) {
    boolean any = false;
    for (Cell cell : cells) {
      for (int[] ring : cell.rings) {
        any = any || anyAlong(vertices, ring);
      }
    }
    if (!any) {
      return cells;
    }
    SamePlaces same = new SamePlaces(vertices);
    for (Cell cell : cells) {
      for (int[] ring : cell.rings) {
        same.mergeAlong(ring);
      }
    }
    List<Cell> merged = new ArrayList<>(cells.size());
    for (Cell cell : cells) {
      merged.add(
          same.isAffected(cell)
              ? cell.withRings(same.withoutRepeats(cell.rings))
                  .withAreaBeforeRounding(Rings.area(vertices, cell.rings))
              : cell);
    }
    return merged;
  }

  private static boolean anyAlong(Vertices vertices, int[] ring) {
    int u = ring[ring.length - 1];
    for (int v : ring) {
      if (areSame(vertices, u, v)) {
        return true;
      }
      u = v;
    }
    return false;
  }

  private static boolean areSame(Vertices vertices, int u, int v) {
    return vertices.longitude(u) == vertices.longitude(v)
        && vertices.latitude(u) == vertices.latitude(v);
  }

  private void mergeAlong(int[] ring) {
    int u = ring[ring.length - 1];
    for (int v : ring) {
      if (areSame(vertices, u, v)) {
        int p = root(u);
        int q = root(v);
        mergedWith[Math.max(p, q)] = Math.min(p, q);
      }
      u = v;
    }
  }

  private int root(int vertex) {
    int root = vertex;
    while (mergedWith[root] != root) {
      root = mergedWith[root];
    }
    return root;
  }

  private boolean isAffected(Cell cell) {
    for (int[] ring : cell.rings) {
      for (int v : ring) {
        if (mergedWith[v] != v) {
          return true;
        }
      }
    }
    return false;
  }

  private int[][] withoutRepeats(int[][] rings) {
    int[][] result = new int[rings.length][];
    for (int r = 0; r < rings.length; r++) {
      VertexList ring = new VertexList();
      int before = root(rings[r][rings[r].length - 1]);
      for (int vertex : rings[r]) {
        int v = root(vertex);
        if (v != before) {
          ring.add(v);
        }
        before = v;
      }
      result[r] = ring.toArray();
    }
    return result;
  }
}
