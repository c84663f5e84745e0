package org.lynchet.prescription.light;

/** Names directions by the eight points of the compass. */
public final class Compass {
  private static final String[] POINTS = {
    "north", "northeast", "east", "southeast", "south", "southwest", "west", "northwest"
  };

  private static final double POINT_DEGREES = 45;

  private Compass() {}

  /** The point nearest to a direction in degrees clockwise from true north. */
  public static String point(double degrees) {
    return POINTS[Math.floorMod(Math.round(degrees / POINT_DEGREES), POINTS.length)];
  }
}
