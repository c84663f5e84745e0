package org.lynchet.prescription.driving;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.lynchet.prescription.quantity.AreaUnit;
import org.lynchet.prescription.quantity.Speed;
import org.lynchet.prescription.quantity.SpeedUnit;

class FieldCapacityTest {
  private static final double FOOT = 0.3048;

  private static double acresPerHour(double feet, double mph, double efficiency) {
    Speed speed = new Speed(mph, SpeedUnit.MILE_PER_HOUR);
    return FieldCapacity.squareMetresPerHour(speed, feet * FOOT, efficiency)
        / AreaUnit.ACRE.squareMetres();
  }

  /**
   * Published values, with one decimal: rows 1 to 6 Iowa State University, Ag Decision Maker A3-24;
   * the 12-row planter from an extension engineering article, Progressive Forage, Farm field
   * equipment efficiency versus capacity.
   */
  @ParameterizedTest
  @CsvSource({
    "fertilizer spreader, 40, 6, 70, 20.4",
    "fertilizer spreader, 60, 6, 68, 29.7",
    "fertilizer spreader, 60, 12, 68, 59.3",
    "fertilizer spreader, 80, 12, 68, 79.1",
    "manure spreader, 15, 5, 63, 5.7",
    "manure spreader, 30, 6, 60, 13.1",
    "12-row planter, 30, 5, 100, 18.2",
    "12-row planter, 30, 5, 80, 14.5",
    "12-row planter, 30, 5, 60, 10.9"
  })
  void publishedValues(String machine, double feet, double mph, double percent, double acres) {
    assertThat(acresPerHour(feet, mph, percent / 100))
        .describedAs(machine)
        .isCloseTo(acres, within(0.0501)); // half of the last decimal
  }

  /** Feet times miles an hour by 8.25: U. Kentucky AEN-73, 1991. It is exact: 43560 / 5280. */
  @ParameterizedTest
  @CsvSource({"30, 5, 0.65", "40, 4.5, 0.7", "15, 7, 1"})
  void isTheFormulaOfTheBulletin(double feet, double mph, double efficiency) {
    assertThat(acresPerHour(feet, mph, efficiency))
        .isCloseTo(feet * mph * efficiency / 8.25, within(1e-9));
  }

  /** 88 ft in 12 s are 5 mph: U. Kentucky AEN-73, 1991. */
  @Test
  void timeOfAWay() {
    assertThat(FieldCapacity.hours(88 * FOOT, new Speed(5, SpeedUnit.MILE_PER_HOUR)) * 3600)
        .isCloseTo(12, within(1e-9));
  }

  @Test
  void noTimeHasNoShare() {
    assertThat(FieldCapacity.shareInRow(0, 0)).isZero();
    assertThat(FieldCapacity.shareInRow(3, 1)).isEqualTo(0.75);
  }
}
