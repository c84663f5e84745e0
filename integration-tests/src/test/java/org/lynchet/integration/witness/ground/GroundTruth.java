package org.lynchet.integration.witness.ground;

import net.sf.geographiclib.Geodesic;
import net.sf.geographiclib.GeodesicData;
import net.sf.geographiclib.PolygonArea;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.LinearRing;
import org.locationtech.jts.geom.Polygon;

/** Measures distances and areas on the ellipsoid. */
public final class GroundTruth {
  private static final Geodesic WGS_84 = Geodesic.WGS84;

  private GroundTruth() {}

  /** The length of the geodesic between two points. */
  public static double distanceMetres(Coordinate from, Coordinate to) {
    return WGS_84.Inverse(from.y, from.x, to.y, to.x).s12;
  }

  /** The direction of the geodesic at its beginning, degrees clockwise from north. */
  public static double azimuthDegrees(Coordinate from, Coordinate to) {
    return WGS_84.Inverse(from.y, from.x, to.y, to.x).azi1;
  }

  /** The point that lies so far in that direction. */
  public static Coordinate point(Coordinate from, double azimuthDegrees, double metres) {
    GeodesicData end = WGS_84.Direct(from.y, from.x, azimuthDegrees, metres);
    return new Coordinate(end.lon2, end.lat2);
  }

  /** The area of polygons whose edges are geodesics; holes count off, direction does not matter. */
  public static double areaSquareMetres(Geometry polygonal) {
    double sum = 0;
    for (int i = 0; i < polygonal.getNumGeometries(); i++) {
      Polygon polygon = (Polygon) polygonal.getGeometryN(i);
      sum += ringArea(polygon.getExteriorRing());
      for (int hole = 0; hole < polygon.getNumInteriorRing(); hole++) {
        sum -= ringArea(polygon.getInteriorRingN(hole));
      }
    }
    return sum;
  }

  /**
   * How far beside the geodesic the middle of an edge lies when the edge is read as straight in
   * longitude and latitude.
   *
   * <p>For an edge of length L that runs east about L^2 tan(latitude) / 8R: at 42 degrees 0.04 mm
   * on 50 m, 1.1 cm on 800 m, 0.44 m on 5 km. For one that runs north, nothing.
   */
  public static double midEdgeBowMetres(Coordinate from, Coordinate to) {
    Coordinate middle = new Coordinate((from.x + to.x) / 2, (from.y + to.y) / 2);
    return Math.abs(GroundLine.through(from, to).offsetMetres(middle));
  }

  private static double ringArea(LinearRing ring) {
    PolygonArea area = new PolygonArea(WGS_84, false);
    for (int i = 0; i < ring.getNumPoints() - 1; i++) {
      area.AddPoint(ring.getCoordinateN(i).y, ring.getCoordinateN(i).x);
    }
    return Math.abs(area.Compute(false, true).area);
  }
}
