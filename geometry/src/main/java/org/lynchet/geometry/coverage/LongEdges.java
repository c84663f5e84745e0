package org.lynchet.geometry.coverage;

import java.util.ArrayList;
import java.util.List;

/**
 * Gives long edges along cuts vertices in between, so that they stay straight on the ground for a
 * reader that draws them straight in longitude and latitude.
 */
final class LongEdges {
  /**
   * How far such an edge may bow, in metres: half of the millimetre that is asked of strip edges.
   */
  private static final double BOW = 0.0005;

  private final Vertices vertices;
  private final double longest;
  private final EdgeMap firstBetween = new EdgeMap(8);

  private LongEdges(Vertices vertices) {
    this.vertices = vertices;
    this.longest = vertices.frame().longestWithinBowMetres(BOW);
  }

  /** Divides the edges along cuts; cells without long ones come back as they are. */
  static List<Cell> divide(Vertices vertices, List<Cell> cells) {
    LongEdges edges = new LongEdges(vertices);
    List<Cell> divided = new ArrayList<>(cells.size());
    for (Cell cell : cells) {
      divided.add(edges.isAnyLong(cell.rings) ? cell.withRings(edges.divideAll(cell.rings)) : cell);
    }
    return divided;
  }

  private boolean isAnyLong(int[][] rings) {
    double[] along = vertices.seconds(Rings.Place.OFFSET);
    for (int[] ring : rings) {
      int u = ring[ring.length - 1];
      for (int v : ring) {
        if (Math.abs(along[u] - along[v]) > longest && isAlongCut(u, v)) {
          return true;
        }
        u = v;
      }
    }
    return false;
  }

  private int partsOf(int u, int v) {
    double length = Math.abs(vertices.y(u) - vertices.y(v));
    return length > longest && isAlongCut(u, v) ? (int) Math.ceil(length / longest) : 1;
  }

  private boolean isAlongCut(int u, int v) {
    return Math.abs(vertices.x(u) - vertices.x(v)) <= ParallelCutter.ON_CUT;
  }

  private int[][] divideAll(int[][] rings) {
    int[][] result = new int[rings.length][];
    for (int r = 0; r < rings.length; r++) {
      VertexList ring = new VertexList(2 * rings[r].length);
      for (int i = 0; i < rings[r].length; i++) {
        ring.add(rings[r][i]);
        addBetween(rings[r][i], rings[r][(i + 1) % rings[r].length], ring);
      }
      result[r] = ring.toArray();
    }
    return result;
  }

  private void addBetween(int u, int v, VertexList ring) {
    int parts = partsOf(u, v);
    if (parts <= 1) {
      return;
    }
    int known = firstBetween.get(v, u);
    if (known != EdgeMap.ABSENT) {
      for (int k = parts - 2; k >= 0; k--) {
        ring.add(known + k);
      }
      return;
    }
    firstBetween.put(u, v, vertices.size());
    for (int k = 1; k < parts; k++) {
      double t = (double) k / parts;
      ring.add(
          vertices.add(
              vertices.x(u) + t * (vertices.x(v) - vertices.x(u)),
              vertices.y(u) + t * (vertices.y(v) - vertices.y(u))));
    }
  }
}
