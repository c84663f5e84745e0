package org.lynchet.prescription.budget;

import java.io.Serializable;
import java.util.List;
import java.util.Locale;
import org.lynchet.prescription.plan.SeedingTrials.Curve;
import org.lynchet.prescription.quantity.GrainUnit;
import org.lynchet.prescription.quantity.SeedingRate;
import org.lynchet.prescription.quantity.Spread;

/**
 * The seeding rate of a product that pays best by the plan's own trials.
 *
 * <p>Rates are seeds on one of the area of the crop's unit of yield: an acre with bushels, a
 * hectare with tonnes.
 *
 * @param product the product
 * @param crop its crop
 * @param unit the unit of grain, which has its area
 * @param curve its form
 * @param response what the trials found
 * @param seedPrice money for one seed
 * @param economic the rate at which the last seed just pays for itself: at the lowest, the typical
 *     and the highest price of the crop
 * @param planned rates at which the plan has it, without those of the headland, in rising order
 */
public record RateAdvice(
    String product,
    String crop,
    GrainUnit unit,
    Curve curve,
    SeedingResponse response,
    double seedPrice,
    Spread economic,
    List<SeedingRate> planned)
    implements Serializable {

  /** Copies the list. */
  public RateAdvice {
    planned = List.copyOf(planned);
  }

  /**
   * Works out the rate.
   *
   * @param grainPrice money for one of the unit of grain
   */
  static RateAdvice of(
      String product,
      String crop,
      GrainUnit unit,
      Curve curve,
      SeedingResponse response,
      double seedPrice,
      Spread grainPrice,
      List<SeedingRate> planned) {
    return new RateAdvice(
        product,
        crop,
        unit,
        curve,
        response,
        seedPrice,
        new Spread(
            response.economicOptimum(seedPrice / grainPrice.low()),
            response.economicOptimum(seedPrice / grainPrice.typical()),
            response.economicOptimum(seedPrice / grainPrice.high())),
        planned);
  }

  /** The rates that were tested, in words. */
  String testedWords() {
    return String.format(
        Locale.ROOT, "%.0f to %.0f", response.leastTested(), response.mostTested());
  }

  /** Whether the trials say nothing about the rate that pays best at the typical price. */
  public boolean isOutsideTrials() {
    return !response.tested(economic.typical());
  }
}
