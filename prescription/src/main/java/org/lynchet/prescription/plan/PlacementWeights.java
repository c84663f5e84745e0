package org.lynchet.prescription.plan;

import java.io.Serializable;
import org.lynchet.prescription.defaults.Defaults;
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

  /** The defaults {@code placement}. */
  public static final PlacementWeights DEFAULT = ofDefaults(Defaults.get());

  private static PlacementWeights ofDefaults(Defaults defaults) {
    return new PlacementWeights(
        defaults.number("placement.partial-pass"),
        defaults.number("placement.point-rows"),
        defaults.number("placement.headland"),
        defaults.number("placement.crop-shares"),
        new Area(defaults.number("placement.piece-square-metres"), AreaUnit.SQUARE_METRE),
        new Area(defaults.number("placement.turn-square-metres"), AreaUnit.SQUARE_METRE));
  }
}
