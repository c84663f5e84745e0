package org.lynchet.geometry.sweep;

/** Finds places in rising numbers, from a place that is not too far right. */
final class Rising {
  /** As far as this, looking at one after the other is quicker than any cleverness. */
  private static final int NEAR = 16;

  private Rising() {}

  /**
   * The last index at which a number is at or below a value: one after the other first, then in
   * steps that double.
   *
   * @param x rising numbers
   * @param size how many of them there are
   * @param from where to begin; the number there is at or below the value, or {@code from} is the
   *     result
   */
  static int lastUpTo(double[] x, int size, double value, int from) {
    int at = from;
    int near = Math.min(size - 1, from + NEAR);
    while (at < near && x[at + 1] <= value) {
      at++;
    }
    return at < near || at == size - 1 ? at : farther(x, size, value, at);
  }

  private static int farther(double[] x, int size, double value, int from) {
    int at = from;
    int step = 1;
    while (at + step < size && x[at + step] <= value) {
      at += step;
      step *= 2;
    }
    for (; step > 0; step /= 2) {
      if (at + step < size && x[at + step] <= value) {
        at += step;
      }
    }
    return at;
  }
}
