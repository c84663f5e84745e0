package org.lynchet.prescription.light;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.assertj.core.data.Percentage;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Holds the quick samplings, and the full one, against finer ones, row by row. */
class SamplingTest {
  private static final Percentage HALF_A_PERCENT = Percentage.withPercentage(0.5);

  @ParameterizedTest
  @CsvSource({
    "44, 0, 6, 6, 0.762", "44, 90, 6, 6, 0.762", "44, 37, 12, 24, 0.381", "30, 90, 8, 16, 0.381",
    "52, 0, 4, 4, 0.762", "44, 90, 6, 8, 0.5588", "-33, 120, 2, 2, 0.762", "44, 60, 12, 12, 0.762",
  })
  void quickAndManyAreWithinHalfAPercentOfFull(
      double latitude, double heading, int corn, int soybean, double soybeanSpacing) {
    LightRequest request =
        new SampleRows()
            .strip("corn", corn, SampleRows.ROW, SampleRows.corn())
            .strip("soybean", soybean, soybeanSpacing, SampleRows.soybean())
            .request(latitude, heading, 0.75);
    double narrowest = Math.min(SampleRows.ROW, soybeanSpacing);
    LightResult full = SeasonLight.of(request.withSampling(Sampling.FULL));
    compare(SeasonLight.of(request), full);
    compare(SeasonLight.of(request.withSampling(Sampling.many(narrowest))), full);
  }

  @ParameterizedTest
  @CsvSource({"0", "90"})
  void halvingEveryStepChangesLittle(double heading) {
    LightRequest full =
        SampleRows.cornAndSoybean(4).request(heading, 0.75).withSampling(Sampling.FULL);
    Sampling s = Sampling.FULL;
    Sampling halved =
        new Sampling(
            s.days(), s.minutes() / 2, 2 * s.raysPerRow(), 2 * s.skyAcross(), 2 * s.skyAlong());
    compare(SeasonLight.of(full), SeasonLight.of(full.withSampling(halved)));
  }

  private static void compare(LightResult coarse, LightResult fine) {
    for (int i = 0; i < fine.rows().size(); i++) {
      RowLight a = coarse.rows().get(i);
      RowLight b = fine.rows().get(i);
      assertThat(a.relativeAbsorbed()).isCloseTo(b.relativeAbsorbed(), HALF_A_PERCENT);
      assertThat(a.relativeIncident()).isCloseTo(b.relativeIncident(), HALF_A_PERCENT);
    }
  }

  /** Days are neither lost nor twice, and no run reaches over a month's end. */
  @Test
  void runsOfDaysCoverTheSeason() {
    List<SeasonDays.Run> runs = SeasonDays.of(SampleRows.cornAndSoybean(2).rows(), 7);
    double end = SampleRows.corn().firstDay();
    for (SeasonDays.Run run : runs) {
      assertThat(run.days()).isBetween(1, 7);
      assertThat(run.middle() - run.days() / 2.0).isCloseTo(end, within(1e-9));
      end = run.middle() + run.days() / 2.0;
    }
    assertThat(end).isEqualTo(SampleRows.corn().lastDay());
  }

  @Test
  void skyIsDividedWithoutRest() {
    SkyDome sky = new SkyDome(16, 3);
    double sum = 0;
    double across = 0;
    for (int i = 0; i < sky.share.length; i++) {
      sum += sky.share[i];
      across += sky.share[i] * sky.shift[i];
    }
    assertThat(sum).isCloseTo(1, within(1e-12));
    assertThat(across).isCloseTo(0, within(1e-12));
  }
}
