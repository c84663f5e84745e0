package org.lynchet.geometry.frame;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.math.RoundingMode;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.locationtech.jts.geom.Coordinate;

/** Holds rounding against decimal arithmetic. */
class RoundedDegreesTest {
  @ParameterizedTest
  @ValueSource(doubles = {-94.1000000004, -94.10000000051, 43.55, 179.9999999999, 1e-10})
  void roundsAsDecimalsDo(double degrees) {
    double expected = new BigDecimal(degrees).setScale(9, RoundingMode.HALF_EVEN).doubleValue();
    assertThat(RoundedDegrees.of(degrees)).isEqualTo(expected);
  }

  @Test
  void neverNegativeZero() {
    Coordinate place = RoundedDegrees.of(new Coordinate(-1e-10, -0.0));
    assertThat(Double.toString(place.x)).isEqualTo("0.0");
    assertThat(Double.toString(place.y)).isEqualTo("0.0");
  }
}
