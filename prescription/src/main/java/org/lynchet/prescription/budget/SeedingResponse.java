package org.lynchet.prescription.budget;

import java.io.Serializable;
import java.util.List;
import java.util.Optional;
import org.lynchet.prescription.plan.SeedingTrials.Curve;

/**
 * A yield that answers a seeding rate, as trials found it.
 *
 * <p>The units of rate and yield are the caller's, the same throughout.
 */
public sealed interface SeedingResponse extends Serializable
    permits ParabolaResponse, ExponentialResponse, TestedRates {

  /** One rate and the yield it gave. */
  record Observation(double rate, double yield) implements Serializable {}

  /**
   * The response of that form that comes nearest to what was found, by least squares; none if its
   * yield has no maximum.
   *
   * @param observations at as many rates as the curve needs
   * @throws IllegalArgumentException if the rates are too few
   */
  static Optional<SeedingResponse> find(Curve curve, List<Observation> observations) {
    if (observations.stream().map(Observation::rate).distinct().count() < curve.fewestRates()) {
      throw new IllegalArgumentException(curve + " needs " + curve.fewestRates() + " rates");
    }
    return switch (curve) {
      case PARABOLA -> ParabolaResponse.find(observations).map(found -> found);
      case EXPONENTIAL -> ExponentialResponse.find(observations).map(found -> found);
      case TESTED_RATES -> Optional.of(TestedRates.of(observations));
    };
  }

  /** The rate of the highest yield. */
  double agronomicOptimum();

  /** The highest yield. */
  double highestYield();

  /**
   * The rate at which the last of it just pays for itself; not below 0.
   *
   * @param priceRatio price of one of the rate over price of one of the yield
   */
  double economicOptimum(double priceRatio);

  /** The lowest rate of the trials. */
  double leastTested();

  /** The highest rate of the trials. */
  double mostTested();

  /** Whether the trials say anything about a rate. */
  default boolean tested(double rate) {
    return rate >= leastTested() && rate <= mostTested();
  }
}
