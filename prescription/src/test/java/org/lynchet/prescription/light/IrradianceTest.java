package org.lynchet.prescription.light;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class IrradianceTest {

  /** Haurwitz (1945, 1946), values as in pvlib's tests, W/m2. */
  @ParameterizedTest
  @CsvSource({
    "-5, 0",
    "0, 0",
    "5, 48.6299",
    "10, 135.7417",
    "30, 487.8941",
    "50, 778.7667",
    "90, 1035.0920"
  })
  void clearSky(double elevation, double energy) {
    assertThat(ClearSky.horizontal(Math.toRadians(elevation))).isCloseTo(energy, within(1e-4));
  }

  /** Erbs, Klein and Duffie (1982), equation 1, worked out. */
  @ParameterizedTest
  @CsvSource({
    "0.1, 0.991",
    "0.22, 0.9802",
    "0.3, 0.94860",
    "0.4, 0.83999",
    "0.5, 0.65915",
    "0.6, 0.43948",
    "0.7, 0.24398",
    "0.8, 0.16527",
    "0.9, 0.165"
  })
  void diffuseShare(double k, double share) {
    assertThat(Irradiance.diffuseShare(k)).isCloseTo(share, within(6e-6));
  }

  /** The cases of pvlib's tests of Erbs: global, zenith, day; diffuse and direct normal, W/m2. */
  @ParameterizedTest
  @CsvSource({
    "50, 85, 1, 41.57, 96.72",
    "1000, 10, 1, 217.86, 794.21",
    "1000, 10, 171, 170.79, 842.00"
  })
  void split(double global, double zenith, int day, double diffuse, double directNormal) {
    Irradiance light = Irradiance.split(day, Math.toRadians(90 - zenith), global);
    assertThat(light.diffuse()).isCloseTo(diffuse, within(0.05));
    assertThat(light.beam() / Math.cos(Math.toRadians(zenith)))
        .isCloseTo(directNormal, within(0.1));
  }

  @Test
  void splitAddsUpAndClearnessScales() {
    Irradiance light = Irradiance.of(200, 0.9, 0.7);
    assertThat(light.global()).isCloseTo(0.7 * ClearSky.horizontal(0.9), within(1e-9));
    assertThat(Irradiance.of(200, -0.1, 0.7)).isEqualTo(new Irradiance(0, 0));
    assertThat(Irradiance.of(200, 0.9, 0)).isEqualTo(new Irradiance(0, 0));
  }

  /** 1 / r2 of Spencer: 1.03505 on day 1 and 0.96744 on day 172 (Iqbal 1983). */
  @ParameterizedTest
  @CsvSource({"1, 1.03505", "172, 0.96744"})
  void distanceOfTheSun(int day, double factor) {
    assertThat(Irradiance.outside(day) / 1366.1).isCloseTo(factor, within(1e-4));
  }
}
