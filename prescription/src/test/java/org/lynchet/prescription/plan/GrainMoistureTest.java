package org.lynchet.prescription.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Objects;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.lynchet.formats.Fault;
import org.lynchet.prescription.quantity.GrainUnit;
import org.lynchet.prescription.quantity.GrainYield;
import org.lynchet.prescription.quantity.Shrink;
import org.lynchet.prescription.quantity.Spread;

/** Yields at another moisture, or in pounds, become those that are sold. */
class GrainMoistureTest {
  @TempDir Path folder;

  private static String plan(String crop, String market) {
    return PlanTexts.SHORT.replace("crop: corn", "crop: " + crop)
        + "budget: {crops: {"
        + crop
        + ": {"
        + market
        + "}}}\n";
  }

  private CropMarket market(String crop, String market) throws Exception {
    Plan plan = PlanTexts.read(folder, plan(crop, market));
    return Objects.requireNonNull(plan.budget().crops().get(crop));
  }

  private List<Fault> faults(String crop, String market) throws IOException {
    return PlanTexts.faults(folder, plan(crop, market));
  }

  /**
   * Bushels of corn as sold, by exact arithmetic with 56 lb and 15.5 % (U. Wisconsin, Rankin,
   * Harvest Time Math 101): 1,000 lb at 25.5 % are 15.7439; 5,600 lb at 26 % sold at 15 % 87.0588,
   * a tenth of the Purdue guide's 870.6 for 56,000 lb; 10,000 lb at 20 % are 9,467.46 lb (U.
   * Florida AG442); and a strip of 6 rows of 30 in and 1,320 ft, 0.454545 ac, with 5,400 lb at 18 %
   * is 205.87 to the acre. With 0.5 % lost in handling 1,000 lb are 876.7 lb.
   */
  @ParameterizedTest
  @CsvSource({
    "1000 lb/ac, 25.5 %, '', 15.7439, 0.00005",
    "5600 lb/ac, 26 %, ', standard-moisture: 15 %', 87.0588, 0.00005",
    "11880 lb/ac, 18 %, '', 205.87, 0.005",
    "10000 lb/ac, 20 %, '', 169.0617, 0.00005",
    "1000 lb/ac, 25.5 %, ', handling-loss: 0.5 %', 15.6546, 0.00005",
    "100 bu/ac, 25 %, '', 88.7574, 0.00005",
  })
  void bushelsOfCorn(String grown, String moisture, String more, double sold, double off)
      throws Exception {
    CropMarket corn =
        market("corn", "price: 4 /bu, yield: " + grown + ", moisture: " + moisture + more);
    assertThat(corn.unit()).isEqualTo(GrainUnit.BUSHEL);
    assertThat(corn.yieldInBlocks().typical()).isCloseTo(sold, within(off));
  }

  /** Pounds in a bushel and moisture as sold: U. Wisconsin, Rankin, Harvest Time Math 101. */
  @ParameterizedTest
  @CsvSource({
    "corn, 56, 15.5",
    "maize, 56, 15.5",
    "soybean, 60, 13",
    "wheat, 60, 13.5",
    "oats, 32, 14",
    "barley, 48, 14.5"
  })
  void bushelsAndMoistures(String crop, double pounds, double standard) throws Exception {
    CropMarket market =
        market(crop, "price: 4 /bu, yield: " + 10 * pounds + " lb/ac, moisture: 20 %");
    GrainDelivered delivered = Objects.requireNonNull(market.delivered());
    assertThat(delivered.shrink().standard()).isCloseTo(standard / 100, within(1e-12));
    assertThat(market.yieldInBlocks().typical())
        .isCloseTo(10 * delivered.shrink().kept(), within(1e-9));
  }

  /** Yields of a spread shrink alike; what the plan says is kept to be shown. */
  @Test
  void aSpreadShrinksAsAWhole() throws Exception {
    CropMarket soybean =
        market(
            "soybean",
            "price: 10 /bu, yield: {low: 40 bu/ac, typical: 50 bu/ac, high: 60 bu/ac},"
                + " moisture: 16 %");
    // 16 to 13 %: 0.965517, by exact arithmetic.
    assertThat(soybean.yieldInBlocks().low()).isCloseTo(40 * 0.965517, within(1e-4));
    assertThat(soybean.yieldInBlocks().high()).isCloseTo(60 * 0.965517, within(1e-4));
    assertThat(soybean.delivered())
        .isEqualTo(
            new GrainDelivered(
                new Spread(40, 50, 60), GrainUnit.BUSHEL, new Shrink(0.16, 0.13, 0)));
  }

  @Test
  void drierGrainIsPaidByItsWeight() throws Exception {
    assertThat(market("corn", "price: 4 /bu, yield: 180 bu/ac, moisture: 12 %").yieldInBlocks())
        .isEqualTo(Spread.exactly(180));
  }

  /** 2204.62 lb are a tonne, and 2.47105 acres a hectare. */
  @Test
  void poundsBecomeTonnesToo() throws Exception {
    CropMarket any = market("sorghum", "price: 160 /t, yield: 8000 lb/ac");
    assertThat(any.unit()).isEqualTo(GrainUnit.TONNE);
    assertThat(any.yieldInBlocks().typical())
        .isCloseTo(8000 / 2204.62262 * 2.47105381, within(1e-6));
  }

  @Test
  void aYieldAsSoldStaysAsItIs() throws Exception {
    CropMarket corn = market("corn", "price: 4 /bu, yield: 186 bu/ac, standard-moisture: 15 %");
    assertThat(corn.yieldInBlocks()).isEqualTo(Spread.exactly(186));
    assertThat(corn.delivered()).isNull();
  }

  @Test
  void aCropThatIsNotKnownNeedsItsMoistureAndUnit() throws Exception {
    assertThat(faults("sorghum", "price: 4 /bu, yield: 100 bu/ac, moisture: 18 %"))
        .singleElement()
        .satisfies(
            fault -> {
              assertThat(fault.what()).contains("the moisture at which sorghum is sold");
              assertThat(fault.next()).contains("budget.crops.sorghum.standard-moisture");
            });
    assertThat(faults("sorghum", "price: 4 /bu, yield: 5600 lb/ac"))
        .singleElement()
        .satisfies(fault -> assertThat(fault.what()).contains("different units of grain"));
    assertThat(
            market(
                    "sorghum",
                    "price: 4 /bu, yield: 100 bu/ac, moisture: 18 %, standard-moisture: 14 %")
                .yieldInBlocks()
                .typical())
        .isCloseTo(100 * 82 / 86.0, within(1e-9));
  }

  /** Plots of a trial are harvested at moistures of their own; drier ones hold more dry matter. */
  @Test
  void plotsOfATrialHaveTheirOwnMoisture() throws Exception {
    String text =
        plan("corn", "price: 4 /bu, yield: 186 bu/ac")
            .replace(
                "bu/ac}}",
                "bu/ac}}, seeding-trials: {tall-108: [{rate: 24000 seeds/ac, yield: 11880 lb/ac,"
                    + " moisture: 18 %}, {rate: 30000 seeds/ac, yield: 200 bu/ac, moisture: 14 %},"
                    + " {rate: 36000 seeds/ac, yield: 190 bu/ac}]}");
    SeedingTrials trials =
        Objects.requireNonNull(
            PlanTexts.read(folder, text).budget().seedingTrials().get("tall-108"));
    assertThat(trials.plots())
        .extracting(plot -> plot.grown().unit())
        .containsOnly(GrainUnit.BUSHEL);
    assertThat(trials.plots().get(0).grown().amount()).isCloseTo(205.87, within(0.005));
    assertThat(trials.plots().get(1).grown().amount()).isCloseTo(200 * 86 / 84.5, within(1e-9));
    assertThat(trials.plots().get(2).grown()).isEqualTo(new GrainYield(190, GrainUnit.BUSHEL));
  }
}
