package org.lynchet.prescription.budget;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.lynchet.prescription.budget.SeedingResponse.Observation;

class SeedingResponseTest {

  /** Nitrogen kg/ha, and corn Mg/ha in four plots each. */
  private static final double[][] NITROGEN = {
    {0, 8.91634, 8.17685, 9.245, 8.8249},
    {33.6, 10.98147, 9.84763, 10.05861, 9.81029},
    {67.2, 12.48481, 10.77839, 13.4251, 10.51968},
    {100.8, 14.24289, 14.39509, 12.92164, 13.26923},
    {134.4, 15.42649, 13.56748, 15.07575, 14.17512},
    {168, 14.96135, 14.57867, 14.40876, 14.7425},
  };

  /**
   * Corn and nitrogen at site S5 in Minnesota: Hernandez and Mulla 2008, data in the open data
   * package agridat. Grain at 118.1 a Mg and nitrogen at 0.6615 a kg make 191.7198 kg/ha the
   * economic optimum, which was not tested.
   */
  @Test
  void theOptimumOfATrialIsAsPublished() {
    SeedingResponse response = SeedingResponse.find(observations()).orElseThrow();
    assertThat(response.economicOptimum(0.6615 / 118.1)).isCloseTo(191.7198, within(1e-3));
    assertThat(response.agronomicOptimum()).isCloseTo(210.447, within(1e-2));
    assertThat(response.tested(response.economicOptimum(0.6615 / 118.1))).isFalse();
    assertThat(response.tested(168)).isTrue();
  }

  /** Coefficients worked out from the same data by exact arithmetic. */
  @Test
  void theParabolaIsThatOfLeastSquares() {
    SeedingResponse response = SeedingResponse.find(observations()).orElseThrow();
    assertThat(response.a()).isCloseTo(8.545152, within(1e-6));
    assertThat(response.b()).isCloseTo(0.06294315, within(1e-8));
    assertThat(response.c()).isCloseTo(-1.4954626e-4, within(1e-11));
  }

  /**
   * Nafziger, U. Illinois: at 300 for 80,000 kernels and corn at 4.50, a bushel buys 1,200 seeds.
   * At the optimum 1,200 seeds more bring just that bushel.
   */
  @Test
  void atTheOptimumTheLastSeedsPayForThemselves() {
    SeedingResponse response = new SeedingResponse(100, 0.0064, -1e-7, 20_000, 40_000);
    double best = response.economicOptimum(300.0 / 80_000 / 4.50);
    double lastBushel = response.yieldAt(best + 600) - response.yieldAt(best - 600);
    assertThat(lastBushel).isCloseTo(1, within(1e-9));
  }

  @Test
  void dearSeedIsNotSownAtAll() {
    assertThat(new SeedingResponse(100, 2, -0.1, 0, 20).economicOptimum(3)).isZero();
  }

  @Test
  void aYieldThatOnlyRisesHasNoBestRate() {
    List<Observation> rising =
        List.of(new Observation(1, 1), new Observation(2, 4), new Observation(3, 9));
    List<Observation> line =
        List.of(new Observation(1, 0.1), new Observation(2, 0.2), new Observation(3, 0.3));
    assertThat(SeedingResponse.find(rising)).isEmpty();
    assertThat(SeedingResponse.find(line)).isEmpty();
    assertThatIllegalArgumentException()
        .isThrownBy(() -> new SeedingResponse(1, 1, 0, 0, 1))
        .withMessageContaining("no best rate");
  }

  @Test
  void twoRatesAreTooFew() {
    List<Observation> two =
        List.of(new Observation(1, 1), new Observation(2, 4), new Observation(2, 5));
    assertThatIllegalArgumentException()
        .isThrownBy(() -> SeedingResponse.find(two))
        .withMessageContaining("three rates");
  }

  private static List<Observation> observations() {
    List<Observation> observations = new ArrayList<>();
    for (double[] plots : NITROGEN) {
      for (int i = 1; i < plots.length; i++) {
        observations.add(new Observation(plots[0], plots[i]));
      }
    }
    return observations;
  }
}
