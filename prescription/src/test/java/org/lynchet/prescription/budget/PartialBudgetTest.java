package org.lynchet.prescription.budget;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.lynchet.prescription.zone.SamplePlans.cornAndSoybean;
import static org.lynchet.prescription.zone.SamplePlans.field;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.lynchet.prescription.fault.Faults;
import org.lynchet.prescription.fault.RejectedException;
import org.lynchet.prescription.quantity.AreaUnit;
import org.lynchet.prescription.quantity.GrainUnit;
import org.lynchet.prescription.quantity.Spread;
import org.lynchet.prescription.summary.Summary;
import org.lynchet.prescription.zone.FieldLayout;
import org.lynchet.prescription.zone.SamplePlans;

class PartialBudgetTest {

  /**
   * Dry beans to corn on 100 acres: an extension lesson on partial budgets reprinted by the farm
   * press (southeastfarmpress.com, "Partial budget: simple, useful financial tool"): 150 bu at 6.50
   * more and 550 an acre saved against 22 cwt at 40 less and 690 an acre more is -4,500.
   */
  @Test
  void beansToCornLosesFourThousandFiveHundred() {
    PartialBudget budget =
        StripBudget.of(
                facts(
                    100,
                    List.of(
                        change("corn", 100, GrainUnit.BUSHEL, 150, 1, 6.50),
                        change("dry beans", 100, GrainUnit.POUND, 2200, -1, 0.40)),
                    -550 * 100,
                    List.of(BudgetLine.of("costs of corn", 690 * 100))))
            .typical();
    assertThat(amounts(budget.addedReturns())).containsExactly("97500.00");
    assertThat(amounts(budget.reducedCosts())).containsExactly("55000.00");
    assertThat(amounts(budget.reducedReturns())).containsExactly("88000.00");
    assertThat(amounts(budget.addedCosts())).containsExactly("69000.00");
    assertThat(budget.gained()).isEqualByComparingTo("152500");
    assertThat(budget.lost()).isEqualByComparingTo("157000");
    assertThat(budget.netChange()).isEqualByComparingTo("-4500");
  }

  /**
   * Michigan State, 2014: 145 bu at 4.50, seed 30,000 kernels of a unit of 80,000 at 293.30 (its
   * 110.00 is 109.99 to the cent), cash costs 378.53.
   */
  @Test
  void anAcreOfCornToTheCent() throws RejectedException {
    PartialBudget budget =
        StripBudget.of(
                facts(
                    1,
                    List.of(change("corn", 1, GrainUnit.BUSHEL, 145, 1, 4.50)),
                    0,
                    List.of(BudgetLine.of("cash costs", 378.53))))
            .typical();
    assertThat(amounts(budget.addedReturns())).containsExactly("652.50");
    assertThat(budget.netChange()).isEqualByComparingTo("273.97");

    SamplePlans plans =
        cornAndSoybean().budget(SampleMoney.money(Map.of(), Map.of("tall-108", 293.30), Map.of()));
    FieldLayout layout =
        FieldLayout.of(plans.plan(), field("POLYGON ((0 0, 100 0, 100 100, 0 100, 0 0))"));
    SeedPrices prices = new SeedPrices(plans.plan(), Summary.of(layout), new Faults());
    assertThat(BudgetLine.of("seed", prices.cost("tall-108", 30_000)).amount())
        .isEqualByComparingTo("109.99");
  }

  private static BudgetFacts facts(
      double acres, List<CropChange> crops, double moreSeed, List<BudgetLine> costs) {
    double field = acres * AreaUnit.ACRE.squareMetres();
    return new BudgetFacts("USD", field, crops, moreSeed, 0, null, costs);
  }

  private static CropChange change(
      String crop, double acres, GrainUnit unit, double yield, double change, double price) {
    return new CropChange(
        crop,
        acres * AreaUnit.ACRE.squareMetres(),
        unit,
        Spread.exactly(yield),
        Spread.exactly(change),
        Spread.exactly(price));
  }

  private static List<String> amounts(List<BudgetLine> lines) {
    return lines.stream().map(line -> line.amount().toPlainString()).toList();
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
