package org.lynchet.prescription.quantity;

import java.io.Serializable;

/**
 * A price as written, in the plan's currency.
 *
 * @param amount money
 * @param unit what it buys, with its stroke, such as /bu, /t, /h, /unit, /ac, /ha or /field
 */
public record Price(double amount, String unit) implements Serializable {}
