package org.lynchet.geometry.sweep;

import java.io.Serializable;
import java.util.Arrays;

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

  /** As few as this are looked at one after the other. */
  private static final int NEAR = 16;

  private double[] x = new double[4];
  private double[] height = new double[4];
  private double[] under = new double[0];

  /** Row k holds the least of 2^k heights from each place on. */
  private double[][] least = new double[0][];

  private int size;

  /** Adds a place; offsets do not fall. */
  void add(double offset, double heightThere) {
    if (size > 0 && x[size - 1] == offset && height[size - 1] == heightThere) {
      return;
    }
    if (size == x.length) {
      x = Arrays.copyOf(x, 2 * size);
      height = Arrays.copyOf(height, 2 * size);
    }
    x[size] = offset;
    height[size++] = heightThere;
  }

  /** Ends adding. */
  void close() {
    x = Arrays.copyOf(x, size);
    height = Arrays.copyOf(height, size);
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

  /** The last place at or left of an offset, looked for from a place that is not right of it. */
  int find(double offset, int from) {
    return Rising.lastUpTo(x, size, offset, from);
  }

  /** What lies between the side's beginning and an offset. */
  double under(double offset, int place) {
    return under[place] + (offset - x[place]) * (height[place] + height(offset, place)) / 2;
  }

  /**
   * The least height between two different offsets; at a jump on one of them the inner height.
   *
   * @param place a place that is not right of the first
   */
  double least(double from, double to, int place) {
    int last = find(from, place);
    double lowest = height(from, last);
    int near = Math.min(size - 1, last + NEAR);
    while (last < near && x[last + 1] < to) {
      lowest = Math.min(lowest, height[++last]);
    }
    if (last == near && near < size - 1) {
      last = find(Math.nextDown(to), near);
      lowest = Math.min(lowest, leastOf(near, last));
    }
    return Math.min(lowest, height(to, last));
  }

  private double leastOf(int first, int last) {
    int k = 31 - Integer.numberOfLeadingZeros(last - first + 1);
    return Math.min(least[k][first], least[k][last - (1 << k) + 1]);
  }

  private double height(double offset, int place) {
    if (place + 1 == size || x[place] == offset) {
      return height[place];
    }
    double share = (offset - x[place]) / (x[place + 1] - x[place]);
    return height[place] + (height[place + 1] - height[place]) * share;
  }
}
