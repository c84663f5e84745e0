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
 * @param yieldInBlocks the unit on one of its area, in a separate block
 * @param yieldChange share by which a strip's yield differs from a block's, above -1, or null to
 *     have it forecast
 */
public record CropMarket(
    GrainUnit unit, Spread price, Spread yieldInBlocks, @Nullable Spread yieldChange)
    implements Serializable {}
