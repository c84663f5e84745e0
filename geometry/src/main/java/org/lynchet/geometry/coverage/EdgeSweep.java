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
  private final SlabOrder order;

  private EdgeSweep(RingEdges edges) {
    this.edges = edges;
    this.order = edges.order();
  }

  /** Whether it is certain that no new edge meets another. */
  static boolean noneMeet(RingEdges edges) {
    return new EdgeSweep(edges).sweep();
  }

  private boolean sweep() {
    int[] last = order.last();
    int[] active = new int[edges.size()];
    int count = 0;
    long left = (long) MANY * edges.size();
    for (int edge : order.inOrder()) {
      int slab = order.first(edge, 0);
      int still = 0;
      left -= count;
      for (int a = 0; a < count; a++) {
        int other = active[a];
        if (last[other] >= slab) {
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
}
