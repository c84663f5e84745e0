package org.lynchet.geometry.guidance;

import java.io.Serializable;

/**
 * Holds the segments of a curve that rises in y: vertices, directions, and where each begins along
 * the curve.
 *
 * <p>The place along counts the metres of the segments and, at each vertex, one metre for a turn of
 * one radian, so that places around the outside of a vertex are told apart.
 */
final class Course implements Serializable {
  private static final long serialVersionUID = 1L;

  private final double[] x;
  private final double[] y;
  private final double[] directionX;
  private final double[] directionY;
  private final double[] lengths;

  /** Where the turn at each vertex begins along the curve. */
  private final double[] along;

  /** The turn at each vertex in radians, positive to the left; 0 at both ends. */
  private final double[] turns;

  /**
   * A course.
   *
   * @param x of at least two vertices
   * @param y of the same vertices, rising
   */
  Course(double[] x, double[] y) {
    this.x = x.clone();
    this.y = y.clone();
    int segments = x.length - 1;
    directionX = new double[segments];
    directionY = new double[segments];
    lengths = new double[segments];
    along = new double[segments + 1];
    turns = new double[segments + 1];
    for (int k = 0; k < segments; k++) {
      lengths[k] = Math.hypot(x[k + 1] - x[k], y[k + 1] - y[k]);
      directionX[k] = (x[k + 1] - x[k]) / lengths[k];
      directionY[k] = (y[k + 1] - y[k]) / lengths[k];
      if (k > 0) {
        turns[k] =
            Math.atan2(directionY[k], directionX[k])
                - Math.atan2(directionY[k - 1], directionX[k - 1]);
      }
      along[k + 1] = along[k] + Math.abs(turns[k]) + lengths[k];
    }
  }

  int segments() {
    return lengths.length;
  }

  double x(int vertex) {
    return x[vertex];
  }

  double y(int vertex) {
    return y[vertex];
  }

  double directionX(int segment) {
    return directionX[segment];
  }

  double directionY(int segment) {
    return directionY[segment];
  }

  double turn(int vertex) {
    return turns[vertex];
  }

  /** Where the turn at a vertex begins along the curve. */
  double alongBefore(int vertex) {
    return along[vertex];
  }

  /** Where a segment begins along the curve. */
  double alongSegment(int segment) {
    return along[segment] + Math.abs(turns[segment]);
  }

  /** The segment at a height; the first or the last beyond the ends. */
  int segmentAt(double height) {
    int low = 0;
    int high = segments() - 1;
    while (low < high) {
      int middle = (low + high + 1) / 2;
      if (y[middle] <= height) {
        low = middle;
      } else {
        high = middle - 1;
      }
    }
    return low;
  }

  /** The metres from the beginning of a segment to the foot of a place on it. */
  double footOn(int segment, double px, double py) {
    double t = (px - x[segment]) * directionX[segment] + (py - y[segment]) * directionY[segment];
    return Math.max(0, Math.min(lengths[segment], t));
  }

  /** The distance of a place from a segment. */
  double distanceTo(int segment, double px, double py) {
    double foot = footOn(segment, px, py);
    double dx = px - x[segment] - foot * directionX[segment];
    double dy = py - y[segment] - foot * directionY[segment];
    return Math.sqrt(dx * dx + dy * dy);
  }

  /** The segment nearest to a place; of several, the first. */
  int nearest(double px, double py) {
    int start = segmentAt(py);
    int best = start;
    double least = distanceTo(start, px, py);
    for (int k = start + 1; k < segments() && y[k] - py < least; k++) {
      double distance = distanceTo(k, px, py);
      if (distance < least) {
        least = distance;
        best = k;
      }
    }
    for (int k = start - 1; k >= 0 && py - y[k + 1] <= least; k--) {
      double distance = distanceTo(k, px, py);
      if (distance <= least) {
        least = distance;
        best = k;
      }
    }
    return best;
  }

  /** Whether a place lies right of the curve. */
  boolean isRight(double px, double py) {
    int k = segmentAt(py);
    return directionY[k] * (px - x[k]) - directionX[k] * (py - y[k]) > 0;
  }

  double length(int segment) {
    return lengths[segment];
  }
}
