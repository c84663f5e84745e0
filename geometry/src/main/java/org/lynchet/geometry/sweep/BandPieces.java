package org.lynchet.geometry.sweep;

import java.util.Arrays;

/**
 * Holds the pieces of a band: how far each reaches, and its area as a quadratic of how far the
 * band's edges have moved.
 */
final class BandPieces {
  private int size;
  private double[] min = new double[4];
  private double[] max = new double[4];

  /** Whether a piece reaches the band's edge, wherever that is. */
  private boolean[] isAtLeft = new boolean[4];

  private boolean[] isAtRight = new boolean[4];

  /** Area at the fixed edges, and what it gains with a move of an edge and with its square. */
  private double[] area = new double[4];

  private double[] perLeft = new double[4];
  private double[] perLeftSquared = new double[4];
  private double[] perRight = new double[4];
  private double[] perRightSquared = new double[4];

  /** Begins anew with so many pieces. */
  void clear(int pieces) {
    if (pieces > min.length) {
      grow(Math.max(pieces, 2 * min.length));
    }
    size = pieces;
    Arrays.fill(min, 0, size, Double.POSITIVE_INFINITY);
    Arrays.fill(max, 0, size, Double.NEGATIVE_INFINITY);
    Arrays.fill(isAtLeft, 0, size, false);
    Arrays.fill(isAtRight, 0, size, false);
    Arrays.fill(area, 0, size, 0);
    Arrays.fill(perLeft, 0, size, 0);
    Arrays.fill(perLeftSquared, 0, size, 0);
    Arrays.fill(perRight, 0, size, 0);
    Arrays.fill(perRightSquared, 0, size, 0);
  }

  private void grow(int capacity) {
    min = new double[capacity];
    max = new double[capacity];
    isAtLeft = new boolean[capacity];
    isAtRight = new boolean[capacity];
    area = new double[capacity];
    perLeft = new double[capacity];
    perLeftSquared = new double[capacity];
    perRight = new double[capacity];
    perRightSquared = new double[capacity];
  }

  /** Adds a run, of which nothing was left of the band, with all of its area. */
  void addWhole(int piece, Run run) {
    area[piece] += run.area;
  }

  /** Takes off what of a run lies left of the band. */
  void cutAtLeft(int piece, Run run, double left) {
    int upper = run.upper.place(left);
    int lower = run.lower.place(left);
    area[piece] -= run.upper.under(left, upper) + run.lower.under(left, lower);
    perLeft[piece] -= run.upper.height(left, upper) + run.lower.height(left, lower);
    perLeftSquared[piece] -= (run.upper.slope(upper) + run.lower.slope(lower)) / 2;
  }

  /** Adds what of a run lies left of the band's right edge. */
  void addUpTo(int piece, Run run, double right) {
    int upper = run.upper.place(right);
    int lower = run.lower.place(right);
    area[piece] += run.upper.under(right, upper) + run.lower.under(right, lower);
    perRight[piece] += run.upper.height(right, upper) + run.lower.height(right, lower);
    perRightSquared[piece] += (run.upper.slope(upper) + run.lower.slope(lower)) / 2;
    isAtRight[piece] = true;
  }

  /** Notes where a run begins and ends. */
  void reach(int piece, Run run, double left) {
    isAtLeft[piece] |= run.start <= left;
    min[piece] = Math.min(min[piece], run.start);
    max[piece] = Math.max(max[piece], run.end);
  }

  int size() {
    return size;
  }

  double minOffset(int piece, BandMark left) {
    return isAtLeft[piece] ? left.metres() : min[piece];
  }

  double maxOffset(int piece, BandMark right) {
    return isAtRight[piece] ? right.metres() : max[piece];
  }

  double area(int piece, BandMark left, BandMark right) {
    double l = left.movedMetres();
    double r = right.movedMetres();
    return area[piece]
        + l * (perLeft[piece] + l * perLeftSquared[piece])
        + r * (perRight[piece] + r * perRightSquared[piece]);
  }
}
