package org.lynchet.prescription.plan;

import java.io.Serializable;
import org.lynchet.prescription.quantity.GrainUnit;
import org.lynchet.prescription.quantity.Shrink;
import org.lynchet.prescription.quantity.Spread;

/**
 * Yield of a crop as it is delivered, before it shrinks to what is sold.
 *
 * @param yield the unit on one of its area, as the plan says
 * @param unit its unit
 * @param shrink what becomes of it; the moisture is at least the standard one, for drier grain is
 *     paid by its weight
 */
public record GrainDelivered(Spread yield, GrainUnit unit, Shrink shrink) implements Serializable {}
