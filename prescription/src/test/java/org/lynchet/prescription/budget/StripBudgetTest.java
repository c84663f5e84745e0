package org.lynchet.prescription.budget;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.lynchet.prescription.quantity.AreaUnit;
import org.lynchet.prescription.quantity.GrainUnit;
import org.lynchet.prescription.quantity.Spread;

/**
 * Fifty acres of corn and fifty of soybean, invented changes of yield. Prices and yields: USDA
 * WASDE of November 2025 for 2025/26, 4.00 and 10.50 a bushel, 186.0 and 53.0 bushels an acre.
 */
class StripBudgetTest {
  /** Six items, each rounded to the cent. */
  private static final double CENTS = 0.03;

  private static final double FIFTY_ACRES = 50 * AreaUnit.ACRE.squareMetres();

  private static final BudgetFacts FACTS =
      new BudgetFacts(
          "USD",
          2 * FIFTY_ACRES,
          List.of(
              new CropChange(
                  "corn",
                  FIFTY_ACRES,
                  GrainUnit.BUSHEL,
                  new Spread(170, 186, 200),
                  new Spread(0.02, 0.08, 0.12),
                  new Spread(3.5, 4, 4.6)),
              new CropChange(
                  "soybean",
                  FIFTY_ACRES,
                  GrainUnit.BUSHEL,
                  Spread.exactly(53),
                  new Spread(-0.15, -0.08, -0.03),
                  new Spread(9.5, 10.5, 12))),
          250,
          2,
          new Spread(100, 150, 200),
          List.of(BudgetLine.of("second trip of the sprayer", 300)));

  private final StripBudget budget = StripBudget.of(FACTS);

  /**
   * 50 x 186 x 0.08 x 4 = 2,976; 50 x 53 x 0.08 x 10.5 = 2,226; 2,976 - 2,226 - 250 - 300 - 300.
   */
  @Test
  void addsUpByHand() {
    assertThat(budget.typical().addedReturns())
        .containsExactly(line("corn, change of yield", 2976));
    assertThat(budget.typical().reducedReturns())
        .containsExactly(line("soybean, change of yield", 2226));
    assertThat(budget.typical().addedCosts())
        .containsExactlyInAnyOrder(
            line("seed", 250),
            line("time in the field", 300),
            line("second trip of the sprayer", 300));
    assertThat(budget.typical().netChange()).isEqualByComparingTo("-100");
    assertThat(budget.net().typical()).isCloseTo(-100, within(1e-9));
    assertThat(budget.netPer(AreaUnit.ACRE).typical()).isCloseTo(-1, within(1e-9));
  }

  /** At the break-even the net is 0, whichever number is turned. */
  @Test
  void breaksEvenWhereNetIsNothing() {
    double change = budget.breakEvenYieldChange("corn").orElseThrow();
    assertThat(change).isCloseTo(0.08 + 100.0 / (50 * 186 * 4), within(1e-12));
    double price = budget.breakEvenPrice("corn").orElseThrow();
    assertThat(price).isCloseTo(4 + 100.0 / (50 * 186 * 0.08), within(1e-12));
    assertThat(budget.breakEvenPrice("soybean").orElseThrow())
        .isCloseTo(10.5 - 100.0 / (50 * 53 * 0.08), within(1e-12));
  }

  @Test
  void aYieldThatDoesNotChangeHasNoBreakEvenPrice() {
    CropChange corn = FACTS.crops().get(0);
    CropChange same =
        new CropChange(
            "corn",
            FIFTY_ACRES,
            GrainUnit.BUSHEL,
            Spread.exactly(186),
            Spread.exactly(0),
            corn.price());
    StripBudget flat =
        StripBudget.of(new BudgetFacts("USD", FIFTY_ACRES, List.of(same), 10, 0, null, List.of()));
    assertThat(flat.breakEvenPrice("corn")).isEmpty();
    assertThatIllegalArgumentException().isThrownBy(() -> flat.breakEvenPrice("oats"));
  }

  /** Every budget within the spreads lies within the range; both ends are reached. */
  @Test
  void theRangeHoldsAllBudgetsWithinTheSpreads() {
    BudgetInputs inputs = new BudgetInputs(FACTS);
    Random random = new Random(7);
    for (int i = 0; i < 10_000; i++) {
      double[] values =
          inputs.inputs().stream()
              .mapToDouble(
                  input ->
                      input.spread().low()
                          + random.nextDouble() * (input.spread().high() - input.spread().low()))
              .toArray();
      assertThat(inputs.net(values))
          .isBetween(budget.net().low() - CENTS, budget.net().high() + CENTS);
    }
    assertThat(budget.net().low())
        .isCloseTo(inputs.net(new double[] {170, 0.02, 3.5, 53, -0.15, 12, 200}), within(CENTS));
    assertThat(budget.net().high())
        .isCloseTo(inputs.net(new double[] {200, 0.12, 4.6, 53, -0.03, 9.5, 100}), within(CENTS));
  }

  /** The change of corn's yield moves 50 x 186 x 4 x 0.10 = 3,720, most of all. */
  @Test
  void theWidestSwingComesFirst() {
    assertThat(budget.swings()).hasSize(7);
    assertThat(budget.swings().get(0).input()).isEqualTo(BudgetInput.yieldChange("corn"));
    assertThat(budget.swings().get(0).width()).isCloseTo(3720, within(1e-9));
    assertThat(budget.swings())
        .isSortedAccordingTo((one, other) -> Double.compare(other.width(), one.width()));
  }

  /** A certain gain, a certain loss and nothing at all, in plain words. */
  @Test
  void theVerdictSaysWhatTheNumbersSay() {
    assertThat(verdict(Spread.exactly(0.1)))
        .isEqualTo(
            "Strips pay at all numbers of the plan; typically they bring 74.40 USD/ac (+74.40 to"
                + " +74.40) more than blocks.");
    assertThat(verdict(new Spread(-0.2, -0.1, -0.05)))
        .isEqualTo(
            "Plant blocks: at no numbers of the plan do strips pay; typically they lose 74.40"
                + " USD/ac (-148.80 to -37.20).");
    assertThat(verdict(new Spread(-0.1, 0, 0.1)))
        .startsWith("Typically strips bring what blocks do, 0.00 USD/ac (-74.40 to +74.40).")
        .endsWith("Whether strips pay hangs most on the change of yield, corn.");
    assertThat(verdict(new Spread(-0.1, -0.05, 0.1)))
        .startsWith("Typically strips lose 37.20 USD/ac (-74.40 to +74.40) against blocks: plant");
  }

  /** 186 bu/ac at 4.00. */
  private static String verdict(Spread change) {
    CropChange corn =
        new CropChange(
            "corn", FIFTY_ACRES, GrainUnit.BUSHEL, Spread.exactly(186), change, Spread.exactly(4));
    return Verdict.of(
        StripBudget.of(new BudgetFacts("USD", FIFTY_ACRES, List.of(corn), 0, 0, null, List.of())),
        AreaUnit.ACRE);
  }

  private static BudgetLine line(String item, double amount) {
    return BudgetLine.of(item, amount);
  }
}
