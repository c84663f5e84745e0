package org.lynchet.prescription.light;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.Instant;
import java.time.ZonedDateTime;
import net.e175.klaus.solarpositioning.SPA;
import net.e175.klaus.solarpositioning.SolarPosition;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class SunTest {
  private static final double AMES_LONGITUDE = -93.63;
  private static final double AMES_LATITUDE = 42.03;

  /**
   * Reda and Andreas (2004), NREL/TP-560-34302, table A5.1: with the height and air given there.
   */
  @Test
  void libraryGivesTheWorkedExample() {
    SolarPosition sun =
        SPA.calculateSolarPosition(
            ZonedDateTime.parse("2003-10-17T12:30:30-07:00"),
            39.742476,
            -105.1786,
            1830.14,
            67,
            820,
            11);
    assertThat(sun.zenithAngle()).isCloseTo(50.111622, within(1e-5));
    assertThat(sun.azimuth()).isCloseTo(194.340241, within(1e-5));
  }

  /** The same place and time: unrefracted elevation 39.872046 there; sea level moves it by 1e-4. */
  @Test
  void elevationIsWithoutRefraction() {
    Sun sun = Sun.at(-105.1786, 39.742476, Instant.parse("2003-10-17T19:30:30Z").getEpochSecond());
    assertThat(Math.toDegrees(sun.elevationRadians())).isCloseTo(39.872046, within(2e-3));
    assertThat(Math.toDegrees(sun.azimuthRadians())).isCloseTo(194.340241, within(2e-3));
  }

  /**
   * Ames, Iowa, in Central Standard Time, computed with pvlib's SPA: elevation, azimuth; profile
   * angle and shift of a shadow in an hour's sun for rows north-south and east-west. Tolerance: the
   * last digit printed, and 0.002 degrees for the height above the sea.
   */
  @ParameterizedTest
  @CsvSource({
    "2025-06-21T14:00:00Z, 34.331,  88.118, 34.35,  1.463, 87.25, -0.048",
    "2025-06-21T16:00:00Z, 56.160, 112.511, 58.23,  0.619, 75.60,  0.257",
    "2025-06-21T18:00:00Z, 71.094, 168.296, 86.03,  0.069, 71.46,  0.335",
    "2025-06-21T22:00:00Z, 40.430, 266.300, 40.49, -1.171, 85.67,  0.076",
    "2025-07-20T14:00:00Z, 31.753,  90.137, 31.75,  1.616, 89.78,  0.004",
    "2025-07-20T18:00:00Z, 68.027, 166.794, 84.73,  0.092, 68.55,  0.393",
    "2025-08-20T18:00:00Z, 59.896, 171.301, 84.99,  0.088, 60.18,  0.573",
    "2025-08-20T22:00:00Z, 33.456, 255.123, 34.36, -1.463, 68.77,  0.389",
    "2025-09-22T15:00:00Z, 30.616, 122.139, 34.95,  1.431, 48.05,  0.899",
    "2025-09-22T18:00:00Z, 47.943, 177.361, 87.62,  0.042, 47.97,  0.901",
  })
  void amesTable(
      Instant time,
      double elevation,
      double azimuth,
      double northSouthProfile,
      double northSouthShiftWest,
      double eastWestProfile,
      double eastWestShiftNorth) {
    Sun sun = Sun.at(AMES_LONGITUDE, AMES_LATITUDE, time.getEpochSecond());
    assertThat(Math.toDegrees(sun.elevationRadians())).isCloseTo(elevation, within(2.5e-3));
    assertThat(Math.toDegrees(sun.azimuthRadians())).isCloseTo(azimuth, within(2.5e-3));
    assertThat(Math.toDegrees(ProfileAngle.radians(sun, 0)))
        .isCloseTo(northSouthProfile, within(1e-2));
    // Heading north, right is east: the morning's shadow falls west, to the left.
    assertThat(ProfileAngle.shift(sun, 0)).isCloseTo(-northSouthShiftWest, within(1e-3));
    double east = Math.PI / 2;
    assertThat(Math.toDegrees(ProfileAngle.radians(sun, east)))
        .isCloseTo(eastWestProfile, within(1e-2));
    // Heading east, right is south: a shadow to the north falls left.
    assertThat(ProfileAngle.shift(sun, east)).isCloseTo(-eastWestShiftNorth, within(1e-3));
  }

  /** Geometry: rows east-west at equinox have a profile angle of 90 degrees less the latitude. */
  @ParameterizedTest
  @CsvSource({"13", "15", "18", "21", "23"})
  void equinoxProfileIsConstantForEastWestRows(int hourUtc) {
    Instant time = Instant.parse("2025-09-22T00:00:00Z").plusSeconds(3600L * hourUtc);
    Sun sun = Sun.at(AMES_LONGITUDE, AMES_LATITUDE, time.getEpochSecond());
    // 47.70 to 48.34 through the day by pvlib, as the declination moves on.
    assertThat(Math.toDegrees(ProfileAngle.radians(sun, Math.PI / 2))).isBetween(47.69, 48.35);
  }

  /** Anderson and Mikofski (2020), NREL/TP-5K00-76626: 90 degrees less the projected zenith. */
  @ParameterizedTest
  @CsvSource({"90, 0, 90", "45, 0, 90", "45, 90, 45", "45, 270, 45"})
  void projectedZenith(double elevation, double azimuth, double profile) {
    Sun sun = new Sun(Math.toRadians(elevation), Math.toRadians(azimuth));
    assertThat(Math.toDegrees(ProfileAngle.radians(sun, Math.PI))).isCloseTo(profile, within(1e-9));
  }

  /** sin(elevation) = sin(declination) / sin(latitude) where the sun is due east. */
  @Test
  void shadowOfEastWestRowsTurnsWhereTheSunIsDueEast() {
    double elevation = Math.asin(Math.sin(Math.toRadians(23.44)) / Math.sin(Math.toRadians(42)));
    assertThat(Math.toDegrees(elevation)).isCloseTo(36.476, within(5e-4));
    assertThat(ProfileAngle.shift(new Sun(elevation, Math.PI / 2), Math.PI / 2))
        .isCloseTo(0, within(1e-12));
  }
}
