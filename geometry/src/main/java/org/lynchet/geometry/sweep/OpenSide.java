package org.lynchet.geometry.sweep;

import java.util.Arrays;

/** Collects the places of one side of a run while the field is swept. */
final class OpenSide {
  private double[] x = new double[4];
  private double[] height = new double[4];
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

  /** Ends adding; there is at least one place. */
  Side closed() {
    return new Side(Arrays.copyOf(x, size), Arrays.copyOf(height, size));
  }
}
