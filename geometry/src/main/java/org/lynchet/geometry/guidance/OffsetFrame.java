package org.lynchet.geometry.guidance;

import java.io.Serializable;
import org.locationtech.jts.geom.Coordinate;
import org.lynchet.geometry.frame.PlaneFrame;

/**
 * Converts between longitude and latitude and the frame of an AB line: x is the offset, metres
 * right of the line; y is metres along it from A.
 *
 * <p>It is the plane, shifted and turned, so lengths and areas are those of the plane.
 */
public final class OffsetFrame implements Serializable {
  private static final long serialVersionUID = 1L;

  /** Mean radius of the earth in metres, IUGG; only for the bow of long lines. */
  private static final double EARTH_RADIUS = 6_371_008.8;

  private final PlaneFrame plane;
  private final double originEast;
  private final double originNorth;
  private final double planeHeadingRadians;
  private final double sin;
  private final double cos;
  private final double headingDegrees;

  private OffsetFrame(
      PlaneFrame plane, Coordinate a, double planeHeadingRadians, double trueNorthRadians) {
    this.plane = plane;
    this.originEast = a.x;
    this.originNorth = a.y;
    this.planeHeadingRadians = planeHeadingRadians;
    this.sin = StrictMath.sin(planeHeadingRadians);
    this.cos = StrictMath.cos(planeHeadingRadians);
    double heading = Math.toDegrees(planeHeadingRadians - trueNorthRadians) % 360;
    heading = heading < 0 ? heading + 360 : heading;
    // The least negative headings come to 360 itself.
    this.headingDegrees = heading < 360 ? heading : 0;
  }

  /**
   * The frame of the line through two points, longitude (x) and latitude (y) in degrees.
   *
   * @throws IllegalArgumentException if the points are the same
   */
  public static OffsetFrame throughPoints(PlaneFrame plane, Coordinate a, Coordinate b) {
    Coordinate from = plane.toPlane(a.x, a.y);
    Coordinate to = plane.toPlane(b.x, b.y);
    if (from.equals2D(to)) {
      throw new IllegalArgumentException("A equals B");
    }
    double heading = StrictMath.atan2(to.x - from.x, to.y - from.y);
    return new OffsetFrame(plane, from, heading, plane.trueNorthRadians(a.x, a.y));
  }

  /**
   * The frame of the line through a point, longitude (x) and latitude (y) in degrees, on a heading
   * in degrees clockwise from true north there.
   */
  public static OffsetFrame onHeading(PlaneFrame plane, Coordinate a, double headingDegrees) {
    double trueNorth = plane.trueNorthRadians(a.x, a.y);
    return new OffsetFrame(
        plane, plane.toPlane(a.x, a.y), trueNorth + Math.toRadians(headingDegrees), trueNorth);
  }

  /**
   * The frame of a parallel line.
   *
   * @param metres how far it lies to the right; negative to the left
   */
  public OffsetFrame movedRight(double metres) {
    Coordinate a = new Coordinate(originEast + metres * cos, originNorth - metres * sin);
    Coordinate lonLat = plane.toLonLat(a.x, a.y);
    return new OffsetFrame(
        plane, a, planeHeadingRadians, plane.trueNorthRadians(lonLat.x, lonLat.y));
  }

  /**
   * The frame of the line turned about A.
   *
   * @param radians clockwise
   */
  public OffsetFrame turned(double radians) {
    Coordinate a = new Coordinate(originEast, originNorth);
    Coordinate lonLat = plane.toLonLat(a.x, a.y);
    return new OffsetFrame(
        plane, a, planeHeadingRadians + radians, plane.trueNorthRadians(lonLat.x, lonLat.y));
  }

  /** Converts degrees of longitude and latitude to offset (x) and metres along the line (y). */
  public Coordinate toOffset(double longitudeDegrees, double latitudeDegrees) {
    Coordinate at = plane.toPlane(longitudeDegrees, latitudeDegrees);
    double east = at.x - originEast;
    double north = at.y - originNorth;
    at.x = east * cos - north * sin;
    at.y = east * sin + north * cos;
    return at;
  }

  /** Converts an offset and metres along the line to degrees of longitude (x) and latitude (y). */
  public Coordinate toLonLat(double offsetMetres, double alongMetres) {
    return plane.toLonLat(
        originEast + offsetMetres * cos + alongMetres * sin,
        originNorth - offsetMetres * sin + alongMetres * cos);
  }

  /** The line's heading, degrees clockwise from true north at A, [0, 360). */
  public double headingDegrees() {
    return headingDegrees;
  }

  /**
   * The longest line along the AB line that bows from the straight line by at most a given distance
   * when it is drawn straight in longitude and latitude, as many readers of the files do.
   *
   * <p>A line of length L on heading h bows by L^2 tan(latitude) |sin h| (1 + cos^2 h) / (8 R),
   * from the second derivatives of longitude and latitude along a straight line of the plane. At 43
   * degrees an east-west line of 800 m bows by 12 mm, one of a mile by 47 mm; north-south lines do
   * not bow.
   *
   * @param bowMetres above 0
   * @return metres; infinite if no line bows
   */
  public double longestWithinBowMetres(double bowMetres) {
    double curvature =
        Math.abs(Math.tan(Math.toRadians(plane.centreLatitudeDegrees())) * sin) * (1 + cos * cos);
    return Math.sqrt(8 * EARTH_RADIUS * bowMetres / curvature);
  }

  /**
   * The same for a line on any heading, so at least as short: |sin h| (1 + cos^2 h) is at most 4/9
   * sqrt(6), at cos^2 h = 1/3.
   *
   * @param bowMetres above 0
   */
  double longestWithinBowAnyWayMetres(double bowMetres) {
    double curvature =
        Math.abs(Math.tan(Math.toRadians(plane.centreLatitudeDegrees()))) * 4 / 9 * Math.sqrt(6);
    return Math.sqrt(8 * EARTH_RADIUS * bowMetres / curvature);
  }
}
