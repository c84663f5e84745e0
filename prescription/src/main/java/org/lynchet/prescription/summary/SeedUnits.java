package org.lynchet.prescription.summary;

import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.lynchet.prescription.plan.Product;

/**
 * Counts units of seed to order.
 *
 * <p>A seeding rate is seeds as set on the planter, so germination does not change how much seed is
 * used, only how many plants come of it.
 */
final class SeedUnits {
  /**
   * Seeds in a unit of sale where the plan says nothing. Corn: 80,000 kernels (Iowa State Ag
   * Decision Maker A1-20). Soybean: 140,000 seeds (Iowa State researchers, trade press 2012); some
   * sellers use 130,000 or 150,000, common practice, no source.
   */
  private static final Map<String, Integer> BY_CROP = Map.of("corn", 80_000, "soybean", 140_000);

  /**
   * An excess over whole units that is rounding and not seed: areas add up to 1e-9 of the field,
   * and nine units exactly must not become ten.
   */
  private static final double ROUNDING = 1e-6;

  private SeedUnits() {}

  /** Seeds in a unit of a product, or null if neither the plan nor a default says. */
  static @Nullable Integer seedsPerUnit(String crop, @Nullable Product product) {
    return product != null && product.seedsPerUnit() != null
        ? product.seedsPerUnit()
        : BY_CROP.get(crop);
  }

  /** Whole units that hold the seeds and the reserve. */
  static long units(double seeds, double reserve, int seedsPerUnit) {
    return (long) Math.ceil(seeds * (1 + reserve) / seedsPerUnit - ROUNDING);
  }
}
