package org.lynchet.integration.bench;

import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.Polygon;

/** Makes jagged boundaries of any number of vertices: seen from the centre, a star. */
final class StarRing {
  private static final double LONGITUDE = -94.1;
  private static final double LATITUDE = 43.5;
  private static final double METRES_PER_DEGREE = 111_195;

  private StarRing() {}

  /**
   * A boundary that has about so many zones in strips of three zones.
   *
   * @param jag how far a vertex may lie inside the circle, in distances of neighbouring vertices
   * @return longitude (x) and latitude (y) with 9 decimals
   */
  static Polygon ofZones(int vertices, int zones, double jag) {
    double radius = halfWidth(zones);
    return ellipse(vertices, radius, radius, jag);
  }

  /**
   * A boundary that has about so many zones in strips of three zones, and so long that the lines
   * between zones are of a given length together.
   *
   * @param jag as in {@link #ofZones}, of a circle
   */
  static Polygon ofCutLength(int vertices, int zones, double jag, double cutMetres) {
    // The mean chord of an ellipse is pi / 4 of its axis.
    double halfLength = cutMetres / zones * 4 / Math.PI / 2;
    return ellipse(vertices, halfWidth(zones), halfLength, jag);
  }

  private static double halfWidth(int zones) {
    return zones / 3.0 * BenchField.STRIP_METRES / 2;
  }

  private static Polygon ellipse(int vertices, double halfWidth, double halfLength, double jag) {
    double metresPerLongitude = METRES_PER_DEGREE * Math.cos(Math.toRadians(LATITUDE));
    double sin = Math.sin(Math.toRadians(BenchField.HEADING_DEGREES));
    double cos = Math.cos(Math.toRadians(BenchField.HEADING_DEGREES));
    Coordinate[] ring = new Coordinate[vertices + 1];
    for (int i = 0; i < vertices; i++) {
      double angle = 2 * Math.PI * i / vertices;
      double r = 1 - jag * 2 * Math.PI / vertices * fraction(i);
      double across = halfWidth * r * Math.cos(angle);
      double along = halfLength * r * Math.sin(angle);
      ring[i] =
          new Coordinate(
              nineDecimals(LONGITUDE + (across * cos + along * sin) / metresPerLongitude),
              nineDecimals(LATITUDE + (along * cos - across * sin) / METRES_PER_DEGREE));
    }
    ring[vertices] = ring[0];
    Polygon polygon = new GeometryFactory().createPolygon(ring);
    if (!polygon.isValid()) {
      throw new IllegalStateException("not valid with " + vertices + " vertices");
    }
    return polygon;
  }

  /** A number in [0, 1) that looks like chance and is the same each time. */
  private static double fraction(int i) {
    double x = Math.sin(i * 12.9898) * 43758.5453;
    return x - Math.floor(x);
  }

  private static double nineDecimals(double degrees) {
    return Math.rint(degrees * 1e9) / 1e9;
  }
}
