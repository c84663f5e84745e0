package org.lynchet.geometry.sweep;

import java.io.Serializable;

/**
 * One side of a run: places from left to right, joined by straight lines; where the side jumps, two
 * places have one offset.
 *
 * <p>Heights are counted away from the other side: y for an upper side, -y for a lower one. So a
 * run is as long as both heights together, and the least height is what reaches in farthest.
 *
 * <p>What lies under a line is added up from one place to the next, each trapezoid from its own
 * corners: no slope is kept, so that edges nearly along the rows do no harm.
 */
final class Side implements Serializable {
  private static final long serialVersionUID = 1L;

  private final double[] x;
  private final double[] height;
  private final double[] under;

  /** Row k holds the least of 2^k heights from each place on. */
  private final double[][] least;

  private final RisingIndex index;

  /**
   * Takes places in.
   *
   * @param x at least one offset; they do not fall
   * @param height as many heights
   */
  Side(double[] x, double[] height) {
    this.x = x;
    this.height = height;
    this.index = new RisingIndex(x);
    int size = x.length;
    under = new double[size];
    for (int i = 1; i < size; i++) {
      under[i] = under[i - 1] + (x[i] - x[i - 1]) * (height[i] + height[i - 1]) / 2;
    }
    least = new double[32 - Integer.numberOfLeadingZeros(size)][];
    least[0] = height;
    for (int k = 1; k < least.length; k++) {
      int half = 1 << (k - 1);
      least[k] = new double[size - 2 * half + 1];
      for (int i = 0; i < least[k].length; i++) {
        least[k][i] = Math.min(least[k - 1][i], least[k - 1][i + half]);
      }
    }
  }

  /** The last place at or left of an offset; the first if there is none. */
  int place(double offset) {
    return index.lastUpTo(offset);
  }

  /** The last place left of an offset; the first if there is none. */
  int placeBefore(double offset) {
    int place = index.lastUpTo(offset);
    while (place > 0 && x[place] >= offset) {
      place--;
    }
    return place;
  }

  /** What lies under all of it. */
  double whole() {
    return under[under.length - 1];
  }

  /** What lies between the side's beginning and an offset of its reach. */
  double under(double offset, int place) {
    return under[place] + (offset - x[place]) * (height[place] + height(offset, place)) / 2;
  }

  /** The least height of the places between two offsets, neither included; infinite if none. */
  double leastBetween(double from, double to) {
    int first = place(from) + 1;
    int last = placeBefore(to);
    return first > last ? Double.POSITIVE_INFINITY : leastOf(first, last);
  }

  private double leastOf(int first, int last) {
    int k = 31 - Integer.numberOfLeadingZeros(last - first + 1);
    return Math.min(least[k][first], least[k][last - (1 << k) + 1]);
  }

  /** The height at an offset that lies between a place and the next. */
  double height(double offset, int place) {
    if (place + 1 == x.length || x[place] == offset) {
      return height[place];
    }
    double share = (offset - x[place]) / (x[place + 1] - x[place]);
    return height[place] + (height[place + 1] - height[place]) * share;
  }

  /** How the height changes from a place to the next; 0 where it jumps or is the last. */
  double slope(int place) {
    return place + 1 == x.length || x[place + 1] == x[place]
        ? 0
        : (height[place + 1] - height[place]) / (x[place + 1] - x[place]);
  }
}
