package org.lynchet.prescription.budget;

import java.io.Serializable;
import java.math.BigDecimal;
import java.util.List;

/**
 * Weighs what a change adds against what it takes away.
 *
 * <p>Net change = (added returns + reduced costs) - (reduced returns + added costs): Pierce,
 * Partial Budgeting, U. Missouri, 1997.
 *
 * @param addedReturns what is sold more
 * @param reducedCosts what is saved
 * @param reducedReturns what is sold less
 * @param addedCosts what is spent more
 */
public record PartialBudget(
    List<BudgetLine> addedReturns,
    List<BudgetLine> reducedCosts,
    List<BudgetLine> reducedReturns,
    List<BudgetLine> addedCosts)
    implements Serializable {

  /** Copies the lists. */
  public PartialBudget {
    addedReturns = List.copyOf(addedReturns);
    reducedCosts = List.copyOf(reducedCosts);
    reducedReturns = List.copyOf(reducedReturns);
    addedCosts = List.copyOf(addedCosts);
  }

  /** The budget of what items typically do to the net, each line rounded. */
  static PartialBudget typical(List<NetItem> items) {
    return new PartialBudget(
        lines(items, BudgetPart.ADDED_RETURNS),
        lines(items, BudgetPart.REDUCED_COSTS),
        lines(items, BudgetPart.REDUCED_RETURNS),
        lines(items, BudgetPart.ADDED_COSTS));
  }

  private static List<BudgetLine> lines(List<NetItem> items, BudgetPart part) {
    return items.stream()
        .filter(item -> item.part() == part && item.change().typical() != 0)
        .map(item -> BudgetLine.of(item.item(), Math.abs(item.change().typical())))
        .toList();
  }

  /** Added returns and reduced costs together. */
  public BigDecimal gained() {
    return sum(addedReturns).add(sum(reducedCosts));
  }

  /** Reduced returns and added costs together. */
  public BigDecimal lost() {
    return sum(reducedReturns).add(sum(addedCosts));
  }

  /** The change of net, negative if the change does not pay. */
  public BigDecimal netChange() {
    return gained().subtract(lost());
  }

  private static BigDecimal sum(List<BudgetLine> lines) {
    return lines.stream()
        .map(BudgetLine::amount)
        .reduce(BigDecimal.ZERO.setScale(2), BigDecimal::add);
  }
}
