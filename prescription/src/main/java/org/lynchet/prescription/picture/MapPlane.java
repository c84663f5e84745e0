package org.lynchet.prescription.picture;

import java.util.ArrayList;
import java.util.List;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.LineString;
import org.locationtech.jts.geom.Polygon;
import org.lynchet.geometry.guidance.OffsetFrame;

/**
 * Converts longitude and latitude, and the frame of the AB line, to the page: north up, at one
 * scale.
 */
final class MapPlane {
  private final OffsetFrame frame;
  private final double sin;
  private final double cos;
  private final double pointsPerMetre;
  private final double originX;
  private final double originY;

  private MapPlane(OffsetFrame frame, double pointsPerMetre, double originX, double originY) {
    this.frame = frame;
    this.sin = Math.sin(Math.toRadians(frame.headingDegrees()));
    this.cos = Math.cos(Math.toRadians(frame.headingDegrees()));
    this.pointsPerMetre = pointsPerMetre;
    this.originX = originX;
    this.originY = originY;
  }

  /** The plane in which places, given in the frame of the AB line, just fit into a box. */
  static MapPlane fitting(List<Coordinate> offsets, OffsetFrame frame, Box box) {
    MapPlane metres = new MapPlane(frame, 1, 0, 0);
    double left = Double.POSITIVE_INFINITY;
    double top = Double.POSITIVE_INFINITY;
    double right = Double.NEGATIVE_INFINITY;
    double bottom = Double.NEGATIVE_INFINITY;
    for (Coordinate offset : offsets) {
      Coordinate at = metres.fromOffset(offset.x, offset.y);
      left = Math.min(left, at.x);
      right = Math.max(right, at.x);
      top = Math.min(top, at.y);
      bottom = Math.max(bottom, at.y);
    }
    double scale = Math.min(box.width() / (right - left), box.height() / (bottom - top));
    return new MapPlane(
        frame,
        scale,
        box.centreX() - scale * (left + right) / 2,
        box.centreY() - scale * (top + bottom) / 2);
  }

  double pointsPerMetre() {
    return pointsPerMetre;
  }

  Coordinate fromLonLat(Coordinate lonLat) {
    Coordinate offset = frame.toOffset(lonLat.x, lonLat.y);
    return fromOffset(offset.x, offset.y);
  }

  /** Converts an offset and metres along the AB line. */
  Coordinate fromOffset(double offset, double along) {
    double east = offset * cos + along * sin;
    double north = along * cos - offset * sin;
    return new Coordinate(originX + pointsPerMetre * east, originY - pointsPerMetre * north);
  }

  /** How far a box reaches from its centre across the AB line, in metres. */
  double reachAcross(double width, double height) {
    return (Math.abs(cos) * width + Math.abs(sin) * height) / 2 / pointsPerMetre;
  }

  /** How far a box reaches from its centre along the AB line, in metres. */
  double reachAlong(double width, double height) {
    return (Math.abs(sin) * width + Math.abs(cos) * height) / 2 / pointsPerMetre;
  }

  /** Adds the rings of polygons, or lines, in longitude and latitude to an outline. */
  void add(Geometry lonLat, Outline to) {
    for (int i = 0; i < lonLat.getNumGeometries(); i++) {
      if (lonLat.getGeometryN(i) instanceof Polygon polygon) {
        to.add(ring(polygon.getExteriorRing()));
        for (int hole = 0; hole < polygon.getNumInteriorRing(); hole++) {
          to.add(ring(polygon.getInteriorRingN(hole)));
        }
      } else if (lonLat.getGeometryN(i) instanceof LineString line) {
        to.add(points(line, line.getNumPoints()));
      }
    }
  }

  private List<Coordinate> ring(LineString ring) {
    return points(ring, ring.getNumPoints() - 1);
  }

  private List<Coordinate> points(LineString line, int count) {
    List<Coordinate> points = new ArrayList<>(count);
    for (int i = 0; i < count; i++) {
      points.add(fromLonLat(line.getCoordinateN(i)));
    }
    return points;
  }
}
