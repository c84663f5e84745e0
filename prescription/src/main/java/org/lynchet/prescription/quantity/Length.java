package org.lynchet.prescription.quantity;

import java.io.Serializable;

/**
 * A length as written.
 *
 * @param amount how many of the unit
 * @param unit the unit
 */
public record Length(double amount, LengthUnit unit) implements Serializable {

  /** The length in metres. */
  public double metres() {
    return unit.metres(amount);
  }
}
