package org.lynchet.prescription.fit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.lynchet.prescription.quantity.Length;
import org.lynchet.prescription.quantity.LengthUnit;

class StripFitTest {
  private static final double FOOT = 0.3048;

  /** Planters of 30 ft, a boom of 90 ft in sections of 10 ft, a header of 30 ft. */
  private static FitRequest thirties() {
    return Requests.inFeet()
        .crop("corn", 12)
        .crop("soybean", 24, Requests.inches(15))
        .boom(90, 10)
        .header(30)
        .upTo(120);
  }

  private static List<String> widths(Fit fit) {
    return fit.candidates().stream()
        .map(
            candidate ->
                candidate.strips().stream()
                    .map(strip -> feet(strip))
                    .reduce((left, right) -> left + "+" + right)
                    .orElseThrow())
        .toList();
  }

  private static String feet(StripWidth strip) {
    return String.format(Locale.ROOT, "%.1f", strip.widthMetres() / FOOT).replace(".0", "");
  }

  @Test
  void narrowStripsOfOneWidthComeFirstAndWholeBoomsDecideLate() {
    Fit fit = StripFit.search(thirties());

    assertThat(fit.complete()).isTrue();
    assertThat(widths(fit))
        .hasSize(16)
        .startsWith("30+30", "60+60", "90+90", "120+120", "30+60", "60+30");
    assertThat(fit.candidates().get(0).planned()).isTrue();
    assertThat(fit.candidates().get(0).wholeBooms()).isFalse();
    assertThat(fit.candidates().get(2).wholeBooms()).isTrue();
    assertThat(fit.candidates().get(0).reasons().get(0))
        .isEqualTo("narrower strips, with more rows at an edge, than rank 2");
  }

  /** Shares of rows and of land, by hand. */
  @Test
  void sharesOfCropsAndBorderRows() {
    Candidate wide =
        StripFit.search(thirties()).candidates().get(4); // 30 ft of corn, 60 ft of soybean

    assertThat(wide.periodMetres()).isCloseTo(90 * FOOT, within(1e-9));
    assertThat(wide.strips()).extracting(StripWidth::share).containsExactly(1 / 3.0, 2 / 3.0);
    assertThat(wide.strips())
        .extracting(StripWidth::borderRowShare)
        .containsExactly(2 / 12.0, 2 / 48.0);
    assertThat(wide.equalWidths()).isFalse();
  }

  @Test
  void passesAndSectionsNeedNotBeSharedOutEvenly() {
    Candidate strip =
        StripFit.search(Requests.inFeet().crop("corn", 44).boom(90, 10).upTo(110))
            .candidates()
            .get(0);

    MachineFit sprayer = strip.machines().get(0);
    assertThat(strip.fits()).isTrue();
    assertThat(sprayer.openSections()).containsExactly(6, 5);
    assertThat(sprayer.rowsPerPass()).containsExactly(24, 20);
    assertThat(sprayer.mismatchMillimetresPerPass()).isZero();
    assertThat(sprayer.shutOverOther()).isZero();
  }

  /** Two headers of 35 ft on 75 ft: 5 ft are left between them, 2 rows. */
  @Test
  void countsRowsLeftOver() {
    MachineFit combine =
        StripFit.search(Requests.inFeet().crop("corn", 30).header(35).upTo(75))
            .candidates()
            .get(0)
            .machines()
            .get(0);

    assertThat(combine.fits()).isFalse();
    assertThat(combine.passes()).isEqualTo(2);
    assertThat(combine.rowsPerPass()).containsExactly(14, 14);
    assertThat(combine.rowsLeftOver()).isEqualTo(2);
    assertThat(combine.mismatchMillimetresPerPass()).isCloseTo(-2.5 * 304.8, within(1e-9));
  }

  /**
   * In the middle of 12 rows of 30 in the nearest rows are 15 and 45 in from a machine's middle.
   */
  @ParameterizedTest(name = "track {0} in, tyre {1} in: {2} wheels on rows")
  @CsvSource({
    "120, 15, 0",
    " 60, 15, 0",
    " 90, 15, 2",
    "118, 26, 0",
    // 59 in from the middle, 16 in from the row at 75 in; 14 in from the row at 45 in.
    "118, 28, 0",
    "118, 29, 2",
    // A tyre that just touches the rows on both sides.
    "120, 30, 0",
    "120, 30.1, 2",
  })
  void wheelsOnRows(double track, double tyre, int hits) {
    Candidate strip =
        StripFit.search(
                Requests.inFeet().crop("corn", 12).boomOnWheels(30, 10, track, tyre).upTo(30))
            .candidates()
            .get(0);

    assertThat(strip.machines().get(0).wheels()).isEqualTo(2);
    assertThat(strip.machines().get(0).wheelsOnRows()).isEqualTo(hits);
  }

  /** Between strips of 7.5 and 15 ft the narrower would win, did not a wheel run beside it. */
  @Test
  void wheelsInTheCropDecideFirst() {
    Fit fit =
        StripFit.search(Requests.inFeet().crop("corn", 3).boomOnWheels(60, 2.5, 120, 15).upTo(30));

    assertThat(widths(fit)).containsExactly("15", "22.5", "30", "7.5");
    assertThat(fit.candidates().get(2).reasons().get(0))
        .isEqualTo("fewer wheels on rows than rank 4");
  }

  @Test
  void wheelsOfANarrowStripRunInTheCropBeside() {
    MachineFit sprayer =
        StripFit.search(Requests.inFeet().crop("corn", 3).boomOnWheels(62.5, 2.5, 120, 15).upTo(8))
            .candidates()
            .get(0)
            .machines()
            .get(0);

    assertThat(sprayer.wheelsInOtherCrop()).isEqualTo(2);
  }

  @Test
  void saysThatNothingFitsAndWhatComesNearest() {
    FitRequest request =
        Requests.inFeet().crop("corn", 12).crop("soybean", 12).header(35).boom(90).upTo(60);
    Fit fit = StripFit.search(request);

    assertThat(fit.candidates()).hasSize(4).noneMatch(Candidate::fits);
    Candidate nearest = fit.candidates().get(0);
    assertThat(nearest.worstMismatchMillimetres()).isCloseTo(30 * 304.8, within(1e-9));
    assertThat(FitTable.of(request, fit).replaceAll("\\s+", " "))
        .contains("Nothing fits. The nearest miss, off by 30.00 ft a pass:")
        .contains("sprayer reaches over the crop beside corn by 30.00 ft a pass")
        .contains("combine overlaps in corn by 5.00 ft a pass")
        .contains("Cut, by more than the tolerance: 4");
  }

  @Test
  void saysThatAPlanterIsWiderThanTheWidestStrip() {
    FitRequest request = Requests.inFeet().crop("corn", 24).upTo(40);

    assertThat(FitTable.of(request, StripFit.search(request)))
        .contains("one pass of a planter is wider than fit.max-strip-width");
  }

  /** A strip is as wide as tolerated or it is not: nothing in between is lost to rounding. */
  @ParameterizedTest(name = "header {0} ft on 30 ft: {1}")
  @CsvSource({
    "30.1666666666666667, true",
    "30.17, false",
    "29.8333333333333333, true",
    "29.83, false"
  })
  void theToleranceItselfFits(double header, boolean fits) {
    Fit fit = StripFit.search(Requests.inFeet().crop("corn", 12).header(header).upTo(30));

    assertThat(fit.candidates().get(0).fits()).isEqualTo(fits);
  }

  @Test
  void fourCropsAreTriedInFull() {
    Requests crops = Requests.inFeet().crop("corn", 6).crop("oat", 6).crop("soybean", 6);
    FitRequest request = crops.crop("wheat", 6).boom(90, 5).header(30).toolbar(15).upTo(120);
    Fit fit = StripFit.search(request);

    assertThat(fit.complete()).isTrue();
    assertThat(fit.candidates()).hasSize(8 * 8 * 8 * 8);
    assertThat(FitTable.of(request, fit).lines()).allMatch(line -> line.length() <= 100);
  }

  /** Seven widths for each of five crops are 16,807 ways; eight would be more than are tried. */
  @Test
  void tooManyWaysAreCutAtASmallerWidthAndItIsSaid() {
    Requests crops = Requests.inFeet().crop("corn", 6).crop("oat", 6).crop("soybean", 6);
    FitRequest request = crops.crop("wheat", 6).crop("rye", 6).boom(90, 5).upTo(120);
    Fit fit = StripFit.search(request);

    assertThat(fit.complete()).isFalse();
    assertThat(fit.candidates()).hasSize(16_807);
    assertThat(fit.widestTriedMetres()).isLessThan(120 * FOOT).isGreaterThan(105 * FOOT);
    assertThat(FitTable.of(request, fit)).contains("Wider strips, up to 120 ft, were not tried");
    assertThat(FitJson.of(fit)).contains("\"complete\" : false");
  }

  @Test
  void stripsOfOneCropAndPlanterGetTheSamePasses() {
    Fit fit =
        StripFit.search(
            Requests.inFeet().crop("corn", 12).crop("oat", 12).crop("corn", 12).upTo(60));

    assertThat(widths(fit)).containsExactly("30+30+30", "60+60+60", "30+60+30", "60+30+60");
  }

  /** The usual tolerance and widest strip are in inches and feet: 2 in are 50.8 mm. */
  @Test
  void aMetricPlanReadsNoFeetAndInches() {
    Length wide = new Length(120, LengthUnit.FOOT);
    Length rows = new Length(75, LengthUnit.CENTIMETRE);
    FitRequest metres = Requests.inMetres().crop("maize", 8, rows).boom(24, 3).upTo(36);
    FitRequest request =
        new FitRequest(metres.strips(), metres.machines(), wide, metres.tolerance());
    assertThat(FitTable.of(request, StripFit.search(request)))
        .contains("fit to 50.8 mm a pass")
        .doesNotContainPattern("\\d (in|ft)\\b");
  }

  @Test
  void oneRowAndOneSectionAreNotMany() {
    FitRequest request =
        Requests.inFeet().crop("corn", 1, Requests.inches(60)).boom(10, 5).header(5).upTo(5);
    String table = FitTable.of(request, StripFit.search(request));
    assertThat(table)
        .contains("1 way to lay corn out", "1 fits", "1 row corn", "1 section open, 1 row a pass")
        .contains("holds 1 shut section over")
        .doesNotContainPattern("\\b1 (rows|sections|shut sections|ways|passes)");
  }

  /** Twelve rows of 30 in are 30 ft, five more than the header. */
  @Test
  void thePlansOwnStripsAreJudgedHoweverWide() {
    Candidate planned = StripFit.planned(Requests.inFeet().crop("corn", 12).header(25).upTo(20));
    assertThat(planned.fits()).isFalse();
    assertThat(planned.planned()).isTrue();
    assertThat(planned.strips().get(0).widthMetres()).isEqualTo(9.144);
    assertThat(planned.reasons())
        .contains("combine falls short of the strip in corn by 5.00 ft a pass, 2 rows left over");
  }
}
