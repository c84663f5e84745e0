package org.lynchet.prescription.budget;

import java.util.List;
import java.util.Optional;
import org.locationtech.jts.math.Matrix;

/**
 * A yield that answers a rate by a parabola, <i>y = a + b x + c x&sup2;</i> with <i>c &lt; 0</i>.
 *
 * @param a yield at rate 0
 * @param b slope at rate 0
 * @param c curvature, below 0
 * @param leastTested the lowest rate of the trials
 * @param mostTested the highest rate of the trials
 */
public record ParabolaResponse(double a, double b, double c, double leastTested, double mostTested)
    implements SeedingResponse {

  /**
   * Refuses what has no highest yield.
   *
   * @throws IllegalArgumentException unless c is below 0
   */
  public ParabolaResponse {
    if (!(c < 0)) {
      throw new IllegalArgumentException("a yield that never falls has no best rate: c = " + c);
    }
  }

  /**
   * The parabola with the least squares of deviations; none if its yield has no maximum.
   *
   * @param observations at three rates or more
   */
  static Optional<ParabolaResponse> find(List<Observation> observations) {
    double least = observations.stream().mapToDouble(Observation::rate).min().orElseThrow();
    double most = observations.stream().mapToDouble(Observation::rate).max().orElseThrow();
    double middle = (least + most) / 2;
    double half = (most - least) / 2;
    double[] fitted = leastSquares(observations, middle, half);
    double b = fitted[1] / half;
    double c = fitted[2] / half / half;
    double a = fitted[0] - b * middle + c * middle * middle;
    return isFlat(fitted)
        ? Optional.empty()
        : Optional.of(new ParabolaResponse(a, b - 2 * c * middle, c, least, most));
  }

  /** Whether the yield bends down by no more than rounding. */
  private static boolean isFlat(double[] fitted) {
    return !(fitted[2] < -1e-9 * Math.abs(fitted[0]));
  }

  /** Coefficients for rates that are moved by the middle and divided by half the range. */
  private static double[] leastSquares(List<Observation> observations, double middle, double half) {
    double[][] sums = new double[3][3];
    double[] right = new double[3];
    for (Observation observation : observations) {
      double x = (observation.rate() - middle) / half;
      double[] powers = {1, x, x * x};
      for (int i = 0; i < 3; i++) {
        right[i] += powers[i] * observation.yield();
        for (int j = 0; j < 3; j++) {
          sums[i][j] += powers[i] * powers[j];
        }
      }
    }
    return Matrix.solve(sums, right);
  }

  /** Yield at a rate. */
  double yieldAt(double rate) {
    return a + rate * (b + rate * c);
  }

  /** The rate of the highest yield, <i>-b / 2c</i>. */
  @Override
  public double agronomicOptimum() {
    return -b / (2 * c);
  }

  @Override
  public double highestYield() {
    return yieldAt(agronomicOptimum());
  }

  /** The rate at which the last of it just pays for itself, <i>(r - b) / 2c</i>; not below 0. */
  @Override
  public double economicOptimum(double priceRatio) {
    return Math.max(0, (priceRatio - b) / (2 * c));
  }
}
