package org.lynchet.integration.witness.ground;

import net.sf.geographiclib.Geodesic;
import net.sf.geographiclib.GeodesicData;
import org.locationtech.jts.geom.Coordinate;

/**
 * Measures how far points lie beside a line on the ground, positive to the right.
 *
 * <p>The line is the geodesic through a point in a direction. The foot of a point is found by
 * iteration: from a guess F on the line, the geodesic to the point has length s and turns by the
 * angle t from the line; F moves along by s cos t until that is nothing, and the offset is s sin t.
 * On fields each step leaves about (s/R)^2 of the error, so three steps reach nanometres; the same
 * iteration is S. Baselga and J. C. Martinez-Llario, Intersection and point-to-line solutions for
 * geodesics on the ellipsoid, Stud. Geophys. Geod. 62 (2018), with the first-order step (reference
 * from memory).
 */
public final class GroundLine {
  /** Above the 15 nm to which geodesics are solved (Karney 2013, section 9). */
  private static final double NOTHING_METRES = 1e-7;

  private static final int MOST_STEPS = 50;

  private final Coordinate origin;
  private final double azimuthDegrees;

  private GroundLine(Coordinate origin, double azimuthDegrees) {
    this.origin = origin;
    this.azimuthDegrees = azimuthDegrees;
  }

  /** The line through a point, in degrees clockwise from north at that point. */
  public static GroundLine of(Coordinate a, double azimuthDegrees) {
    return new GroundLine(a, azimuthDegrees);
  }

  /** The line from A to B. */
  public static GroundLine through(Coordinate a, Coordinate b) {
    return new GroundLine(a, GroundTruth.azimuthDegrees(a, b));
  }

  /** The signed distance of a point, metres, positive to the right of the line's direction. */
  public double offsetMetres(Coordinate point) {
    return foot(point).offset();
  }

  /** How far along the line, from its first point, the foot of a point lies, in metres. */
  public double alongMetres(Coordinate point) {
    return foot(point).along();
  }

  private Foot foot(Coordinate point) {
    double along = 0;
    for (int step = 0; step < MOST_STEPS; step++) {
      GeodesicData on = Geodesic.WGS84.Direct(origin.y, origin.x, azimuthDegrees, along);
      GeodesicData to = Geodesic.WGS84.Inverse(on.lat2, on.lon2, point.y, point.x);
      double turn = Math.toRadians(to.azi1 - on.azi2);
      double move = to.s12 * Math.cos(turn);
      if (Math.abs(move) < NOTHING_METRES) {
        return new Foot(along, to.s12 * Math.sin(turn));
      }
      along += move;
    }
    throw new IllegalStateException("no foot of " + point + " within " + MOST_STEPS + " steps");
  }

  private record Foot(double along, double offset) {}
}
