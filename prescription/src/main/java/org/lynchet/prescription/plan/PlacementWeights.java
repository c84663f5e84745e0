package org.lynchet.prescription.plan;

import java.io.Serializable;
import org.lynchet.prescription.quantity.Area;
import org.lynchet.prescription.quantity.AreaUnit;

/**
 * What a placement costs, everything taken to an area, as if so much of the field were lost.
 *
 * @param partialPass what an area in partial passes counts
 * @param pointRows what an area of point rows counts
 * @param headland what an area of headland counts
 * @param cropShares what an area counts that is planted to another crop than wanted
 * @param piece what a piece of a pass counts
 * @param turn what a turn counts
 */
public record PlacementWeights(
    double partialPass, double pointRows, double headland, double cropShares, Area piece, Area turn)
    implements Serializable {

  /**
   * An area in partial passes and one of point rows count whole, since in both the planter works on
   * less than its width; were point rows to count half, rectangular fields would be planted at a
   * slant to their sides. An area of headland counts by a fifth, one of another crop than wanted
   * whole; a piece counts as 50 m2 and a turn as 25 m2, so that a few square metres do not decide
   * over a stop. These are choices, without a source.
   */
  public static final PlacementWeights DEFAULT =
      new PlacementWeights(
          1, 1, 0.2, 1, new Area(50, AreaUnit.SQUARE_METRE), new Area(25, AreaUnit.SQUARE_METRE));
}
