package org.lynchet.prescription.fit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.lynchet.prescription.quantity.Length;
import org.lynchet.prescription.quantity.LengthUnit;

/**
 * Holds fits against widths commonly sold (common practice, no source): planters of 6, 8, 12, 16
 * and 24 rows of 30 in, booms of 60 to 132 ft, headers of 8 and 12 rows and of 30, 35 and 40 ft.
 * What fits is arithmetic: whole ratios and least common multiples.
 */
class WorkedWidthsTest {
  private static final double FOOT = 0.3048;

  private static List<Candidate> fitting(FitRequest request) {
    return StripFit.search(request).candidates().stream().filter(Candidate::fits).toList();
  }

  /**
   * The narrowest strip that a boom without sections covers is the least common multiple of the
   * widths, and takes one boom where the boom is a whole number of planters.
   */
  @ParameterizedTest(name = "{0} rows and a boom of {1} ft: {2} ft in {3} passes")
  @CsvSource({
    " 6,  60,  60,  1", " 6,  80, 240,  3", " 6,  90,  90, 1", " 6, 100, 300, 3", " 6, 120, 120, 1",
    " 8,  60,  60,  1", " 8,  80,  80,  1", " 8,  90, 180, 2", " 8, 100, 100, 1", " 8, 120, 120, 1",
    "12,  60,  60,  1", "12,  80, 240,  3", "12,  90,  90, 1", "12, 100, 300, 3", "12, 120, 120, 1",
    "16,  60, 120,  2", "16,  80,  80,  1", "16,  90, 360, 4", "16, 100, 200, 2", "16, 120, 120, 1",
    "24,  60,  60,  1", "24,  80, 240,  3", "24,  90, 180, 2", "24, 100, 300, 3", "24, 120, 120, 1",
    " 6, 132, 660,  5", " 8, 132, 660,  5", "12, 132, 660, 5", "16, 132, 1320, 10",
        "24, 132, 660, 5",
  })
  void boomAndPlanterMeetAtTheLeastCommonMultiple(int rows, int boom, int widthFeet, int passes) {
    List<Candidate> exact =
        fitting(Requests.inFeet().crop("corn", rows).boom(boom).upTo(widthFeet)).stream()
            .filter(candidate -> candidate.mismatchMillimetres() == 0)
            .toList();

    assertThat(exact).hasSize(1);
    assertThat(exact.get(0).periodMetres()).isCloseTo(widthFeet * FOOT, within(1e-9));
    assertThat(exact.get(0).machines().get(0).passes()).isEqualTo(passes);
    assertThat(exact.get(0).wholeBooms()).isTrue();
  }

  /** With sections as wide as the strip divides into, every boom covers every strip. */
  @ParameterizedTest(name = "{0} rows, boom of {1} ft, sections of {2} ft")
  @CsvSource({
    "6, 90, 5",
    "8, 90, 10",
    "12, 80, 10",
    "12, 100, 10",
    "16, 90, 10",
    "24, 132, 12",
    "24, 80, 10"
  })
  void sectionsThatMatchStripEdgesFitEverywhere(int rows, int boom, int section) {
    Fit fit = StripFit.search(Requests.inFeet().crop("corn", rows).boom(boom, section).upTo(120));

    assertThat(fit.candidates()).hasSize(120 * 2 / (rows * 5));
    assertThat(fit.candidates()).allMatch(Candidate::fits);
    assertThat(fit.candidates()).allMatch(candidate -> candidate.mismatchMillimetres() == 0);
  }

  /** Passes of the planter, on strips of up to 120 ft, that a header harvests in whole passes. */
  @ParameterizedTest(name = "{0} rows, header of {1} ft: {2}")
  @CsvSource({
    " 6, 20, '4 8'", // 60, 120 ft
    " 6, 30, '2 4 6 8'",
    " 6, 35, '7'", // 105 ft
    " 6, 40, '8'",
    " 8, 20, '1 2 3 4 5 6'", // a head of 8 rows
    " 8, 30, '3 6'",
    " 8, 35, ''", // 140 ft
    " 8, 40, '2 4 6'",
    "12, 20, '2 4'",
    "12, 30, '1 2 3 4'", // a head of 12 rows
    "12, 35, ''", // 210 ft
    "12, 40, '4'",
    "16, 20, '1 2 3'",
    "16, 30, '3'",
    "16, 35, ''", // 280 ft
    "16, 40, '1 2 3'",
    "24, 20, '1 2'",
    "24, 30, '1 2'",
    "24, 35, ''", // 420 ft
    "24, 40, '2'",
  })
  void headersTakeWholePasses(int rows, int header, String passes) {
    List<Candidate> fitting =
        fitting(Requests.inFeet().crop("corn", rows).header(header).upTo(120));

    assertThat(fitting)
        .extracting(candidate -> String.valueOf(candidate.strips().get(0).passes()))
        .containsExactly(passes.isEmpty() ? new String[0] : passes.split(" ", -1));
  }

  /**
   * Seeder and header of 12.2 m, boom of 36.6 m: 3 to 1 to 1 (GRDC GroundCover, "Planning pays
   * dividends in matching CTF ratios for your system").
   */
  @Test
  void controlledTrafficOfThreeToOneToOne() {
    Requests seeder =
        Requests.inMetres().crop("wheat", 40, new Length(305, LengthUnit.MILLIMETRE)).header(12.2);

    List<Candidate> whole = fitting(seeder.boom(36.6).upTo(40));
    assertThat(whole).hasSize(1);
    assertThat(whole.get(0).strips().get(0).passes()).isEqualTo(3);
    assertThat(whole.get(0).mismatchMillimetres()).isZero();
    assertThat(whole.get(0).machines()).extracting(MachineFit::passes).containsExactly(3, 1);
  }

  @Test
  void controlledTrafficWithSectionsAsWideAsTheSeeder() {
    List<Candidate> all =
        fitting(
            Requests.inMetres()
                .crop("wheat", 40, new Length(305, LengthUnit.MILLIMETRE))
                .header(12.2)
                .boom(36.6, 12.2)
                .upTo(40));

    assertThat(all).extracting(Candidate::wholeBooms).containsExactly(false, false, true);
    assertThat(all).allMatch(candidate -> candidate.mismatchMillimetres() == 0);
  }

  /** 16 rows of 30 in are 12.192 m: 8 mm a pass less than a header of 12.2 m. */
  @Test
  void inchesBesideMetresFitWithinTheTolerance() {
    Candidate nominal = fitting(Requests.inMetres().crop("corn", 16).header(12.2).upTo(13)).get(0);

    assertThat(nominal.machines().get(0).mismatchMillimetresPerPass()).isEqualTo(8);
  }

  /** Rows in centimetres are shown in metres, though the widest strip is given in feet. */
  @Test
  void metricRowsAreShownInMetres() {
    FitRequest request =
        Requests.inFeet()
            .crop("maize", 8, new Length(75, LengthUnit.CENTIMETRE))
            .header(20)
            .upTo(40);

    assertThat(FitTable.of(request, StripFit.search(request)))
        .contains("8 rows maize 6 m", "combine in maize: 1 pass, 8 rows a pass, 96.0 mm over");
  }
}
