package org.lynchet.prescription.quantity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.math.BigDecimal;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Holds units against NIST Handbook 44, appendix C, and NIST SP 811, appendix B (from memory): the
 * inch is 0.0254 m, the international foot 0.3048 m, the acre 43,560 square feet, all exactly.
 */
class LengthTest {

  @ParameterizedTest(name = "{0} {1} = {2} m")
  @CsvSource({
    "30,  INCH,       0.762",
    "15,  INCH,       0.381",
    "36,  INCH,       0.9144",
    "90,  FOOT,       27.432", // a product of doubles gives 27.432000000000002
    "30,  FOOT,       9.144",
    "37.5,CENTIMETRE, 0.375",
    "762, MILLIMETRE, 0.762",
    "1,   METRE,      1"
  })
  void isExactInMetres(double amount, LengthUnit unit, double metres) {
    assertThat(new Length(amount, unit).metres()).isEqualTo(metres);
  }

  @Test
  void isTheNearestDoubleForEveryWholeNumberOfInches() {
    for (int inches = 1; inches <= 8000; inches++) {
      double nearest = BigDecimal.valueOf(inches).multiply(new BigDecimal("0.0254")).doubleValue();
      assertThat(new Length(inches, LengthUnit.INCH).metres()).isEqualTo(nearest);
    }
  }

  @Test
  void anAcreIs43560SquareFeet() {
    BigDecimal foot = new BigDecimal("0.3048");
    assertThat(new Area(1, AreaUnit.ACRE).squareMetres())
        .isEqualTo(foot.multiply(foot).multiply(new BigDecimal(43_560)).doubleValue())
        .isEqualTo(4046.8564224);
    assertThat(new Area(2.5, AreaUnit.HECTARE).squareMetres()).isEqualTo(25_000);
  }

  @Test
  void aRateKeepsItsAmountInItsOwnUnitAndComesBackFromAnother() {
    SeedingRate perAcre = new SeedingRate(34_000, AreaUnit.ACRE);
    assertThat(perAcre.in(AreaUnit.ACRE)).isSameAs(perAcre);
    // 1 ha is 2.4710538... acres (from memory), so 34,000 seeds/ac are about 84,016 seeds/ha.
    assertThat(perAcre.in(AreaUnit.HECTARE).seeds()).isBetween(84_015.0, 84_017.0);
    assertThat(perAcre.in(AreaUnit.HECTARE).in(AreaUnit.ACRE).seeds())
        .isCloseTo(34_000, within(1e-9));
  }
}
