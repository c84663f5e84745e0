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
}
