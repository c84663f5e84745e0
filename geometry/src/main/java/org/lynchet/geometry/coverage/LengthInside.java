package org.lynchet.geometry.coverage;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.locationtech.jts.algorithm.locate.IndexedPointInAreaLocator;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryComponentFilter;
import org.locationtech.jts.geom.LineString;
import org.locationtech.jts.geom.Location;
import org.locationtech.jts.index.hprtree.HPRtree;
import org.lynchet.geometry.guidance.LinePoint;

/**
 * Measures how much of a line lies inside an area: the line is divided where it meets the boundary,
 * and the middle of each stretch tells whether that is inside.
 */
final class LengthInside {
  private final Envelope envelope;
  private final HPRtree edges = new HPRtree();
  private final IndexedPointInAreaLocator locator;

  private record Edge(Coordinate from, Coordinate to) {}

  LengthInside(Geometry area) {
    envelope = area.getEnvelopeInternal();
    locator = new IndexedPointInAreaLocator(area);
    area.apply((GeometryComponentFilter) this::addRing);
  }

  private void addRing(Geometry component) {
    if (component instanceof LineString ring) {
      Coordinate[] at = ring.getCoordinates();
      for (int i = 1; i < at.length; i++) {
        edges.insert(new Envelope(at[i - 1], at[i]), new Edge(at[i - 1], at[i]));
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
          Edge edge = (Edge) item;
          double ex = edge.to.x - edge.from.x;
          double ey = edge.to.y - edge.from.y;
          double before = (from.x - edge.from.x) * ey - (from.y - edge.from.y) * ex;
          double after = (to.x - edge.from.x) * ey - (to.y - edge.from.y) * ex;
          if (before != after && before * after <= 0) {
            found.add(before / (before - after));
          }
        });
    Collections.sort(found);
    return found;
  }

  private double lengthIfInside(List<Coordinate> stretch) {
    double length = 0;
    for (int i = 1; i < stretch.size(); i++) {
      length += stretch.get(i - 1).distance(stretch.get(i));
    }
    return length > 0 && locator.locate(middle(stretch, length / 2)) == Location.INTERIOR
        ? length
        : 0;
  }

  private static Coordinate middle(List<Coordinate> stretch, double half) {
    double walked = 0;
    for (int i = 1; i < stretch.size(); i++) {
      Coordinate from = stretch.get(i - 1);
      Coordinate to = stretch.get(i);
      double length = from.distance(to);
      if (walked + length >= half && length > 0) {
        double t = (half - walked) / length;
        return new Coordinate(from.x + t * (to.x - from.x), from.y + t * (to.y - from.y));
      }
      walked += length;
    }
    return stretch.get(stretch.size() - 1);
  }
}
