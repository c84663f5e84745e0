package org.lynchet.prescription.picture;

import org.lynchet.prescription.budget.StripBudget;

/** Draws what matters most in a budget, on one page to print. */
public final class BudgetChart extends Picture {
  private BudgetChart(Scene scene) {
    super(scene);
  }

  /**
   * A bar for each uncertain number, the widest first, from the net at its low value to that at its
   * high one; below them the net of all together.
   *
   * @param field the field's name
   */
  public static BudgetChart ofSwings(StripBudget budget, String field) {
    return new BudgetChart(new SwingChartMaker(budget, field).make());
  }
}
