package org.lynchet.geometry.sweep;

import java.util.Arrays;

/**
 * Finds where straight lines across a band lie wholly in the field, as those of a machine on its
 * full width.
 *
 * <p>Runs are asked from left to right; a run hands what it lets through to the runs at its end. No
 * line goes two ways.
 */
final class Crossing {
  private static final int NONE = -1;

  private final Run[] runs;
  private double from;
  private double to;

  /** For each run, the first of the ranges of heights that reached it; ranges are chained. */
  private final int[] firstRange;

  private int[] nextRange = new int[8];
  private double[] upper = new double[8];
  private double[] lower = new double[8];

  /** The run in which a range began. */
  private int[] beginning = new int[8];

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

  /** Follows what goes through a run of a piece; what leaves the band there is a way. */
  void follow(int number, int piece, Ways ways) {
    Run run = runs[number];
    int range = firstRange[number];
    firstRange[number] = NONE;
    boolean isFirst = run.start <= from;
    if (run.end <= from || run.start >= to || (!isFirst && range == NONE)) {
      return;
    }
    double top = least(run.upper, run);
    double bottom = least(run.lower, run);
    if (isFirst) {
      pass(number, top, bottom, number, piece, ways);
    }
    for (; range != NONE && !isFirst; range = nextRange[range]) {
      pass(
          number,
          Math.min(top, upper[range]),
          Math.min(bottom, lower[range]),
          beginning[range],
          piece,
          ways);
    }
  }

  /** The least height of a side between the marks, where its run ends inside at the end too. */
  private double least(Side side, Run run) {
    double least = side.leastBetween(Math.max(run.start, from), Math.min(run.end, to));
    if (run.start > from) {
      least = Math.min(least, side.height(run.start, side.place(run.start)));
    }
    if (run.end < to) {
      least = Math.min(least, side.height(run.end, side.placeBefore(run.end)));
    }
    return least;
  }

  private void pass(int number, double top, double bottom, int first, int piece, Ways ways) {
    if (top + bottom <= 0) {
      return;
    }
    Run run = runs[number];
    if (run.end >= to) {
      ways.add(piece, top, bottom, runs[first], from, run, to);
      return;
    }
    for (int next : run.next) {
      hand(next, top, bottom, first);
    }
  }

  private void hand(int run, double top, double bottom, int first) {
    if (ranges == upper.length) {
      upper = Arrays.copyOf(upper, 2 * ranges);
      lower = Arrays.copyOf(lower, 2 * ranges);
      beginning = Arrays.copyOf(beginning, 2 * ranges);
      nextRange = Arrays.copyOf(nextRange, 2 * ranges);
    }
    upper[ranges] = top;
    lower[ranges] = bottom;
    beginning[ranges] = first;
    nextRange[ranges] = firstRange[run];
    firstRange[run] = ranges++;
  }
}
