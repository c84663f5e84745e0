package org.lynchet.prescription.budget;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import java.util.List;
import org.junit.jupiter.api.Test;

class PartialBudgetTest {

  /**
   * Dry beans to corn on 100 acres: an extension lesson on partial budgets reprinted by the farm
   * press (southeastfarmpress.com, "Partial budget: simple, useful financial tool"): 150 bu at 6.50
   * more and 550 an acre saved against 22 cwt at 40 less and 690 an acre more is -4,500.
   */
  @Test
  void beansToCornLosesFourThousandFiveHundred() {
    PartialBudget budget =
        new PartialBudget(
            List.of(BudgetLine.of("corn", 150 * 6.50 * 100)),
            List.of(BudgetLine.of("costs of dry beans", 550 * 100)),
            List.of(BudgetLine.of("dry beans", 22 * 40 * 100)),
            List.of(BudgetLine.of("costs of corn", 690 * 100)));
    assertThat(budget.gained()).isEqualByComparingTo("152500");
    assertThat(budget.lost()).isEqualByComparingTo("157000");
    assertThat(budget.netChange()).isEqualByComparingTo("-4500");
  }

  /**
   * Michigan State, 2014: 145 bu at 4.50, seed 30,000 kernels of a unit of 80,000 at 293.30 (its
   * 110.00 is 109.99 to the cent), cash costs 378.53.
   */
  @Test
  void anAcreOfCornToTheCent() {
    BudgetLine corn = BudgetLine.of("corn", 145 * 4.50);
    BudgetLine seed = BudgetLine.of("seed", 30_000 * 293.30 / 80_000);
    assertThat(corn.amount()).isEqualByComparingTo("652.50");
    assertThat(seed.amount()).isEqualByComparingTo("109.99");
    PartialBudget budget =
        new PartialBudget(
            List.of(corn), List.of(), List.of(), List.of(BudgetLine.of("cash costs", 378.53)));
    assertThat(budget.netChange()).isEqualByComparingTo("273.97");
  }

  @Test
  void nothingChangesNothing() {
    PartialBudget budget = new PartialBudget(List.of(), List.of(), List.of(), List.of());
    assertThat(budget.netChange()).isEqualByComparingTo("0");
  }

  @Test
  void aNegativeAmountBelongsIntoTheOtherList() {
    assertThatIllegalArgumentException()
        .isThrownBy(() -> BudgetLine.of("seed", -0.01))
        .withMessageContaining("seed");
  }
}
