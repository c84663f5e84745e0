package org.lynchet.prescription.summary;

import org.jspecify.annotations.Nullable;
import org.lynchet.prescription.defaults.Defaults;
import org.lynchet.prescription.plan.Product;

/**
 * Counts units of seed to order.
 *
 * <p>A seeding rate is seeds as set on the planter, so germination does not change how much seed is
 * used, only how many plants come of it.
 */
final class SeedUnits {
  /**
   * An excess over whole units that is rounding and not seed: areas add up to 1e-9 of the field,
   * and nine units exactly must not become ten.
   */
  private static final double ROUNDING = 1e-6;

  private SeedUnits() {}

  /** Seeds in a unit of a product, or null if neither the plan nor a default says. */
  static @Nullable Integer seedsPerUnit(String crop, @Nullable Product product) {
    if (product != null && product.seedsPerUnit() != null) {
      return product.seedsPerUnit();
    }
    String key = "seeds-per-unit." + crop;
    return Defaults.get().has(key) ? Integer.valueOf(Defaults.get().whole(key)) : null;
  }

  /** Whole units that hold the seeds and the reserve. */
  static long units(double seeds, double reserve, int seedsPerUnit) {
    return (long) Math.ceil(seeds * (1 + reserve) / seedsPerUnit - ROUNDING);
  }
}
