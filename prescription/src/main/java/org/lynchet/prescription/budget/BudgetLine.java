package org.lynchet.prescription.budget;

import java.io.Serializable;
import java.math.BigDecimal;
import java.math.RoundingMode;

/**
 * One item of a partial budget.
 *
 * @param item what it is, such as corn, more yield
 * @param amount money, 0 or more, to the cent
 */
public record BudgetLine(String item, BigDecimal amount) implements Serializable {

  /**
   * Rounds the amount to the cent, halves away from zero.
   *
   * @throws IllegalArgumentException if it is negative
   */
  public BudgetLine {
    if (amount.signum() < 0) {
      throw new IllegalArgumentException(item + ": " + amount + " is negative");
    }
    amount = amount.setScale(2, RoundingMode.HALF_UP);
  }

  /** A line of an amount that is not yet rounded. */
  public static BudgetLine of(String item, double amount) {
    return new BudgetLine(item, BigDecimal.valueOf(amount));
  }
}
