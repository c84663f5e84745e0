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

  private final double[] x;
  private final double[] y;

  /** How far right each vertex lies. */
  private final double[] across;

  private final double close;

  /** Takes vertices in, to which none may be added while rings are looked at. */
  TwoChains(Vertices vertices, Rings.Place place) {
    x = vertices.firsts(place);
    y = vertices.seconds(place);
    if (place == Rings.Place.OFFSET) {
      across = x;
      close = 0;
    } else {
      across = acrossCuts(vertices);
      close = CLOSE;
    }
  }

  private static double[] acrossCuts(Vertices vertices) {
    double[] across = new double[vertices.size()];
    if (across.length == 0) {
      return across;
    }
    double longitude = vertices.longitude(0);
    double latitude = vertices.latitude(0);
    double turned = Math.toRadians(vertices.frame().headingDegrees()) + TURN;
    double eastShare = Math.cos(turned) * Math.cos(Math.toRadians(latitude));
    double northShare = -Math.sin(turned);
    for (int v = 0; v < across.length; v++) {
      across[v] =
          (vertices.longitude(v) - longitude) * eastShare
              + (vertices.latitude(v) - latitude) * northShare;
    }
    return across;
  }

  /** Whether a ring certainly is a valid polygon with its area on the left. */
  boolean areCertain(int[] ring) {
    if (ring.length < 3) {
      return false;
    }
    int leftmost = 0;
    int rightmost = 0;
    double least = Double.POSITIVE_INFINITY;
    double greatest = Double.NEGATIVE_INFINITY;
    for (int i = 0; i < ring.length; i++) {
      double at = across[ring[i]];
      if (least - at > close || (at == least && isBefore(ring[i], ring[leftmost]))) {
        leftmost = i;
        least = at;
      }
      if (at - greatest > close || (at == greatest && isBefore(ring[rightmost], ring[i]))) {
        rightmost = i;
        greatest = at;
      }
    }
    return areApart(ring, leftmost, rightmost);
  }

  /**
   * Whether a vertex certainly lies left of another; of two straight above each other the lower.
   */
  private boolean isBefore(int v, int w) {
    double distance = across[w] - across[v];
    return distance > close || (distance == 0 && close == 0 && y[v] < y[w]);
  }

  private static int after(int[] ring, int i) {
    return i + 1 < ring.length ? i + 1 : 0;
  }

  private static int before(int[] ring, int i) {
    return i > 0 ? i - 1 : ring.length - 1;
  }

  /** Whether both chains go right and all of the lower one lies below the upper one. */
  private boolean areApart(int[] ring, int leftmost, int rightmost) {
    int lower = ring[leftmost];
    int upper = lower;
    int lowerAt = after(ring, leftmost);
    int upperAt = before(ring, leftmost);
    int nextLower = ring[lowerAt];
    int nextUpper = ring[upperAt];
    if (!isBefore(lower, nextLower) || !isBefore(upper, nextUpper)) {
      return false;
    }
    while (lowerAt != rightmost || upperAt != rightmost) {
      if (isBefore(nextLower, nextUpper)) {
        if (side(upper, nextUpper, nextLower) != Orientation.RIGHT) {
          return false;
        }
        lower = nextLower;
        lowerAt = after(ring, lowerAt);
        nextLower = ring[lowerAt];
        if (!isBefore(lower, nextLower)) {
          return false;
        }
      } else if (isBefore(nextUpper, nextLower)) {
        if (side(lower, nextLower, nextUpper) != Orientation.LEFT) {
          return false;
        }
        upper = nextUpper;
        upperAt = before(ring, upperAt);
        nextUpper = ring[upperAt];
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
