package org.lynchet.prescription.light;

/**
 * Projects the sun's rays on the plane across the rows.
 *
 * <p>tan(profile angle) = tan(elevation) / |sin(azimuth - heading)| (vertical shadow angle, IES); a
 * shadow reaches |sin(azimuth - heading)| / tan(elevation) across for each metre of height.
 */
public final class ProfileAngle {
  private ProfileAngle() {}

  /**
   * How far a ray moves to the right, seen along the AB line, while it comes down by 1; below 0 to
   * the left.
   *
   * @param sun a sun above the horizon
   * @param headingRadians the AB line's, clockwise from true north
   */
  public static double shift(Sun sun, double headingRadians) {
    return -Math.sin(sun.azimuthRadians() - headingRadians) / Math.tan(sun.elevationRadians());
  }

  /** The sun's altitude in the plane across the rows, 0 to pi/2. */
  public static double radians(Sun sun, double headingRadians) {
    return Math.atan2(1, Math.abs(shift(sun, headingRadians)));
  }
}
