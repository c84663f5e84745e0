package org.lynchet.geometry.coverage;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.locationtech.jts.algorithm.Length;
import org.locationtech.jts.algorithm.locate.IndexedPointInAreaLocator;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryComponentFilter;
import org.locationtech.jts.geom.LineSegment;
import org.locationtech.jts.geom.LineString;
import org.locationtech.jts.geom.Location;
import org.locationtech.jts.geom.impl.CoordinateArraySequence;
import org.locationtech.jts.index.hprtree.HPRtree;
import org.locationtech.jts.linearref.LengthIndexedLine;
import org.lynchet.geometry.guidance.LinePoint;

/**
 * Measures how much of a line lies inside an area: the line is divided where it meets the boundary,
 * and the middle of each stretch tells whether that is inside.
 */
final class LengthInside {
  private final Envelope envelope;
  private final HPRtree edges = new HPRtree();
  private final IndexedPointInAreaLocator locator;

  LengthInside(Geometry area) {
    envelope = area.getEnvelopeInternal();
    locator = new IndexedPointInAreaLocator(area);
    area.apply((GeometryComponentFilter) this::addRing);
  }

  private void addRing(Geometry component) {
    if (component instanceof LineString ring) {
      Coordinate[] at = ring.getCoordinates();
      for (int i = 1; i < at.length; i++) {
        edges.insert(new Envelope(at[i - 1], at[i]), new LineSegment(at[i - 1], at[i]));
      }
    }
  }

  Envelope envelope() {
    return envelope;
  }

  /** The length inside of a line of straight segments. */
  double of(List<LinePoint> line) {
    double inside = 0;
    List<Coordinate> stretch = new ArrayList<>();
    for (int i = 1; i < line.size(); i++) {
      Coordinate from = new Coordinate(line.get(i - 1).x(), line.get(i - 1).y());
      Coordinate to = new Coordinate(line.get(i).x(), line.get(i).y());
      stretch.add(from);
      for (double t : crossings(from, to)) {
        Coordinate at = new Coordinate(from.x + t * (to.x - from.x), from.y + t * (to.y - from.y));
        stretch.add(at);
        inside += lengthIfInside(stretch);
        stretch.clear();
        stretch.add(at);
      }
    }
    if (!line.isEmpty()) {
      LinePoint last = line.get(line.size() - 1);
      stretch.add(new Coordinate(last.x(), last.y()));
    }
    return inside + lengthIfInside(stretch);
  }

  /** Where a segment meets edges, as shares of its length, rising. */
  private List<Double> crossings(Coordinate from, Coordinate to) {
    List<Double> found = new ArrayList<>();
    edges.query(
        new Envelope(from, to),
        item -> {
          LineSegment edge = (LineSegment) item;
          double ex = edge.p1.x - edge.p0.x;
          double ey = edge.p1.y - edge.p0.y;
          double before = (from.x - edge.p0.x) * ey - (from.y - edge.p0.y) * ex;
          double after = (to.x - edge.p0.x) * ey - (to.y - edge.p0.y) * ex;
          if (before != after && before * after <= 0) {
            found.add(before / (before - after));
          }
        });
    Collections.sort(found);
    return found;
  }

  private double lengthIfInside(List<Coordinate> stretch) {
    Coordinate[] at = stretch.toArray(new Coordinate[0]);
    double length = Length.ofLine(new CoordinateArraySequence(at));
    if (length == 0) {
      return 0;
    }
    LengthIndexedLine line = new LengthIndexedLine(Rings.FACTORY.createLineString(at));
    return locator.locate(line.extractPoint(length / 2)) == Location.INTERIOR ? length : 0;
  }
}
