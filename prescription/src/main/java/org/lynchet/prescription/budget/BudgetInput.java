package org.lynchet.prescription.budget;

import java.io.Serializable;

/**
 * Names an uncertain number of a budget.
 *
 * @param kind what it is
 * @param crop the crop that it is of; empty for the cost of an hour
 */
public record BudgetInput(Kind kind, String crop) implements Serializable {
  static final BudgetInput HOUR = new BudgetInput(Kind.HOUR, "");

  /** What a number is. */
  public enum Kind {
    /** A yield in a separate block. */
    YIELD,
    /** A change of that yield as a share. */
    YIELD_CHANGE,
    /** The price of a crop. */
    PRICE,
    /** The cost of an hour. */
    HOUR
  }

  static BudgetInput yieldInBlocks(String crop) {
    return new BudgetInput(Kind.YIELD, crop);
  }

  static BudgetInput yieldChange(String crop) {
    return new BudgetInput(Kind.YIELD_CHANGE, crop);
  }

  static BudgetInput price(String crop) {
    return new BudgetInput(Kind.PRICE, crop);
  }

  /** The number in words. */
  public String words() {
    return switch (kind) {
      case YIELD -> "yield in blocks, " + crop;
      case YIELD_CHANGE -> "change of yield, " + crop;
      case PRICE -> "price, " + crop;
      case HOUR -> "cost of an hour";
    };
  }
}
