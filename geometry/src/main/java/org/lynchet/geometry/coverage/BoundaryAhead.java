package org.lynchet.geometry.coverage;

import java.util.ArrayList;
import java.util.List;
import org.locationtech.jts.algorithm.locate.IndexedPointInAreaLocator;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.LineSegment;
import org.locationtech.jts.geom.LineString;
import org.locationtech.jts.geom.Location;
import org.locationtech.jts.geom.util.LinearComponentExtracter;

/** Measures how far it is from a place in an area to its boundary, in a direction. */
final class BoundaryAhead {
  private final IndexedPointInAreaLocator locator;
  private final List<LineSegment> edges = new ArrayList<>();

  BoundaryAhead(Geometry area) {
    locator = new IndexedPointInAreaLocator(area);
    for (Object ring : LinearComponentExtracter.getLines(area)) {
      Coordinate[] line = ((LineString) ring).getCoordinates();
      for (int i = 1; i < line.length; i++) {
        edges.add(new LineSegment(line[i - 1], line[i]));
      }
    }
  }

  /**
   * Measures.
   *
   * @param direction a unit vector
   * @param limit how far to look, in metres
   * @return 0 if the place is outside, infinite if the boundary is beyond the limit
   */
  double distance(Coordinate from, Coordinate direction, double limit) {
    if (locator.locate(from) != Location.INTERIOR) {
      return 0;
    }
    Coordinate to = new Coordinate(from.x + limit * direction.x, from.y + limit * direction.y);
    LineSegment ray = new LineSegment(from, to);
    return edges.stream()
        .map(edge -> edge.intersection(ray))
        .filter(at -> at != null)
        .mapToDouble(from::distance)
        .min()
        .orElse(Double.POSITIVE_INFINITY);
  }
}
