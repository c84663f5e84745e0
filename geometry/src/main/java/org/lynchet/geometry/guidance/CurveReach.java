package org.lynchet.geometry.guidance;

import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryComponentFilter;
import org.locationtech.jts.geom.LineString;
import org.locationtech.jts.operation.distance.IndexedFacetDistance;

/**
 * Finds the least and the greatest offset that an area reaches.
 *
 * <p>Both are reached on its boundary. Along an edge the distance from the curve can be greatest
 * between the ends. But the distance from one segment of the curve is a convex function of place,
 * so it is nowhere on the edge greater than at one of its ends; and the distance from the curve is
 * at most that from any segment. An edge is halved until this bound tells no more than its ends do.
 */
final class CurveReach {
  /** How far from the true extremes, in metres. */
  private static final double EXACT = 1e-9;

  private static final int MOST_HALVINGS = 48;

  private final Curve curve;
  private final Course course;
  private double least = Double.POSITIVE_INFINITY;
  private double greatest = Double.NEGATIVE_INFINITY;

  private CurveReach(Curve curve) {
    this.curve = curve;
    this.course = curve.course();
  }

  static Reach of(Curve curve, Geometry area) {
    CurveReach reach = new CurveReach(curve);
    area.apply((GeometryComponentFilter) reach::addRing);
    if (reach.least > 0) {
      reach.least = IndexedFacetDistance.distance(area, curve.inFrame());
    } else if (reach.greatest < 0) {
      reach.greatest = -IndexedFacetDistance.distance(area, curve.inFrame());
    }
    return new Reach(reach.least, reach.greatest);
  }

  private void addRing(Geometry component) {
    if (component instanceof LineString ring) {
      Coordinate[] at = ring.getCoordinates();
      for (int i = 0; i < at.length; i++) {
        take(at[i].x, at[i].y);
      }
      for (int i = 1; i < at.length; i++) {
        halve(at[i - 1], at[i], MOST_HALVINGS);
      }
    }
  }

  private void take(double x, double y) {
    double offset = curve.offsetMetres(x, y);
    least = Math.min(least, offset);
    greatest = Math.max(greatest, offset);
  }

  private void halve(Coordinate a, Coordinate b, int left) {
    boolean aIsRight = course.isRight(a.x, a.y);
    boolean bIsRight = course.isRight(b.x, b.y);
    double bound =
        Math.min(bound(course.nearest(a.x, a.y), a, b), bound(course.nearest(b.x, b.y), a, b));
    boolean more =
        ((aIsRight || bIsRight) && bound > greatest + EXACT)
            || (!(aIsRight && bIsRight) && bound > -least + EXACT);
    if (more && left > 0) {
      Coordinate middle = new Coordinate((a.x + b.x) / 2, (a.y + b.y) / 2);
      take(middle.x, middle.y);
      halve(a, middle, left - 1);
      halve(middle, b, left - 1);
    }
  }

  private double bound(int segment, Coordinate a, Coordinate b) {
    return Math.max(course.distanceTo(segment, a.x, a.y), course.distanceTo(segment, b.x, b.y));
  }
}
