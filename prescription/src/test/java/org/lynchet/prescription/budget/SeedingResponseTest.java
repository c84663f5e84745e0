package org.lynchet.prescription.budget;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.aggregator.ArgumentsAccessor;
import org.junit.jupiter.params.provider.CsvSource;
import org.lynchet.prescription.budget.SeedingResponse.Observation;
import org.lynchet.prescription.plan.SeedingTrials.Curve;

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
    SeedingResponse response = SeedingResponse.find(Curve.PARABOLA, observations()).orElseThrow();
    assertThat(response.economicOptimum(0.6615 / 118.1)).isCloseTo(191.7198, within(1e-3));
    assertThat(response.agronomicOptimum()).isCloseTo(210.447, within(1e-2));
    assertThat(response.tested(response.economicOptimum(0.6615 / 118.1))).isFalse();
    assertThat(response.tested(168)).isTrue();
  }

  /** Coefficients worked out from the same data by exact arithmetic. */
  @Test
  void theParabolaIsThatOfLeastSquares() {
    ParabolaResponse response = ParabolaResponse.find(observations()).orElseThrow();
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
    ParabolaResponse response = new ParabolaResponse(100, 0.0064, -1e-7, 20_000, 40_000);
    double best = response.economicOptimum(300.0 / 80_000 / 4.50);
    double lastBushel = response.yieldAt(best + 600) - response.yieldAt(best - 600);
    assertThat(lastBushel).isCloseTo(1, within(1e-9));
  }

  /**
   * Corn hybrids at 2, 4, 6 and 8 plants a hill, pounds a hill: Carmer and Jackobs 1965, Agron. J.
   * 57; their a, k and plants of the highest yield. A hill is 1/4000 acre: thousands of plants on
   * an acre, bushels of 56 lb, and the rate that pays best with seed at 3.75 a thousand and corn at
   * 4.50, by exact arithmetic from their data. Old hybrids: they test the curve, and are no advice.
   */
  @ParameterizedTest(name = "{0}")
  @CsvSource({
    "Hy2 x Oh7, 1.176, 1.73, 1.98, 1.946, .782, .865, 6.875, 27.500, 141.26, 23.625",
    "WF9 x C103, 1.356, 2.03, 1.878, 1.804, 1.039, .825, 5.192, 20.767, 141.74, 18.494",
    "WF9 x H60, 1.30, 1.78, 2.008, 1.964, .858, .854, 6.358, 25.430, 143.39, 22.129"
  })
  void hybridsOfCarmerAndJackobs(ArgumentsAccessor row) {
    List<Observation> hills = new ArrayList<>();
    List<Observation> acres = new ArrayList<>();
    for (int i = 1; i <= 4; i++) {
      hills.add(new Observation(2 * i, row.getDouble(i)));
      acres.add(new Observation(8000 * i, row.getDouble(i) * 4000 / 56));
    }
    ExponentialResponse ofHill =
        (ExponentialResponse) SeedingResponse.find(Curve.EXPONENTIAL, hills).orElseThrow();
    // Half of the last printed digit; .858 and .854 of the third hybrid are cut, not rounded.
    assertThat(ofHill.a()).isCloseTo(row.getDouble(5), within(0.0006));
    assertThat(ofHill.k()).isCloseTo(row.getDouble(6), within(0.0006));
    assertThat(ofHill.agronomicOptimum()).isCloseTo(row.getDouble(7), within(0.0005));
    SeedingResponse ofAcre = SeedingResponse.find(Curve.EXPONENTIAL, acres).orElseThrow();
    assertThat(ofAcre.agronomicOptimum() / 1000).isCloseTo(row.getDouble(8), within(0.0005));
    assertThat(ofAcre.highestYield()).isCloseTo(row.getDouble(9), within(0.005));
    assertThat(ofAcre.economicOptimum(0.00375 / 4.50) / 1000)
        .isCloseTo(row.getDouble(10), within(0.0005));
    assertThat(ofAcre.tested(8000)).isTrue();
    assertThat(ofAcre.tested(32_001)).isFalse();
  }

  /** A yield in proportion to the rate has its highest nowhere near what was tested. */
  @Test
  void plantsThatDoNotCrowdEachOtherHaveNoBestRate() {
    List<Observation> line =
        List.of(new Observation(1, 2), new Observation(2, 4), new Observation(4, 8));
    assertThat(SeedingResponse.find(Curve.EXPONENTIAL, line)).isEmpty();
    List<Observation> nothing =
        List.of(new Observation(1, 0), new Observation(2, 0), new Observation(4, 0));
    assertThat(SeedingResponse.find(Curve.EXPONENTIAL, nothing)).isEmpty();
  }

  @Test
  void dearSeedIsNotWorthAPlantOfTheExponentialCurve() {
    ExponentialResponse response = new ExponentialResponse(2, 0.9, 1, 20);
    assertThat(response.economicOptimum(2.5)).isCloseTo(0, within(1e-9));
    assertThat(response.economicOptimum(0)).isCloseTo(response.agronomicOptimum(), within(1e-9));
  }

  /** Means of plots at each rate; of two rates that leave the same, the lower. */
  @Test
  void ofTestedRatesTheBestIsTaken() {
    SeedingResponse response =
        SeedingResponse.find(
                Curve.TESTED_RATES,
                List.of(
                    new Observation(30, 9),
                    new Observation(20, 8),
                    new Observation(30, 11),
                    new Observation(40, 11)))
            .orElseThrow();
    assertThat(response.agronomicOptimum()).isEqualTo(40);
    assertThat(response.highestYield()).isEqualTo(11);
    assertThat(response.economicOptimum(0.1)).isEqualTo(30);
    assertThat(response.economicOptimum(0.21)).isEqualTo(20);
    assertThat(response.leastTested()).isEqualTo(20);
    assertThat(response.mostTested()).isEqualTo(40);
  }

  @Test
  void dearSeedIsNotSownAtAll() {
    assertThat(new ParabolaResponse(100, 2, -0.1, 0, 20).economicOptimum(3)).isZero();
  }

  @Test
  void aYieldThatOnlyRisesHasNoBestRate() {
    List<Observation> rising =
        List.of(new Observation(1, 1), new Observation(2, 4), new Observation(3, 9));
    List<Observation> line =
        List.of(new Observation(1, 0.1), new Observation(2, 0.2), new Observation(3, 0.3));
    assertThat(SeedingResponse.find(Curve.PARABOLA, rising)).isEmpty();
    assertThat(SeedingResponse.find(Curve.PARABOLA, line)).isEmpty();
    assertThatIllegalArgumentException()
        .isThrownBy(() -> new ParabolaResponse(1, 1, 0, 0, 1))
        .withMessageContaining("no best rate");
  }

  @Test
  void twoRatesAreTooFew() {
    List<Observation> two =
        List.of(new Observation(1, 1), new Observation(2, 4), new Observation(2, 5));
    assertThatIllegalArgumentException()
        .isThrownBy(() -> SeedingResponse.find(Curve.PARABOLA, two))
        .withMessageContaining("parabola needs 3 rates");
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
