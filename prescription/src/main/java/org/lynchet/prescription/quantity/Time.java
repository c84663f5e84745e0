package org.lynchet.prescription.quantity;

import java.io.Serializable;

/**
 * A time as written.
 *
 * @param amount how many of the unit
 * @param unit the unit
 */
public record Time(double amount, TimeUnit unit) implements Serializable {

  /** The time in hours. */
  public double hours() {
    return amount * unit.hours();
  }
}
