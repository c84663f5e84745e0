package org.lynchet.geometry.sweep;

import java.io.Serializable;

/**
 * Tells how much of a field lies left of an offset: piecewise quadratic, since the length across it
 * is piecewise linear.
 */
final class AreaLeftOf implements Serializable {
  private static final long serialVersionUID = 1L;

  private final double[] x;

  /** The length across the field just left and just right of each offset. */
  private final double[] before;

  private final double[] after;
  private final double[] area;
  private final RisingIndex index;

  /**
   * Takes lengths in.
   *
   * @param x at least one offset, rising
   * @param before as many lengths just left of them
   * @param after as many just right of them
   */
  AreaLeftOf(double[] x, double[] before, double[] after) {
    this.x = x;
    this.before = before;
    this.after = after;
    this.index = new RisingIndex(x);
    area = new double[x.length];
    for (int i = 1; i < x.length; i++) {
      area[i] = area[i - 1] + (x[i] - x[i - 1]) * (after[i - 1] + before[i]) / 2;
    }
  }

  /** The offsets of all vertices. */
  RisingIndex offsets() {
    return index;
  }

  /** The area of all. */
  double whole() {
    return area[x.length - 1];
  }

  /** The area left of an offset in square metres. */
  double at(double offset) {
    int place = index.lastUpTo(offset);
    if (offset <= x[place] || place == x.length - 1) {
      return area[place];
    }
    double share = (offset - x[place]) / (x[place + 1] - x[place]);
    double length = after[place] + (before[place + 1] - after[place]) * share;
    return area[place] + (offset - x[place]) * (after[place] + length) / 2;
  }
}
