package org.lynchet.prescription.placement;

import java.io.Serializable;
import org.lynchet.prescription.plan.PlacementWeights;

/**
 * What a placement loses.
 *
 * @param partialSquareMetres area in partial passes
 * @param pointRowSquareMetres area of point rows
 * @param headlandSquareMetres area of the headland
 * @param otherCropSquareMetres area in strips that would have to change its crop to reach the
 *     wanted shares
 * @param pieces pieces of passes
 * @param turns turns of all planters
 */
public record PlacementTerms(
    double partialSquareMetres,
    double pointRowSquareMetres,
    double headlandSquareMetres,
    double otherCropSquareMetres,
    int pieces,
    int turns)
    implements Serializable {

  /** What they cost together, in square metres. */
  public double costSquareMetres(PlacementWeights weights) {
    double cost = 0;
    for (Term term : Term.values()) {
      cost += term.costSquareMetres(this, weights);
    }
    return cost;
  }
}
