package org.lynchet.prescription.plan;

import java.io.Serializable;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * A hybrid or variety and how its seed is ordered.
 *
 * @param name its name
 * @param crop its crop
 * @param seedsPerUnit seeds in one unit of sale, at least 1; null if the plan does not say
 * @param germination share of seeds that germinate, in (0, 1]; null if the plan does not say
 * @param fieldSurvival share of the seeds that germinate whose plants stand, in (0, 1]; null if the
 *     plan does not say
 * @param reserve share ordered on top, 0 or more
 */
public record Product(
    String name,
    String crop,
    @Nullable Integer seedsPerUnit,
    @Nullable Double germination,
    @Nullable Double fieldSurvival,
    double reserve)
    implements Serializable {

  /** A product of whose survival in the field nothing is known. */
  public Product(
      String name,
      String crop,
      @Nullable Integer seedsPerUnit,
      @Nullable Double germination,
      double reserve) {
    this(name, crop, seedsPerUnit, germination, null, reserve);
  }

  /** The share of seeds whose plants stand; empty if the plan does not say enough. */
  public Optional<Double> standingShare() {
    return germination == null || fieldSurvival == null
        ? Optional.empty()
        : Optional.of(germination * fieldSurvival);
  }
}
