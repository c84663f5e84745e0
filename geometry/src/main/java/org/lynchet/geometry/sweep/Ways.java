package org.lynchet.geometry.sweep;

import java.util.Arrays;

/**
 * Holds the ways through a band: each a sequence of runs, through which straight lines across the
 * band go from one mark to another without leaving the field.
 *
 * <p>Lines go through where no height between the marks is in their way, nor the heights at the
 * marks themselves, which change linearly as the marks move.
 */
final class Ways {
  private static final int NONE = -1;

  /** Numbers for each way: least upper and lower height, then height and slope of four lines. */
  private static final int STRIDE = 10;

  private int[] firstOf = new int[4];
  private int[] next = new int[2];
  private double[] numbers = new double[2 * STRIDE];
  private int size;

  /** Begins anew with so many pieces. */
  void clear(int pieces) {
    if (pieces > firstOf.length) {
      firstOf = new int[Math.max(pieces, 2 * firstOf.length)];
    }
    Arrays.fill(firstOf, 0, pieces, NONE);
    size = 0;
  }

  /**
   * Adds a way.
   *
   * @param upper the least upper height between the marks
   * @param lower the least lower height
   * @param first the run that it begins in
   * @param last the run that it ends in
   */
  void add(int piece, double upper, double lower, Run first, double from, Run last, double to) {
    if (size == next.length) {
      next = Arrays.copyOf(next, 2 * size);
      numbers = Arrays.copyOf(numbers, 2 * size * STRIDE);
    }
    int at = size * STRIDE;
    numbers[at] = upper;
    numbers[at + 1] = lower;
    addLine(at + 2, first.upper, from, first.upper.place(from));
    addLine(at + 4, first.lower, from, first.lower.place(from));
    addLine(at + 6, last.upper, to, last.upper.placeBefore(to));
    addLine(at + 8, last.lower, to, last.lower.placeBefore(to));
    next[size] = firstOf[piece];
    firstOf[piece] = size++;
  }

  private void addLine(int at, Side side, double offset, int place) {
    numbers[at] = side.height(offset, place);
    numbers[at + 1] = side.slope(place);
  }

  /** The length of all that goes through a piece. */
  double length(int piece, BandMark from, BandMark to) {
    double length = 0;
    for (int way = firstOf[piece]; way != NONE; way = next[way]) {
      int at = way * STRIDE;
      double f = from.movedMetres();
      double t = to.movedMetres();
      double upper =
          least(
              numbers[at],
              numbers[at + 2] + f * numbers[at + 3],
              numbers[at + 6] + t * numbers[at + 7]);
      double lower =
          least(
              numbers[at + 1],
              numbers[at + 4] + f * numbers[at + 5],
              numbers[at + 8] + t * numbers[at + 9]);
      length += Math.max(0, upper + lower);
    }
    return length;
  }

  private static double least(double a, double b, double c) {
    return Math.min(a, Math.min(b, c));
  }
}
