package org.lynchet.geometry.coverage;

import org.locationtech.jts.algorithm.CGAlgorithmsDD;
import org.locationtech.jts.algorithm.Orientation;

/**
 * Recognizes rings that are certainly valid since they fall into a lower and an upper chain, the
 * one going only right and the other only left, that do not meet between their common ends.
 *
 * <p>Nearly all cells between cuts are like that, seen across the cuts. The chains are held against
 * each other in one walk from left to right: each vertex against the edge of the other chain below
 * or above it.
 */
final class TwoChains {
  /**
   * In longitude and latitude across is a direction of its own, in which places are rounded: nearer
   * than this, in degrees, it is left open which is first. A millionth of the grid of written
   * places, a thousand times the rounding error of a field of some kilometres.
   */
  private static final double CLOSE = 1e-15;

  /**
   * By how much that direction is turned, in radians, so that edges along cuts, which are rounded
   * to and fro, mostly go one way.
   */
  private static final double TURN = 1e-4;

  private final Vertices vertices;
  private final Rings.Place place;
  private final double firstShare;
  private final double secondShare;
  private final double firstOrigin;
  private final double secondOrigin;
  private final double close;
  private double[] x = new double[64];
  private double[] y = new double[64];
  private double[] across = new double[64];
  private int size;

  TwoChains(Vertices vertices, Rings.Place place) {
    this.vertices = vertices;
    this.place = place;
    if (place == Rings.Place.OFFSET || vertices.size() == 0) {
      firstShare = 1;
      secondShare = 0;
      firstOrigin = 0;
      secondOrigin = 0;
      close = 0;
      return;
    }
    firstOrigin = vertices.longitude(0);
    secondOrigin = vertices.latitude(0);
    double turned = Math.toRadians(vertices.frame().headingDegrees()) + TURN;
    double scale = Math.cos(Math.toRadians(secondOrigin));
    firstShare = Math.cos(turned) * scale;
    secondShare = -Math.sin(turned);
    close = CLOSE;
  }

  /** Whether a ring certainly is a valid polygon with its area on the left. */
  boolean areCertain(int[] ring) {
    size = ring.length;
    if (size < 3) {
      return false;
    }
    if (x.length < size) {
      ensureCapacity();
    }
    int leftmost = 0;
    int rightmost = 0;
    double least = Double.POSITIVE_INFINITY;
    double greatest = Double.NEGATIVE_INFINITY;
    for (int i = 0; i < size; i++) {
      double first = vertices.first(place, ring[i]);
      double second = vertices.second(place, ring[i]);
      double at = (first - firstOrigin) * firstShare + (second - secondOrigin) * secondShare;
      x[i] = first;
      y[i] = second;
      across[i] = at;
      if (least - at > close || (at == least && isBefore(i, leftmost))) {
        leftmost = i;
        least = at;
      }
      if (at - greatest > close || (at == greatest && isBefore(rightmost, i))) {
        rightmost = i;
        greatest = at;
      }
    }
    return areApart(leftmost, rightmost);
  }

  private void ensureCapacity() {
    int capacity = Math.max(size, 2 * x.length);
    x = new double[capacity];
    y = new double[capacity];
    across = new double[capacity];
  }

  /**
   * Whether a vertex certainly lies left of another; of two straight above each other the lower.
   */
  private boolean isBefore(int i, int j) {
    double distance = across[j] - across[i];
    return distance > close || (distance == 0 && close == 0 && y[i] < y[j]);
  }

  private int after(int i) {
    return i + 1 < size ? i + 1 : 0;
  }

  private int before(int i) {
    return i > 0 ? i - 1 : size - 1;
  }

  /** Whether both chains go right and all of the lower one lies below the upper one. */
  private boolean areApart(int leftmost, int rightmost) {
    int lower = leftmost;
    int upper = leftmost;
    int nextLower = after(lower);
    int nextUpper = before(upper);
    if (!isBefore(lower, nextLower) || !isBefore(upper, nextUpper)) {
      return false;
    }
    while (nextLower != rightmost || nextUpper != rightmost) {
      if (isBefore(nextLower, nextUpper)) {
        if (side(upper, nextUpper, nextLower) != Orientation.RIGHT) {
          return false;
        }
        lower = nextLower;
        nextLower = after(lower);
        if (!isBefore(lower, nextLower)) {
          return false;
        }
      } else if (isBefore(nextUpper, nextLower)) {
        if (side(lower, nextLower, nextUpper) != Orientation.LEFT) {
          return false;
        }
        upper = nextUpper;
        nextUpper = before(upper);
        if (!isBefore(upper, nextUpper)) {
          return false;
        }
      } else {
        return false;
      }
    }
    return true;
  }

  /** On which side of an edge, from left to right, a vertex lies. */
  private int side(int left, int right, int at) {
    return CGAlgorithmsDD.orientationIndex(x[left], y[left], x[right], y[right], x[at], y[at]);
  }
}
