package org.lynchet.prescription.quantity;

import java.io.Serializable;

/**
 * An area as written.
 *
 * @param amount how many of the unit
 * @param unit the unit
 */
public record Area(double amount, AreaUnit unit) implements Serializable {

  /** The area in square metres. */
  public double squareMetres() {
    return amount * unit.squareMetres();
  }
}
