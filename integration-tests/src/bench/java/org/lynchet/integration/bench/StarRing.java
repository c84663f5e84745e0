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
    double radius = zones / 3.0 * BenchField.STRIP_METRES / 2;
    double jagMetres = jag * 2 * Math.PI * radius / vertices;
    double metresPerLongitude = METRES_PER_DEGREE * Math.cos(Math.toRadians(LATITUDE));
    Coordinate[] ring = new Coordinate[vertices + 1];
    for (int i = 0; i < vertices; i++) {
      double angle = 2 * Math.PI * i / vertices;
      double r = radius - jagMetres * fraction(i);
      ring[i] =
          new Coordinate(
              nineDecimals(LONGITUDE + r * Math.cos(angle) / metresPerLongitude),
              nineDecimals(LATITUDE + r * Math.sin(angle) / METRES_PER_DEGREE));
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
