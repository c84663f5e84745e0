package org.lynchet.prescription.quantity;

import java.io.Serializable;

/**
 * Seeds per area as set on the planter, as written.
 *
 * @param seeds seeds on one of the unit of area; 0 means that nothing is planted
 * @param per the unit of area
 */
public record SeedingRate(double seeds, AreaUnit per) implements Serializable {

  /** The greatest rate that is taken, in seeds on a square metre: more is an error of writing. */
  public static final double MOST_PER_SQUARE_METRE = 10_000;

  /** The rates that are taken, in words. */
  public static final String ALLOWED = "0 to 10000 seeds/m2";

  /** Seeds on a square metre. */
  public double perSquareMetre() {
    return seeds / per.squareMetres();
  }

  /** The same rate on another unit of area; exactly the same amount if the unit is the same. */
  public SeedingRate in(AreaUnit unit) {
    return unit == per ? this : new SeedingRate(perSquareMetre() * unit.squareMetres(), unit);
  }

  /** The unit as it is written in a plan, such as {@code seeds/ac}. */
  public String unit() {
    return "seeds/" + per.symbol();
  }
}
