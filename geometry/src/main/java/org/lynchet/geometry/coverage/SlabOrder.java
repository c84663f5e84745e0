package org.lynchet.geometry.coverage;

/**
 * Puts boxes in the order in which they begin, in the direction in which all of them reach farther,
 * to the width of slabs, in time that grows with their number: there are as many slabs as boxes.
 */
final class SlabOrder {
  private final double[] min;
  private final double[] max;
  private final int size;
  private final double origin;
  private final double extent;
  private final double slabsPerUnit;

  private SlabOrder(double[] min, double[] max, int size) {
    this.min = min;
    this.max = max;
    this.size = size;
    double least = min[0];
    double greatest = max[0];
    for (int b = 1; b < size; b++) {
      least = min[b] < least ? min[b] : least;
      greatest = max[b] > greatest ? max[b] : greatest;
    }
    this.origin = least;
    this.extent = greatest - least;
    this.slabsPerUnit = (size - 1) / extent;
  }

  /** Gets ready; of the arrays only the first {@code size} values count, at least one. */
  static SlabOrder of(double[] minX, double[] maxX, double[] minY, double[] maxY, int size) {
    SlabOrder alongX = new SlabOrder(minX, maxX, size);
    SlabOrder alongY = new SlabOrder(minY, maxY, size);
    return alongX.extent > alongY.extent ? alongX : alongY;
  }

  private int slab(double at) {
    return (int) ((at - origin) * slabsPerUnit);
  }

  /** The slab in which a box begins if it begins so much earlier. */
  int first(int box, double earlier) {
    return slab(min[box] - earlier);
  }

  /** The slab in which each box ends. */
  int[] last() {
    int[] last = new int[size];
    for (int b = 0; b < size; b++) {
      last[b] = slab(max[b]);
    }
    return last;
  }

  /** Their numbers, sorted by the slab in which they begin. */
  int[] inOrder() {
    int[] end = new int[size + 1];
    for (int b = 0; b < size; b++) {
      end[slab(min[b]) + 1]++;
    }
    for (int s = 1; s <= size; s++) {
      end[s] += end[s - 1];
    }
    int[] order = new int[size];
    for (int b = 0; b < size; b++) {
      order[end[slab(min[b])]++] = b;
    }
    return order;
  }
}
