package org.lynchet.geometry.sweep;

import java.util.Arrays;

/**
 * Measures where straight lines across a band lie wholly in the field, as those of a machine on its
 * full width.
 *
 * <p>Runs are asked from left to right; a run hands what it lets through to the runs at its end. No
 * line goes two ways, so lengths add up.
 */
final class Crossing {
  private static final int NONE = -1;

  private final Run[] runs;
  private double from;
  private double to;

  /** For each run, the first of the ranges of heights that reached it; ranges are chained. */
  private final int[] firstRange;

  private int[] nextRange = new int[8];
  private double[] low = new double[8];
  private double[] high = new double[8];
  private int ranges;

  Crossing(Run[] runs) {
    this.runs = runs;
    this.firstRange = new int[runs.length];
    Arrays.fill(firstRange, NONE);
  }

  /** Begins a band. */
  void begin(double fromOffset, double toOffset) {
    from = fromOffset;
    to = toOffset;
    ranges = 0;
  }

  /**
   * The length of what goes through a run and leaves the band there.
   *
   * @param upperPlace a place on its upper side that is not right of the band's beginning
   * @param lowerPlace likewise on its lower side
   */
  double lengthThrough(int number, int upperPlace, int lowerPlace) {
    Run run = runs[number];
    int range = firstRange[number];
    firstRange[number] = NONE;
    boolean isFirst = run.start <= from;
    if (run.end <= from || run.start >= to || (!isFirst && range == NONE)) {
      return 0;
    }
    double left = Math.max(run.start, from);
    double right = Math.min(run.end, to);
    double top = run.upper.least(left, right, upperPlace);
    double bottom = -run.lower.least(left, right, lowerPlace);
    if (isFirst) {
      return pass(run, bottom, top);
    }
    double length = 0;
    for (; range != NONE; range = nextRange[range]) {
      length += pass(run, Math.max(bottom, low[range]), Math.min(top, high[range]));
    }
    return length;
  }

  private double pass(Run run, double bottom, double top) {
    if (top <= bottom) {
      return 0;
    }
    if (run.end >= to) {
      return top - bottom;
    }
    for (int next : run.next) {
      hand(next, bottom, top);
    }
    return 0;
  }

  private void hand(int run, double bottom, double top) {
    if (ranges == low.length) {
      low = Arrays.copyOf(low, 2 * ranges);
      high = Arrays.copyOf(high, 2 * ranges);
      nextRange = Arrays.copyOf(nextRange, 2 * ranges);
    }
    low[ranges] = bottom;
    high[ranges] = top;
    nextRange[ranges] = firstRange[run];
    firstRange[run] = ranges++;
  }
}
