package org.lynchet.prescription.budget;

import java.io.Serializable;
import org.lynchet.prescription.quantity.Spread;

/**
 * What one item of a budget does to the net.
 *
 * @param item what it is
 * @param kind whether it is sold or spent
 * @param change money over the whole field, to the cent; above 0 for what is gained
 */
public record NetItem(String item, Kind kind, Spread change) implements Serializable {

  private static final int CENTS = 2;

  /** Rounds to the cent, halves away from zero. */
  public NetItem {
    change = change.rounded(CENTS);
  }

  /** On which side of the farm's books an item stands. */
  public enum Kind {
    RETURN,
    COST
  }

  /** The part of the budget in which it typically stands. */
  public BudgetPart part() {
    if (kind == Kind.RETURN) {
      return change.typical() < 0 ? BudgetPart.REDUCED_RETURNS : BudgetPart.ADDED_RETURNS;
    }
    return change.typical() > 0 ? BudgetPart.REDUCED_COSTS : BudgetPart.ADDED_COSTS;
  }

  /** Whether it changes nothing at all. */
  boolean isNothing() {
    return change.low() == 0 && change.high() == 0;
  }
}
