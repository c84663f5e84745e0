package org.lynchet.prescription.light;

import java.io.Serializable;
import java.time.Instant;
import java.time.ZoneOffset;
import net.e175.klaus.solarpositioning.SPA;
import net.e175.klaus.solarpositioning.SolarPosition;

/**
 * Tells where the sun stands, without refraction: Reda and Andreas (2004), NREL/TP-560-34302.
 *
 * @param elevationRadians angle above the horizon, -pi/2 to pi/2
 * @param azimuthRadians clockwise from true north, 0 to 2 pi
 */
public record Sun(double elevationRadians, double azimuthRadians) implements Serializable {
  /** Difference of terrestrial and universal time; 10 s move the sun by 0.0004 degrees. */
  private static final double DELTA_T_SECONDS = 69;

  /** The sun at a place, at sea level, longitude east and latitude north positive. */
  public static Sun at(double longitudeDegrees, double latitudeDegrees, long epochSecond) {
    SolarPosition position =
        SPA.calculateSolarPosition(
            Instant.ofEpochSecond(epochSecond).atZone(ZoneOffset.UTC),
            latitudeDegrees,
            longitudeDegrees,
            0,
            DELTA_T_SECONDS);
    return new Sun(Math.toRadians(90 - position.zenithAngle()), Math.toRadians(position.azimuth()));
  }
}
