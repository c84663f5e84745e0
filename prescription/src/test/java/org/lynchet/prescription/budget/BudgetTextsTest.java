package org.lynchet.prescription.budget;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.lynchet.prescription.zone.SamplePlans.cornAndSoybean;
import static org.lynchet.prescription.zone.SamplePlans.field;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.math.BigDecimal;
import java.util.List;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.lynchet.prescription.fault.RejectedException;
import org.lynchet.prescription.plan.PlannedBudget;
import org.lynchet.prescription.quantity.AreaUnit;
import org.lynchet.prescription.summary.Summary;
import org.lynchet.prescription.zone.FieldLayout;

/** What is shown of one budget, as tables, JSON and CSV. */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
@SuppressWarnings("NullAway.Init") // set before all tests
class BudgetTextsTest {
  private FieldBudget budget;

  @BeforeAll
  void weigh() throws RejectedException {
    PlannedBudget money =
        SampleMoney.withTrials(
            SampleMoney.plot(20_000, 188),
            SampleMoney.plot(23_000, 194.3),
            SampleMoney.plot(26_000, 198.8));
    FieldLayout layout =
        FieldLayout.of(
            cornAndSoybean().sprayer(90, 10.0).budget(money).plan(),
            field("POLYGON ((0 0, 109.728 0, 109.728 400, 0 400, 0 0))"));
    budget = FieldBudget.of(layout, Summary.of(layout));
  }

  /** The lines of a column add up to the cent, as in a budget on paper. */
  @Test
  void itemsSumToTheNetToTheCent() {
    assertThat(budget.strips().typical().netChange())
        .isEqualByComparingTo(BigDecimal.valueOf(budget.strips().net().typical()));
    BigDecimal low =
        budget.strips().items().stream()
            .map(item -> BigDecimal.valueOf(item.change().low()))
            .reduce(BigDecimal.ZERO, BigDecimal::add);
    assertThat(low).isEqualByComparingTo(BigDecimal.valueOf(budget.strips().net().low()));
  }

  @Test
  void tablesHaveEveryPartAndTheCautions() {
    String text = BudgetTable.of(budget);
    assertThat(text.lines()).allMatch(line -> line.length() <= 100);
    assertThat(text)
        .contains("added returns", "reduced costs: none", "reduced returns", "added costs")
        .contains("ratio of the prices, corn to soybean", "WHAT MATTERS MOST", "SEED TO ORDER")
        .contains("check them before you decide", "gains at the tall crop's edge can vanish")
        .contains("A forecast is not a promise", "water, hybrids and weather")
        .contains("advice from a licensed professional")
        .contains("of the plan");
  }

  /** Of 100 + 0.0064 x - 1e-7 x^2 it is 27,937.5, above 26,000: the trials say nothing of it. */
  @Test
  void aRateThatWasNotTestedIsWarnedOf() {
    assertThat(budget.rates().get(0).isOutsideTrials()).isTrue();
    assertThat(BudgetTable.of(budget).replace("\n  ", " "))
        .contains("Warning RATE_NOT_TESTED", "what the trials tested, 20000 to 26000");
  }

  @Test
  void jsonTellsTheSame() throws Exception {
    JsonNode json = new ObjectMapper().readTree(BudgetJson.of(budget));
    StripBudget strips = budget.strips();
    assertThat(json.path("schemaVersion").asInt()).isEqualTo(1);
    assertThat(json.path("net").path("high").asDouble())
        .isCloseTo(strips.net().high(), within(0.005));
    assertThat(json.path("net_per_area").path("typical").asDouble())
        .isCloseTo(strips.netPer(AreaUnit.ACRE).typical(), within(0.005));
    JsonNode corn = json.path("crops").path(0);
    assertThat(corn.path("break_even_yield_change").asDouble())
        .isCloseTo(strips.breakEvenYieldChange("corn").orElseThrow(), within(5e-5));
    assertThat(corn.path("yield_change_is_forecast").asBoolean()).isFalse();
    assertThat(json.path("price_ratio").path("break_even").asDouble())
        .isCloseTo(strips.breakEvenPrice("corn").orElseThrow() / 10.5, within(5e-5));
    assertThat(json.path("swings")).hasSize(7);
    assertThat(json.path("seed").path(0).path("units").asInt()).isPositive();
    assertThat(json.path("seed").path(2).path("cost").isNull()).isTrue();
    assertThat(json.path("warnings").path(0).path("code").asText()).isEqualTo("RATE_NOT_TESTED");
    assertThat(json.path("cautions").asText()).contains("not a promise");
  }

  @Test
  void csvHasARowForEachItemAndEachNumber() {
    List<String> rows = BudgetCsv.of(budget.strips(), AreaUnit.ACRE).lines().toList();
    assertThat(rows.get(0)).isEqualTo("part,item,unit,low,typical,high,net_at_low,net_at_high");
    assertThat(rows).filteredOn(row -> row.startsWith("input,")).hasSize(7);
    assertThat(rows)
        .filteredOn(row -> row.startsWith("net,,USD,"))
        .singleElement()
        .satisfies(
            row ->
                assertThat(new BigDecimal(row.split(",", -1)[4]))
                    .isEqualByComparingTo(budget.strips().typical().netChange()));
  }

  /** The sentence goes by the whole range, and never calls a loss a gain. */
  @Test
  void theVerdictGoesByTheRange() {
    StripBudget strips = budget.strips();
    String verdict = Verdict.of(strips, AreaUnit.ACRE);
    assertThat(strips.net().low()).isNegative();
    assertThat(verdict)
        .contains(strips.net().typical() < 0 ? "plant blocks" : "more than blocks")
        .contains("hangs most on the " + strips.swings().get(0).input().words());
  }
}
