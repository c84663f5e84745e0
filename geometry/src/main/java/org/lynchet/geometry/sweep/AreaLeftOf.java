package org.lynchet.geometry.sweep;

import java.io.Serializable;
import java.util.Arrays;

/**
 * Tells how much of a field lies left of an offset: piecewise quadratic, since the length across it
 * is piecewise linear.
 */
final class AreaLeftOf implements Serializable {
  private static final long serialVersionUID = 1L;

  private double[] x = new double[16];

  /** The length across the field just left and just right of each offset. */
  private double[] before = new double[16];

  private double[] after = new double[16];
  private double[] area = new double[16];
  private int size;

  /** Adds an offset, right of the last. */
  void add(double offset, double lengthBefore, double lengthAfter) {
    if (size == x.length) {
      x = Arrays.copyOf(x, 2 * size);
      before = Arrays.copyOf(before, 2 * size);
      after = Arrays.copyOf(after, 2 * size);
      area = Arrays.copyOf(area, 2 * size);
    }
    x[size] = offset;
    before[size] = lengthBefore;
    after[size] = lengthAfter;
    if (size > 0) {
      double width = offset - x[size - 1];
      area[size] = area[size - 1] + width * (after[size - 1] + lengthBefore) / 2;
    }
    size++;
  }

  /** The area of all. */
  double whole() {
    return size == 0 ? 0 : area[size - 1];
  }

  /** The last offset that was added at or left of another; 0 if there is none. */
  int find(double offset, int from) {
    return size == 0 ? 0 : Rising.lastUpTo(x, size, offset, from);
  }

  /** The area left of an offset in square metres, its place found. */
  double at(double offset, int place) {
    if (size == 0 || offset <= x[place] || place == size - 1) {
      return size == 0 ? 0 : area[place];
    }
    double share = (offset - x[place]) / (x[place + 1] - x[place]);
    double length = after[place] + (before[place + 1] - after[place]) * share;
    return area[place] + (offset - x[place]) * (after[place] + length) / 2;
  }
}
