package org.lynchet.prescription.plan;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.lynchet.formats.Fault;
import org.lynchet.prescription.quantity.AreaUnit;
import org.lynchet.prescription.quantity.SeedingRate;

/** A rate in plants is a wanted stand; seeds come of germination and field survival. */
class StandTest {
  @TempDir Path folder;

  private static String plan(String rate, String keys) {
    return PlanTexts.SHORT.replace("34000 seeds/ac", rate)
        + "products: {tall-108: {crop: corn"
        + keys
        + "}}\n";
  }

  private SeedingRate rate(String rate, String keys) throws Exception {
    Plan plan = PlanTexts.read(folder, plan(rate, keys));
    return plan.strips().get(0).centre().findRate(null).orElseThrow();
  }

  private List<Fault> faults(String rate, String keys) throws IOException {
    return PlanTexts.faults(folder, plan(rate, keys));
  }

  /**
   * Stand / (germination x field survival) by exact arithmetic; extension prints the second as
   * 164,000 and the third as 197,000.
   */
  @ParameterizedTest(name = "{0} plants/ac, {1} % x {2} %: {3} seeds/ac")
  @CsvSource({"100000, 90, 85, 130719", "140000, 90, 95, 163743", "142000, 90, 80, 197222"})
  void seedsToPlant(int stand, int germination, int survival, double seeds) throws Exception {
    assertThat(
            rate(
                stand + " plants/ac",
                ", germination: " + germination + " %, field-survival: " + survival + " %"))
        .isEqualTo(new SeedingRate(seeds, AreaUnit.ACRE));
  }

  /**
   * Purdue, "Yield response of corn to plant population in Indiana": about 31,600 plants are about
   * 33,250 seeds, of which 95 % stand.
   */
  @Test
  void seedsOfTheAgronomicOptimum() throws Exception {
    double seeds = rate("31600 plants/ac", ", germination: 95 %, field-survival: 100 %").seeds();
    assertThat(seeds).isBetween(33_225.0, 33_275.0);
  }

  @Test
  void standsMayBeOfHectaresAndSquareMetres() throws Exception {
    String half = ", germination: 100 %, field-survival: 30 %";
    assertThat(rate("70000 plants/ha", half)).isEqualTo(new SeedingRate(233_333, AreaUnit.HECTARE));
    assertThat(rate("7 plants/m2", half))
        .isEqualTo(new SeedingRate(23.3333, AreaUnit.SQUARE_METRE));
    assertThat(rate("0 plants/ac", half)).isEqualTo(new SeedingRate(0, AreaUnit.ACRE));
  }

  @ParameterizedTest
  @CsvSource({"''", "', germination: 95 %'", "', field-survival: 95 %'"})
  void aStandNeedsBothShares(String keys) throws IOException {
    assertThat(faults("30000 plants/ac", keys))
        .singleElement()
        .satisfies(
            fault -> {
              assertThat(fault.what()).contains("is a wanted stand").contains("'tall-108'");
              assertThat(fault.where()).isEqualTo("plan.yaml:5:89 strips[0].centre.rate");
              assertThat(fault.next()).contains("products.tall-108");
            });
  }

  /** What is wrong with the product is told once, and not its rate's fault. */
  @Test
  void aProductWithAFaultIsToldThere() throws IOException {
    assertThat(faults("30000 plants/ac", ", germination: 95 %, field-survival: 0 %"))
        .extracting(Fault::where)
        .containsExactly("plan.yaml:6:70 products.tall-108.field-survival");
    assertThat(
            PlanTexts.faults(
                folder, plan("30000 plants/ac", "").replace("crop: corn}}", "reserve: 1 %}}")))
        .singleElement()
        .satisfies(fault -> assertThat(fault.what()).contains("'crop' is missing"));
  }

  @Test
  void limitsAreThoseOfTheSeeds() throws IOException {
    String limited =
        plan("30000 plants/ac", ", germination: 90 %, field-survival: 90 %")
            .replace(
                "row-spacing: 30 in",
                "row-spacing: 30 in, rate-limits: {min: 20000 seeds/ac, max: 36000 seeds/ac}");
    assertThat(PlanTexts.faults(folder, limited))
        .singleElement()
        .satisfies(
            fault ->
                assertThat(fault.what())
                    .contains("'30000 plants/ac', 37037 seeds/ac, is outside the rate-limits"));
  }

  @Test
  void aStandBeyondAllPlantingIsOutOfRange() throws IOException {
    assertThat(faults("9000 plants/m2", ", germination: 50 %, field-survival: 50 %"))
        .singleElement()
        .satisfies(fault -> assertThat(fault.what()).contains("more seeds than can be planted"));
  }
}
