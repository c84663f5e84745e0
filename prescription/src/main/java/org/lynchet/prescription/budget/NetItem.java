package org.lynchet.prescription.budget;

import java.io.Serializable;
import org.lynchet.prescription.quantity.Spread;

/**
 * What one item of a budget does to the net.
 *
 * @param item what it is
 * @param kind whether it is sold or spent
 * @param change money over the whole field, above 0 for what is gained
 */
public record NetItem(String item, Kind kind, Spread change) implements Serializable {

  /** On which side of the farm's books an item stands. */
  public enum Kind {
    RETURN,
    COST
  }

  /** Whether it changes nothing at all. */
  boolean isNothing() {
    return change.low() == 0 && change.high() == 0;
  }
}
