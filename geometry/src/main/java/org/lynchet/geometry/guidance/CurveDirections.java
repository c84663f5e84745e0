package org.lynchet.geometry.guidance;

import java.io.Serializable;
import java.util.List;
import org.locationtech.jts.geom.Coordinate;
import org.lynchet.geometry.frame.PlaneFrame;

/**
 * Which ways a curve runs.
 *
 * @param lengthMetres its length
 * @param leastRadians its leftmost direction, clockwise from the plane's north, counted on from the
 *     first segment's through every turn
 * @param greatestRadians its rightmost direction, counted in the same way
 * @param firstHeadingDegrees the direction of its first segment, clockwise from true north, [0,
 *     360)
 * @param lastHeadingDegrees the direction of its last segment
 */
public record CurveDirections(
    double lengthMetres,
    double leastRadians,
    double greatestRadians,
    double firstHeadingDegrees,
    double lastHeadingDegrees)
    implements Serializable {

  /**
   * Measures.
   *
   * @param lonLat at least two points, neighbours at different places
   */
  public static CurveDirections of(List<Coordinate> lonLat, PlaneFrame plane) {
    List<Coordinate> at = lonLat.stream().map(p -> plane.toPlane(p.x, p.y)).toList();
    double length = 0;
    double first = heading(at.get(0), at.get(1));
    double heading = first;
    double least = heading;
    double greatest = heading;
    for (int i = 1; i < at.size(); i++) {
      length += at.get(i - 1).distance(at.get(i));
      heading += Math.IEEEremainder(heading(at.get(i - 1), at.get(i)) - heading, 2 * Math.PI);
      least = Math.min(least, heading);
      greatest = Math.max(greatest, heading);
    }
    Coordinate a = lonLat.get(0);
    double trueNorth = plane.trueNorthRadians(a.x, a.y);
    return new CurveDirections(
        length, least, greatest, degrees(first - trueNorth), degrees(heading - trueNorth));
  }

  /** How far its leftmost and its rightmost direction are apart. */
  public double spanRadians() {
    return greatestRadians - leastRadians;
  }

  /** The direction in the middle of them. */
  double middleRadians() {
    return (leastRadians + greatestRadians) / 2;
  }

  private static double heading(Coordinate from, Coordinate to) {
    return Math.atan2(to.x - from.x, to.y - from.y);
  }

  private static double degrees(double radians) {
    double degrees = Math.toDegrees(radians) % 360;
    degrees = degrees < 0 ? degrees + 360 : degrees;
    return degrees < 360 ? degrees : 0;
  }
}
