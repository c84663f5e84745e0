package org.lynchet.geometry.frame;

import org.locationtech.jts.geom.Coordinate;

/** Rounds degrees to the 9 decimals, 0.1 mm, with which places go out. */
public final class RoundedDegrees {
  /** Steps in a degree. */
  public static final double PER_DEGREE = 1e9;

  private RoundedDegrees() {}

  /** An angle in degrees, rounded; never negative zero, which would be written with a sign. */
  public static double of(double degrees) {
    return Math.rint(degrees * PER_DEGREE) / PER_DEGREE + 0.0;
  }

  /** A place, longitude (x) and latitude (y), both rounded. */
  public static Coordinate of(Coordinate lonLat) {
    return new Coordinate(of(lonLat.x), of(lonLat.y));
  }
}
