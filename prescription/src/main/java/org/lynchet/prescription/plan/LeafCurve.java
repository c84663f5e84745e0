package org.lynchet.prescription.plan;

import java.io.Serializable;
import org.jspecify.annotations.Nullable;

/**
 * How leaf area comes and goes over a season; null is what the plan does not say.
 *
 * @param half when half of the leaf area is there
 * @param full when 95 % of it is there, after half
 * @param declineFrom when it begins to fall, after full
 * @param leftAtMaturity share of it that is left at maturity
 */
public record LeafCurve(
    @Nullable SeasonTime half,
    @Nullable SeasonTime full,
    @Nullable SeasonTime declineFrom,
    @Nullable Double leftAtMaturity)
    implements Serializable {

  /** Nothing told. */
  public static final LeafCurve NONE = new LeafCurve(null, null, null, null);

  /** What it tells, and where it tells nothing what another one does. */
  public LeafCurve or(LeafCurve other) {
    return new LeafCurve(
        half == null ? other.half : half,
        full == null ? other.full : full,
        declineFrom == null ? other.declineFrom : declineFrom,
        leftAtMaturity == null ? other.leftAtMaturity : leftAtMaturity);
  }
}
