package org.lynchet.prescription.quantity;

import java.io.Serializable;

/**
 * A yield of grain.
 *
 * @param amount how much on one of the unit's area
 * @param unit the unit of grain, which has its area
 */
public record GrainYield(double amount, GrainUnit unit) implements Serializable {}
