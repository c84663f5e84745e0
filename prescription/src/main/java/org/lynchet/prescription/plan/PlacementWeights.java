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
   * whole. A piece counts as 50 m2 and a turn as 100 m2, what a planter of 30 ft covers at 5 mph in
   * 2.4 s and 4.9 s; were turns to count much less, long fields would be planted across. These are
   * choices, without a source.
   */
  public static final PlacementWeights DEFAULT =
      new PlacementWeights(
          1, 1, 0.2, 1, new Area(50, AreaUnit.SQUARE_METRE), new Area(100, AreaUnit.SQUARE_METRE));
}
