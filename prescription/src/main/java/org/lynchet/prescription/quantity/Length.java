package org.lynchet.prescription.quantity;

import java.io.Serializable;

/**
 * A length as written.
 *
 * @param amount how many of the unit
 * @param unit the unit
 */
public record Length(double amount, LengthUnit unit) implements Serializable {

  /** Tenths of a millimetre, in which whole inches and feet are exact, in a metre. */
  public static final double TENTHS_IN_A_METRE = 10_000;

  /** The length in metres. */
  public double metres() {
    return unit.metres(amount);
  }

  /**
   * The length in tenths of a millimetre, rounded to the nearest: finer than any machine is built,
   * and exact for whole inches and feet.
   */
  public long tenthsOfMillimetre() {
    return Math.round(metres() * TENTHS_IN_A_METRE);
  }
}
