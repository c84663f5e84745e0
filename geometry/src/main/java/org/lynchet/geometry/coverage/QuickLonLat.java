package org.lynchet.geometry.coverage;

import java.util.Optional;
import org.locationtech.jts.geom.Coordinate;
import org.lynchet.geometry.guidance.OffsetFrame;

/**
 * Converts many places of an offset frame to longitude and latitude by polynomials that agree with
 * the frame's own conversion, at a fifth of its cost.
 *
 * <p>They are interpolated in the 5 x 5 Chebyshev points of the box around the places (Trefethen,
 * Approximation Theory and Approximation Practice, chapter 3), of degree 4 each way. Over a field
 * of 1 km the fifth derivatives make them err by less than the last digit of a double, over 10 km
 * at 45 degrees by 1e-10 m. At high latitudes they err more; so they are held against the frame
 * where that shows most, and not used if they are off.
 */
final class QuickLonLat {
  /**
   * Agreement that is asked for, in degrees: 1e-7 m, a thousandth of the grid of written places.
   */
  private static final double CLOSE = 1e-12;

  private static final int POINTS = 5;

  /** The roots of the fifth Chebyshev polynomial. */
  private static final double[] ROOTS = new double[POINTS];

  /** At j, i: what the value in root i counts in the coefficient of T_j. */
  private static final double[][] WEIGHTS = new double[POINTS][POINTS];

  static {
    for (int i = 0; i < POINTS; i++) {
      double angle = Math.PI * (2 * i + 1) / (2 * POINTS);
      ROOTS[i] = StrictMath.cos(angle);
      for (int j = 0; j < POINTS; j++) {
        WEIGHTS[j][i] = (j == 0 ? 1.0 : 2.0) / POINTS * StrictMath.cos(j * angle);
      }
    }
  }

  private final double centreX;
  private final double centreY;
  private final double halfX;
  private final double halfY;

  /** Coefficient of T_j(x) T_k(y) at j * POINTS + k. */
  private final double[] longitude = new double[POINTS * POINTS];

  private final double[] latitude = new double[POINTS * POINTS];

  private QuickLonLat(OffsetFrame frame, double minX, double maxX, double minY, double maxY) {
    centreX = (minX + maxX) / 2;
    centreY = (minY + maxY) / 2;
    halfX = Math.max((maxX - minX) / 2, 1);
    halfY = Math.max((maxY - minY) / 2, 1);
    for (int i = 0; i < POINTS; i++) {
      double[] longitudes = new double[POINTS];
      double[] latitudes = new double[POINTS];
      for (int k = 0; k < POINTS; k++) {
        Coordinate at = frame.toLonLat(centreX + ROOTS[i] * halfX, centreY + ROOTS[k] * halfY);
        longitudes[k] = at.x;
        latitudes[k] = at.y;
      }
      addLine(i, longitudes, longitude);
      addLine(i, latitudes, latitude);
    }
  }

  /** Adds what the values along y in root i of x come to. */
  private static void addLine(int i, double[] values, double[] coefficients) {
    for (int k = 0; k < POINTS; k++) {
      double sum = 0;
      for (int m = 0; m < POINTS; m++) {
        sum += WEIGHTS[k][m] * values[m];
      }
      for (int j = 0; j < POINTS; j++) {
        coefficients[j * POINTS + k] += WEIGHTS[j][i] * sum;
      }
    }
  }

  /**
   * Gets ready for the places of a box; nothing if its corners, the middles of its sides and its
   * middle are not met closely.
   */
  static Optional<QuickLonLat> over(
      OffsetFrame frame, double minX, double maxX, double minY, double maxY) {
    QuickLonLat quick = new QuickLonLat(frame, minX, maxX, minY, maxY);
    boolean isClose = true;
    for (double u = -1; u <= 1; u++) {
      for (double v = -1; v <= 1; v++) {
        double x = quick.centreX + u * quick.halfX;
        double y = quick.centreY + v * quick.halfY;
        Coordinate at = frame.toLonLat(x, y);
        isClose &=
            Math.abs(at.x - quick.longitude(x, y)) < CLOSE
                && Math.abs(at.y - quick.latitude(x, y)) < CLOSE;
      }
    }
    return isClose ? Optional.of(quick) : Optional.empty();
  }

  /** The longitude of a place in degrees. */
  double longitude(double x, double y) {
    return value(longitude, (x - centreX) / halfX, (y - centreY) / halfY);
  }

  /** The latitude of a place in degrees. */
  double latitude(double x, double y) {
    return value(latitude, (x - centreX) / halfX, (y - centreY) / halfY);
  }

  private static double value(double[] c, double u, double v) {
    double u2 = 2 * u * u - 1;
    double u3 = 2 * u * u2 - u;
    double u4 = 2 * u * u3 - u2;
    double v2 = 2 * v * v - 1;
    double v3 = 2 * v * v2 - v;
    double v4 = 2 * v * v3 - v2;
    return row(c, 0, v, v2, v3, v4)
        + u * row(c, 5, v, v2, v3, v4)
        + u2 * row(c, 10, v, v2, v3, v4)
        + u3 * row(c, 15, v, v2, v3, v4)
        + u4 * row(c, 20, v, v2, v3, v4);
  }

  private static double row(double[] c, int at, double v, double v2, double v3, double v4) {
    return c[at] + v * c[at + 1] + v2 * c[at + 2] + v3 * c[at + 3] + v4 * c[at + 4];
  }
}
