package org.lynchet.prescription.summary;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Objects;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.lynchet.prescription.plan.Product;
import org.lynchet.prescription.quantity.AreaUnit;
import org.lynchet.prescription.quantity.SeedingRate;

class SeedUnitsTest {
  private static final double ACRE = 4046.8564224;

  /**
   * Six-row strips, four inner rows at 34,000 and two border rows at 40,000, on 20 acres: 720,000
   * seeds are nine units of 80,000 exactly; by product they are six and four. Worked by exact
   * arithmetic; 80,000 kernels a unit from Iowa State Ag Decision Maker A1-20.
   */
  @ParameterizedTest
  @CsvSource({
    "20, 36000, 9",
    "13.333333333333334, 34000, 6",
    "6.666666666666667, 40000, 4",
  })
  void wholeUnits(double acres, double rate, long units) {
    double seeds = new SeedingRate(rate, AreaUnit.ACRE).perSquareMetre() * acres * ACRE;
    assertThat(SeedUnits.units(seeds, 0, 80_000)).isEqualTo(units);
  }

  @Test
  void aReserveIsOrderedOnTop() {
    assertThat(SeedUnits.units(720_000, 0.03, 80_000)).isEqualTo(10);
  }

  @Test
  void aSeedMoreIsAUnitMore() {
    assertThat(SeedUnits.units(720_001, 0, 80_000)).isEqualTo(10);
  }

  /**
   * Iowa State Ag Decision Maker A1-20: a unit of 80,000 at $280, 30,000 an acre, is $105.00 an
   * acre.
   */
  @Test
  void costOfCornSeed() {
    Integer perUnit = Objects.requireNonNull(SeedUnits.seedsPerUnit("corn", null));
    assertThat(perUnit).isEqualTo(80_000);
    assertThat(30_000 * 280.0 / perUnit).isCloseTo(105.00, within(0.005));
  }

  /** Iowa State researchers, trade press 2012: $50 a unit, 160,000 to 170,000 seeds: $57 to $61. */
  @Test
  void costOfSoybeanSeed() {
    Integer perUnit = Objects.requireNonNull(SeedUnits.seedsPerUnit("soybean", null));
    assertThat(perUnit).isEqualTo(140_000);
    assertThat(160_000 * 50.0 / perUnit).isCloseTo(57.14, within(0.005));
    assertThat(170_000 * 50.0 / perUnit).isCloseTo(60.71, within(0.005));
  }

  @Test
  void otherCropsHaveNoDefault() {
    assertThat(SeedUnits.seedsPerUnit("sorghum", null)).isNull();
    assertThat(SeedUnits.seedsPerUnit("sorghum", new Product("s1", "sorghum", 50_000, null, 0)))
        .isEqualTo(50_000);
  }
}
