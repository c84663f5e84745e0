package org.lynchet.prescription.budget;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.lynchet.prescription.zone.SamplePlans.field;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.lynchet.prescription.plan.PlanFile;
import org.lynchet.prescription.summary.SeedOrder;
import org.lynchet.prescription.summary.Summary;
import org.lynchet.prescription.zone.FieldLayout;

/** From the text of a plan to what its budget shows of stands, moisture and seeding rates. */
class PublishedSeedingTest {
  private static final String PLAN =
      """
      field: {name: Field, boundary: field.geojson}
      guidance: {ab-line: {through: [-94.1, 43.55], heading: 0}}
      machines: {corn-planter: {kind: planter, rows: 12, row-spacing: 30 in}}
      strips:
        - {crop: corn, planted-by: corn-planter, passes: 1, centre: {product: tall-108, rate: %s}}
      products: {tall-108: {crop: corn, germination: 95 %%, field-survival: 100 %%}}
      budget:
        crops: {corn: {price: %s, yield: 11880 lb/ac, moisture: 18 %%, handling-loss: 0.5 %%, yield-change: 0 %%}}
        seed: {tall-108: 300 /unit}
        seeding-trials:
          tall-108:
            curve: tested-rates
            plots:
      """;

  /** Yield in per cent of the best at 10, 12, ... 36 thousand plants, planted on 30 April. */
  private static final int[] RELATIVE = {68, 74, 79, 84, 88, 92, 95, 97, 99, 100, 100, 100, 99, 97};

  @TempDir Path folder;

  private FieldBudget budget(String rate, String price) throws Exception {
    StringBuilder text = new StringBuilder(PLAN.formatted(rate, price));
    for (int i = 0; i < RELATIVE.length; i++) {
      text.append(
          "        - {rate: %d plants/ac, yield: %d bu/ac}\n"
              .formatted(10_000 + 2_000 * i, 2 * RELATIVE[i]));
    }
    Path file = Files.writeString(folder.resolve("plan.yaml"), text);
    FieldLayout layout =
        FieldLayout.of(
            PlanFile.read(file), field("POLYGON ((0 0, 91.44 0, 91.44 400, 0 400, 0 0))"));
    return FieldBudget.of(layout, Summary.of(layout));
  }

  /**
   * Nafziger 1994, J. Prod. Agric. 7:59-62, as a table of Purdue: relative yields by stand, here of
   * 200 bu/ac. Seed at 3.75 a thousand, of which 95 % stand: the best of the tested stands is
   * 26,000 with corn at 3.50 and 28,000 from 4.00 on, by exact arithmetic.
   */
  @ParameterizedTest(name = "corn at {0}: {1} plants/ac")
  @CsvSource({"3.50, 26000", "4.00, 28000", "4.50, 28000", "5.00, 28000"})
  void bestOfTheTestedStands(String price, double stand) throws Exception {
    RateAdvice advice = budget("34000 seeds/ac", price + " /bu").rates().get(0);
    assertThat(0.95 * advice.economic().typical()).isCloseTo(stand, within(0.5));
    assertThat(0.95 * advice.response().agronomicOptimum()).isCloseTo(28_000, within(0.5));
    assertThat(advice.isOutsideTrials()).isFalse();
  }

  /** U. Illinois, Nafziger: 300 for 80,000 kernels is 3.75 a thousand. */
  @Test
  void seedAtThreeSeventyFiveAThousand() throws Exception {
    RateAdvice advice = budget("34000 seeds/ac", "4.50 /bu").rates().get(0);
    assertThat(1000 * advice.seedPrice()).isCloseTo(3.75, within(1e-12));
    // A bushel buys 1,200 seeds.
    assertThat(4.50 / advice.seedPrice()).isCloseTo(1200, within(1e-9));
  }

  /** Purdue guide, by the farm press 2015: of 32,000 kernels at 95 % germination 30,400 grow. */
  @Test
  void kernelsThatGrow() throws Exception {
    SeedOrder order = budget("32000 seeds/ac", "4 /bu").seed().get(0).order();
    assertThat(order.germinating()).isNotNull().isEqualTo(order.standing());
    double acres = 91.44 * 400 / 4046.8564224;
    assertThat(order.germinating() / acres).isCloseTo(30_400, within(1.0));
  }

  @Test
  void tableShowsWhatWasDone() throws Exception {
    FieldBudget budget = budget("30400 plants/ac", "4 /bu");
    String text = BudgetTable.of(budget);
    assertThat(text.lines()).allMatch(line -> line.length() <= 100);
    assertThat(text.replaceAll("\\s+", " "))
        .contains(
            "corn: 11880.0 lb/ac at 18.0 % moisture sell as 204.8 bu/ac at 15.5 %: shrink 3.46 %,"
                + " with 0.50 % lost in handling")
        .contains("tall-108: 32000 seeds/ac stand as 30400 plants/ac, 95.0 % of the seeds")
        .contains("trials of whole blocks (tall-108: tested-rates)");
  }

  @Test
  void jsonShowsWhatWasDone() throws Exception {
    JsonNode json = new ObjectMapper().readTree(BudgetJson.of(budget("30400 plants/ac", "4 /bu")));
    JsonNode corn = json.path("crops").path(0);
    assertThat(corn.path("yield_in_blocks").path("typical").asDouble())
        .isCloseTo(204.81, within(0.005)); // 11,880 / 56 x (82 / 84.5 - 0.005)
    JsonNode delivered = corn.path("delivered");
    assertThat(delivered.path("yield").path("typical").asDouble()).isEqualTo(11_880);
    assertThat(delivered.path("yield_unit").asText()).isEqualTo("lb/ac");
    assertThat(delivered.path("moisture").asDouble()).isEqualTo(0.18);
    assertThat(delivered.path("standard_moisture").asDouble()).isEqualTo(0.155);
    assertThat(delivered.path("handling_loss").asDouble()).isEqualTo(0.005);
    assertThat(delivered.path("shrink").asDouble()).isEqualTo(0.0346);
    JsonNode rate = json.path("seeding_rates").path(0);
    assertThat(rate.path("curve").asText()).isEqualTo("tested-rates");
    assertThat(rate.path("highest_yield").asDouble()).isCloseTo(199.0, within(1e-9));
    JsonNode seed = json.path("seed").path(0);
    assertThat(seed.path("standing_plants").asDouble())
        .isCloseTo(0.95 * seed.path("centre_seeds").asDouble(), within(1.0));
  }
}
