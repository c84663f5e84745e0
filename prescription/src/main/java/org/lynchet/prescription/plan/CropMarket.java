package org.lynchet.prescription.plan;

import java.io.Serializable;
import org.jspecify.annotations.Nullable;
import org.lynchet.prescription.quantity.GrainUnit;
import org.lynchet.prescription.quantity.Spread;

/**
 * What a crop brings.
 *
 * @param unit the unit of price and yield
 * @param price money for one of the unit
 * @param yieldInBlocks the unit on one of its area, in a separate block, as it is sold
 * @param yieldChange share by which a strip's yield differs from a block's, above -1, or null to
 *     have it forecast
 * @param delivered the yield as the plan says it, or null if it says it as it is sold
 */
public record CropMarket(
    GrainUnit unit,
    Spread price,
    Spread yieldInBlocks,
    @Nullable Spread yieldChange,
    @Nullable GrainDelivered delivered)
    implements Serializable {

  /** A crop whose yield is told as it is sold. */
  public CropMarket(
      GrainUnit unit, Spread price, Spread yieldInBlocks, @Nullable Spread yieldChange) {
    this(unit, price, yieldInBlocks, yieldChange, null);
  }
}
