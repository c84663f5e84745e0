package org.lynchet.prescription.quantity;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** 1 acre = 4046.8564224 m2 and 1 ft = 0.3048 m: NIST Handbook 44, Appendix C. */
class ShownUnitsTest {
  @ParameterizedTest
  @CsvSource({
    "ACRE, 4046.8564224, 1.00 ac",
    "ACRE, 405, 0.10 ac",
    "ACRE, 4, 0.0010 ac",
    "HECTARE, 406.4, 406 m2",
    "HECTARE, 0.345, 0.35 m2",
    "SQUARE_METRE, 12340, 1.23 ha",
  })
  void areasAreShownInTheUnitsOfRates(AreaUnit per, double squareMetres, String shown) {
    assertThat(ShownUnits.beside(per).area(squareMetres)).isEqualTo(shown);
  }

  @ParameterizedTest
  @CsvSource({"ACRE, 9.144, 30.00 ft", "HECTARE, 9.144, 9.14 m"})
  void lengthsGoWithThem(AreaUnit per, double metres, String shown) {
    assertThat(ShownUnits.beside(per).length(metres)).isEqualTo(shown);
  }

  /** As written where that is in the plan's units, else turned: 1 ft = 12 in = 0.3048 m. */
  @ParameterizedTest
  @CsvSource({
    "ACRE, 2, INCH, 2 in",
    "ACRE, 20, FOOT, 20 ft",
    "ACRE, 170, CENTIMETRE, 5.58 ft",
    "ACRE, 2.18, METRE, 7.15 ft",
    "ACRE, 5, CENTIMETRE, 2 in",
    "HECTARE, 2, INCH, 50.8 mm",
    "HECTARE, 30, INCH, 76.2 cm",
    "HECTARE, 120, FOOT, 36.58 m",
    "HECTARE, 170, CENTIMETRE, 170 cm",
    "HECTARE, 12.345, METRE, 12.35 m",
  })
  void aLengthIsTurnedIntoThePlansUnits(
      AreaUnit per, double amount, LengthUnit unit, String shown) {
    assertThat(ShownUnits.beside(per).written(new Length(amount, unit))).isEqualTo(shown);
  }

  /** 1 mile = 1.609344 km. */
  @ParameterizedTest
  @CsvSource({
    "ACRE, 6.5, MILE_PER_HOUR, 6.5 mph",
    "ACRE, 8, KILOMETRE_PER_HOUR, 5 mph",
    "HECTARE, 6.5, MILE_PER_HOUR, 10.5 km/h",
    "HECTARE, 8.25, KILOMETRE_PER_HOUR, 8.25 km/h",
  })
  void aSpeedIsTurnedIntoThePlansUnits(AreaUnit per, double amount, SpeedUnit unit, String shown) {
    assertThat(ShownUnits.beside(per).written(new Speed(amount, unit))).isEqualTo(shown);
  }

  @ParameterizedTest
  @CsvSource({
    "0, row, 0 rows",
    "1, row, 1 row",
    "2, row, 2 rows",
    "1, pass, 1 pass",
    "2, pass, 2 passes"
  })
  void oneIsNotMany(long number, String word, String shown) {
    assertThat(Count.of(number, word)).isEqualTo(shown);
  }
}
