package org.lynchet.prescription.quantity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.aggregator.ArgumentsAccessor;
import org.junit.jupiter.params.provider.CsvSource;

/** Holds row length and seed spacing against handbook tables. */
class SeedSpacingTest {

  /**
   * Row length of 1/1000 acre. 15, 20, 30, 36 and 38 in: University of Tennessee, "Checking corn
   * populations", 2011, printed to the inch; 7.5, 22 and 28 in: exact arithmetic, 522.72 ft / row
   * width in in.
   */
  @ParameterizedTest(name = "{0} in rows: {1} ft {2} in")
  @CsvSource({
    "7.5, 69, 8",
    "15, 34, 10",
    "20, 26, 2",
    "22, 23, 9",
    "28, 18, 8",
    "30, 17, 5",
    "36, 14, 6",
    "38, 13, 9"
  })
  void rowLengthOfAThousandthOfAnAcre(double rowInches, int feet, int inches) {
    double metres =
        SeedSpacing.rowMetres(
            new Area(0.001, AreaUnit.ACRE), new Length(rowInches, LengthUnit.INCH));
    assertThat(Math.round(metres / LengthUnit.INCH.metres())).isEqualTo(feet * 12L + inches);
    assertThat(metres).isCloseTo(522.72 / rowInches * 0.3048, within(1e-12));
  }

  /**
   * Seed spacing in inches, printed to a tenth: Purdue University Corn and Soybean Field Guide, as
   * reported by the farm press on 18 May 2015.
   */
  @ParameterizedTest(name = "{0} in rows, {1} seeds/ac: {2} in")
  @CsvSource({
    "30, 30000, 7.0",
    "30, 32000, 6.5",
    "30, 34000, 6.1",
    "20, 32000, 9.8",
    "15, 32000, 13.1"
  })
  void publishedSeedSpacing(double rowInches, double seedsPerAcre, double inches) {
    // 30 in and 34,000 are 6.1494 in; half of the last printed digit is 0.05 in.
    assertThat(spacingInches(rowInches, seedsPerAcre)).isCloseTo(inches, within(0.05));
  }

  /**
   * Penn State, "Planting considerations and stand assessments": 30 in rows are 17,424 ft of row on
   * an acre, 1.7 plants a foot about 30,000; exactly 29,620.8.
   */
  @Test
  void rowFeetOfAnAcre() {
    double metres =
        SeedSpacing.rowMetres(new Area(1, AreaUnit.ACRE), new Length(30, LengthUnit.INCH));
    assertThat(metres / 0.3048).isCloseTo(17_424, within(1e-6));
    assertThat(12 / spacingInches(30, 29_620.8)).isCloseTo(1.7, within(1e-9));
  }

  /** Soybean, seeds a foot and inches from seed to seed, by exact arithmetic. */
  @ParameterizedTest(name = "{0} in rows, {1} seeds/ac: {2} a foot, {3} in")
  @CsvSource({
    "30, 130000, 7.46, 1.61", "15, 130000, 3.73, 3.22",
    "30, 140000, 8.03, 1.49", "15, 140000, 4.02, 2.99"
  })
  void soybeanSeedSpacing(double rowInches, double seedsPerAcre, double aFoot, double inches) {
    assertThat(12 / spacingInches(rowInches, seedsPerAcre)).isCloseTo(aFoot, within(0.005));
    assertThat(spacingInches(rowInches, seedsPerAcre)).isCloseTo(inches, within(0.005));
  }

  /**
   * Exact arithmetic: 6,272,640 / (row width in in x seeds per acre), to a hundredth of an inch.
   */
  @ParameterizedTest(name = "{0} in rows")
  @CsvSource({
    "15, 17.42, 14.93, 13.94, 13.07, 12.30, 11.62, 10.45, 8.36, 6.97",
    "20, 13.07, 11.20, 10.45, 9.80, 9.22, 8.71, 7.84, 6.27, 5.23",
    "22, 11.88, 10.18, 9.50, 8.91, 8.39, 7.92, 7.13, 5.70, 4.75",
    "30, 8.71, 7.47, 6.97, 6.53, 6.15, 5.81, 5.23, 4.18, 3.48",
    "36, 7.26, 6.22, 5.81, 5.45, 5.12, 4.84, 4.36, 3.48, 2.90"
  })
  void spacingTable(ArgumentsAccessor row) {
    int[] thousands = {24, 28, 30, 32, 34, 36, 40, 50, 60};
    for (int i = 0; i < thousands.length; i++) {
      assertThat(spacingInches(row.getDouble(0), 1000.0 * thousands[i]))
          .isCloseTo(row.getDouble(i + 1), within(0.005));
    }
  }

  @Test
  void noSeedsLieInfinitelyFarApart() {
    assertThat(spacingInches(30, 0)).isInfinite();
  }

  private static double spacingInches(double rowInches, double seedsPerAcre) {
    double metres =
        SeedSpacing.seedMetres(
            new SeedingRate(seedsPerAcre, AreaUnit.ACRE), new Length(rowInches, LengthUnit.INCH));
    return metres / LengthUnit.INCH.metres();
  }
}
