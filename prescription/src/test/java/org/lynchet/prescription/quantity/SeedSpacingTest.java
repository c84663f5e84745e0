package org.lynchet.prescription.quantity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Holds row length and seed spacing against handbook tables. */
class SeedSpacingTest {

  /**
   * Row length of 1/1000 acre. 15, 20, 30, 36 and 38 in: University of Tennessee, "Checking corn
   * populations", 2011, printed to the inch; 22 in: exact arithmetic, 522.72 ft / row width in in.
   */
  @ParameterizedTest(name = "{0} in rows: {1} ft {2} in")
  @CsvSource({"15, 34, 10", "20, 26, 2", "22, 23, 9", "30, 17, 5", "36, 14, 6", "38, 13, 9"})
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

  /** Exact arithmetic: 6,272,640 / (row width in in x seeds per acre), to a hundredth. */
  @ParameterizedTest(name = "{0} in rows, {1} seeds/ac: {2} in")
  @CsvSource({
    "15, 24000, 17.42", "20, 34000, 9.22", "22, 24000, 11.88", "22, 36000, 7.92",
    "30, 36000, 5.81", "36, 28000, 6.22", "36, 60000, 2.90", "15, 140000, 2.99"
  })
  void computedSeedSpacing(double rowInches, double seedsPerAcre, double inches) {
    assertThat(spacingInches(rowInches, seedsPerAcre)).isCloseTo(inches, within(0.005));
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
