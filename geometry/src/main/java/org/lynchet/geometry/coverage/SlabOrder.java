package org.lynchet.geometry.coverage;

/**
 * Puts extents in the order in which they begin, to the width of slabs, in time that grows with
 * their number: there are as many slabs as extents.
 */
final class SlabOrder {
  private final double[] min;
  private final double[] max;
  private final int size;
  private final double origin;
  private final double slabsPerUnit;

  /**
   * Gets ready.
   *
   * @param min where each extent begins; only the first {@code size} count
   * @param max where it ends
   */
  SlabOrder(double[] min, double[] max, int size) {
    this.min = min;
    this.max = max;
    this.size = size;
    this.origin = least(min, size);
    this.slabsPerUnit = (size - 1) / range(min, max, size);
  }

  /** From the least beginning to the greatest end. */
  static double range(double[] min, double[] max, int size) {
    double greatest = max[0];
    for (int e = 1; e < size; e++) {
      greatest = max[e] > greatest ? max[e] : greatest;
    }
    return greatest - least(min, size);
  }

  private static double least(double[] values, int size) {
    double least = values[0];
    for (int e = 1; e < size; e++) {
      least = values[e] < least ? values[e] : least;
    }
    return least;
  }

  int slab(double at) {
    return (int) ((at - origin) * slabsPerUnit);
  }

  /** The slab in which each ends. */
  int[] last() {
    int[] last = new int[size];
    for (int e = 0; e < size; e++) {
      last[e] = slab(max[e]);
    }
    return last;
  }

  /** Their numbers, sorted by the slab in which they begin. */
  int[] inOrder() {
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
