package org.lynchet.prescription.budget;

import java.util.List;
import java.util.Optional;

/**
 * A yield that answers a rate by <i>y = x a k<sup>x</sup></i> with <i>0 &lt; k &lt; 1</i>: what
 * each plant yields falls by the same share with every further plant (Carmer and Jackobs, An
 * exponential model for predicting optimum plant density and maximum corn yield, Agron. J. 57,
 * 1965).
 *
 * @param a what each of the rate would yield alone, above 0
 * @param k the share of that which is left with one more of the rate
 * @param leastTested the lowest rate of the trials
 * @param mostTested the highest rate of the trials
 */
public record ExponentialResponse(double a, double k, double leastTested, double mostTested)
    implements SeedingResponse {
  /** The rate of the highest yield is sought between these multiples of the highest rate tested. */
  private static final double NEAREST = 0.02;

  private static final double FARTHEST = 20;

  private static final int STEPS = 200;
  private static final double GOLDEN = (Math.sqrt(5) - 1) / 2;

  /**
   * The curve with the least squares of deviations; none if its highest yield is beyond all that
   * trials can tell.
   *
   * @param observations at three rates or more
   */
  static Optional<ExponentialResponse> find(List<Observation> observations) {
    double least = observations.stream().mapToDouble(Observation::rate).min().orElseThrow();
    double most = observations.stream().mapToDouble(Observation::rate).max().orElseThrow();
    double optimum = nearest(observations, most);
    double k = Math.exp(-1 / optimum);
    double a = scale(observations, optimum);
    boolean inside = optimum > 1.01 * NEAREST * most && optimum < 0.99 * FARTHEST * most;
    return inside && a > 0
        ? Optional.of(new ExponentialResponse(a, k, least, most))
        : Optional.empty();
  }

  /**
   * The rate of the highest yield, <i>-1 / ln k</i>, of the curve with the least squares: the best
   * of many in equal ratios, then a golden section between its neighbours.
   */
  private static double nearest(List<Observation> observations, double most) {
    double ratio = Math.pow(FARTHEST / NEAREST, 1.0 / STEPS);
    double best = NEAREST * most;
    for (int i = 1; i <= STEPS; i++) {
      double tried = NEAREST * most * Math.pow(ratio, i);
      if (squares(observations, tried) < squares(observations, best)) {
        best = tried;
      }
    }
    double low = best / ratio;
    double high = best * ratio;
    while (high - low > 1e-12 * high) {
      double left = high - GOLDEN * (high - low);
      double right = low + GOLDEN * (high - low);
      if (left >= right) {
        break;
      }
      if (squares(observations, left) < squares(observations, right)) {
        high = right;
      } else {
        low = left;
      }
    }
    return (low + high) / 2;
  }

  /** The a with the least squares, of the curve whose highest yield is at that rate. */
  private static double scale(List<Observation> observations, double optimum) {
    double product = 0;
    double square = 0;
    for (Observation observation : observations) {
      double shape = observation.rate() * Math.exp(-observation.rate() / optimum);
      product += shape * observation.yield();
      square += shape * shape;
    }
    return product / square;
  }

  private static double squares(List<Observation> observations, double optimum) {
    double a = scale(observations, optimum);
    double sum = 0;
    for (Observation observation : observations) {
      double shape = observation.rate() * Math.exp(-observation.rate() / optimum);
      double off = observation.yield() - a * shape;
      sum += off * off;
    }
    return sum;
  }

  /** The rate of the highest yield, <i>-1 / ln k</i>. */
  @Override
  public double agronomicOptimum() {
    return -1 / Math.log(k);
  }

  @Override
  public double highestYield() {
    return agronomicOptimum() * a / Math.E;
  }

  /** Where the slope <i>a k<sup>x</sup> (1 + x ln k)</i>, which falls, is the ratio. */
  @Override
  public double economicOptimum(double priceRatio) {
    double low = 0;
    double high = agronomicOptimum();
    for (int i = 0; i < STEPS; i++) {
      double middle = (low + high) / 2;
      if (slope(middle) > priceRatio) {
        low = middle;
      } else {
        high = middle;
      }
    }
    return low;
  }

  private double slope(double rate) {
    return a * Math.exp(rate * Math.log(k)) * (1 + rate * Math.log(k));
  }
}
