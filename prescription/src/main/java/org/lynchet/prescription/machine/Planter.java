package org.lynchet.prescription.machine;

import java.io.Serializable;
import org.jspecify.annotations.Nullable;
import org.lynchet.prescription.quantity.Length;
import org.lynchet.prescription.quantity.SeedingRate;

/**
 * A planter.
 *
 * @param name the name that the plan gives it
 * @param rows rows of one pass, at least 1
 * @param rowSpacing distance of neighbouring rows
 * @param hoppers whether each row can have a product of its own
 * @param rateLimits the seeding rates it can set, if the plan says so
 * @param handling how it is driven
 */
public record Planter(
    String name,
    int rows,
    Length rowSpacing,
    Hoppers hoppers,
    @Nullable RateLimits rateLimits,
    Handling handling)
    implements Machine {

  /** Where the seed is kept. */
  public enum Hoppers {
    /** A hopper on each row unit. */
    ROW_UNIT,
    /** One tank that feeds all rows. */
    CENTRAL
  }

  /**
   * The seeding rates that a planter can set.
   *
   * @param min the lowest, other than 0
   * @param max the highest
   */
  public record RateLimits(SeedingRate min, SeedingRate max) implements Serializable {}

  @Override
  public double workingWidthMetres() {
    return rows * rowSpacing.metres();
  }
}
