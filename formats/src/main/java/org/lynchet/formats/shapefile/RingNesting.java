package org.lynchet.formats.shapefile;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.locationtech.jts.algorithm.Area;
import org.locationtech.jts.algorithm.locate.IndexedPointInAreaLocator;
import org.locationtech.jts.algorithm.locate.PointOnGeometryLocator;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.LinearRing;
import org.locationtech.jts.geom.Location;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.index.hprtree.HPRtree;

/**
 * Tells outer rings from holes by which ring lies inside which, whatever their direction: a ring
 * inside an even number of others is an outer ring, one inside an odd number is a hole of the
 * smallest ring around it.
 *
 * <p>For rings drawn as the ESRI description asks this gives what the directions say. A hole drawn
 * clockwise stays a hole, where reading by direction makes of it a second polygon on top of the
 * first.
 */
final class RingNesting {
  private final GeometryFactory factory;
  private final List<Node> nodes;

  /** Takes the rings of one record. */
  RingNesting(GeometryFactory factory, List<LinearRing> rings) {
    this.factory = factory;
    this.nodes = rings.stream().map(Node::new).toList();
  }

  /** A polygon, or a multipolygon if there is more than one outer ring; file order is kept. */
  Geometry toGeometry() {
    if (nodes.size() > 1) {
      nest();
    }
    List<Polygon> polygons = new ArrayList<>();
    for (Node node : nodes) {
      if (node.depth % 2 == 0) {
        polygons.add(factory.createPolygon(node.ring, node.holes.toArray(new LinearRing[0])));
      }
    }
    return polygons.size() == 1
        ? polygons.get(0)
        : factory.createMultiPolygon(polygons.toArray(new Polygon[0]));
  }

  private void nest() {
    HPRtree index = new HPRtree();
    nodes.forEach(n -> index.insert(n.ring.getEnvelopeInternal(), n));
    for (Node node : nodes) {
      List<Node> around = new ArrayList<>();
      for (Object other : index.query(node.ring.getEnvelopeInternal())) {
        if (other instanceof Node candidate && candidate.contains(node)) {
          around.add(candidate);
        }
      }
      node.depth = around.size();
      node.parent = around.stream().min(Comparator.comparingDouble(n -> n.area)).orElse(null);
    }
    for (Node node : nodes) {
      if (node.depth % 2 == 1 && node.parent != null) {
        node.parent.holes.add(node.ring);
      }
    }
  }

  /** One ring and its place among the others. */
  private static final class Node {
    final LinearRing ring;
    final double area;
    final List<LinearRing> holes = new ArrayList<>();
    int depth;
    @Nullable Node parent;
    private @Nullable PointOnGeometryLocator locator;

    Node(LinearRing ring) {
      this.ring = ring;
      this.area = Area.ofRing(ring.getCoordinateSequence());
    }

    boolean contains(Node other) {
      return area > other.area
          && ring.getEnvelopeInternal().covers(other.ring.getEnvelopeInternal())
          && holds(other.ring.getCoordinates());
    }

    /** Asks the first vertex that isn't on this ring, then the first middle of an edge. */
    private boolean holds(Coordinate[] points) {
      for (Coordinate point : points) {
        int location = locate(point);
        if (location != Location.BOUNDARY) {
          return location == Location.INTERIOR;
        }
      }
      for (int i = 1; i < points.length; i++) {
        Coordinate a = points[i - 1];
        Coordinate b = points[i];
        int location = locate(new Coordinate((a.x + b.x) / 2, (a.y + b.y) / 2));
        if (location != Location.BOUNDARY) {
          return location == Location.INTERIOR;
        }
      }
      return false;
    }

    private int locate(Coordinate point) {
      if (locator == null) {
        locator = new IndexedPointInAreaLocator(ring);
      }
      return locator.locate(point);
    }
  }
}
