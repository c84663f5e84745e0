package org.lynchet.prescription.quantity;

import java.io.Serializable;

/**
 * A speed as written.
 *
 * @param amount how many of the unit
 * @param unit the unit
 */
public record Speed(double amount, SpeedUnit unit) implements Serializable {

  /** The speed in metres an hour. */
  public double metresPerHour() {
    return amount * unit.metresPerHour();
  }
}
