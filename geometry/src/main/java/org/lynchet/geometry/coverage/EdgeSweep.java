package org.lynchet.geometry.coverage;

/**
 * Finds out whether a new edge meets any other, in time that grows with the edges where they are
 * short.
 *
 * <p>The edges are put in the order of the slabs, across the longer extent, in which they begin.
 * Going through them, each is held against those that began before and have not ended.
 */
final class EdgeSweep {
  /** More comparisons for each edge, and another way may be quicker. */
  private static final int MANY = 100;

  private final RingEdges edges;
  private final double[] min;
  private final double[] max;
  private final double origin;
  private final double slabsPerUnit;

  private EdgeSweep(RingEdges edges) {
    this.edges = edges;
    boolean alongX = extent(edges, true) > extent(edges, false);
    this.min = edges.min(alongX);
    this.max = edges.max(alongX);
    this.origin = least(min, edges.size());
    this.slabsPerUnit = (edges.size() - 1) / extent(edges, alongX);
  }

  /** Whether it is certain that no new edge meets another. */
  static boolean noneMeet(RingEdges edges) {
    return new EdgeSweep(edges).sweep();
  }

  private static double extent(RingEdges edges, boolean alongX) {
    double[] max = edges.max(alongX);
    double greatest = max[0];
    for (int e = 1; e < edges.size(); e++) {
      greatest = Math.max(greatest, max[e]);
    }
    return greatest - least(edges.min(alongX), edges.size());
  }

  private static double least(double[] values, int size) {
    double least = values[0];
    for (int e = 1; e < size; e++) {
      least = Math.min(least, values[e]);
    }
    return least;
  }

  private int slab(double at) {
    return (int) ((at - origin) * slabsPerUnit);
  }

  private boolean sweep() {
    int[] active = new int[edges.size()];
    int count = 0;
    long left = (long) MANY * edges.size();
    for (int edge : inOrder()) {
      int slab = slab(min[edge]);
      int still = 0;
      left -= count;
      for (int a = 0; a < count; a++) {
        int other = active[a];
        if (slab(max[other]) >= slab) {
          active[still++] = other;
          if ((edges.isNew(edge) || edges.isNew(other)) && edges.meet(edge, other)) {
            return false;
          }
        }
      }
      active[still++] = edge;
      count = still;
      if (left < 0) {
        return false;
      }
    }
    return true;
  }

  /** The edges, sorted by the slab in which they begin. */
  private int[] inOrder() {
    int size = edges.size();
    int[] end = new int[size + 1];
    for (int e = 0; e < size; e++) {
      end[slab(min[e]) + 1]++;
    }
    for (int s = 1; s <= size; s++) {
      end[s] += end[s - 1];
    }
    int[] order = new int[size];
    for (int e = 0; e < size; e++) {
      order[end[slab(min[e])]++] = e;
    }
    return order;
  }
}
