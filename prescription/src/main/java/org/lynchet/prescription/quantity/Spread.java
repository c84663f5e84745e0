package org.lynchet.prescription.quantity;

import java.io.Serializable;

/**
 * A number that is not known for sure.
 *
 * @param low it is hardly less
 * @param typical the best single guess
 * @param high it is hardly more
 */
public record Spread(double low, double typical, double high) implements Serializable {

  /**
   * Refuses numbers out of order.
   *
   * @throws IllegalArgumentException unless low &le; typical &le; high
   */
  public Spread {
    if (!(low <= typical && typical <= high)) {
      throw new IllegalArgumentException(low + ", " + typical + ", " + high + " are out of order");
    }
  }

  /** A number that is known. */
  public static Spread exactly(double value) {
    return new Spread(value, value, value);
  }
}
