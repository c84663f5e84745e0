package org.lynchet.prescription.picture;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.CoordinateSequence;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.Polygon;
import org.lynchet.geometry.guidance.Curve;
import org.lynchet.geometry.guidance.Guidance;
import org.lynchet.geometry.guidance.OffsetFrame;

/** Tells how far the field reaches along the AB line, seen between two offsets. */
final class FieldEdge {
  /** The longest edge beside a curve, in metres. */
  private static final double LONGEST = 5;

  private final List<List<Coordinate>> rings = new ArrayList<>();

  private FieldEdge() {}

  /** The edge of a boundary in longitude and latitude. */
  static FieldEdge of(Geometry boundary, OffsetFrame frame) {
    FieldEdge edge = new FieldEdge();
    for (int i = 0; i < boundary.getNumGeometries(); i++) {
      if (boundary.getGeometryN(i) instanceof Polygon polygon) {
        CoordinateSequence ring = polygon.getExteriorRing().getCoordinateSequence();
        List<Coordinate> offsets = new ArrayList<>(ring.size());
        for (int j = 0; j < ring.size(); j++) {
          offsets.add(frame.toOffset(ring.getX(j), ring.getY(j)));
        }
        edge.rings.add(offsets);
      }
    }
    return edge;
  }

  /**
   * The edge by offset and place along a guidance line. Of a curve the edges are divided, since
   * they are not straight then.
   */
  static FieldEdge of(Geometry boundary, Guidance guidance) {
    FieldEdge plain = of(boundary, guidance.frame());
    if (!(guidance instanceof Curve)) {
      return plain;
    }
    FieldEdge edge = new FieldEdge();
    for (List<Coordinate> ring : plain.rings) {
      List<Coordinate> offsets = new ArrayList<>();
      for (int i = 0; i < ring.size(); i++) {
        Coordinate p = ring.get(Math.max(0, i - 1));
        Coordinate q = ring.get(i);
        int parts = Math.max(1, (int) Math.ceil(p.distance(q) / LONGEST));
        for (int k = 1; k <= parts; k++) {
          double x = p.x + (q.x - p.x) * k / parts;
          double y = p.y + (q.y - p.y) * k / parts;
          offsets.add(new Coordinate(guidance.offsetMetres(x, y), guidance.alongMetres(x, y)));
        }
      }
      edge.rings.add(offsets);
    }
    return edge;
  }

  /** The vertices of the outer rings: offset (x) and metres along the AB line (y). */
  List<Coordinate> vertices() {
    return rings.stream().flatMap(List::stream).toList();
  }

  /** From where to where, in metres. */
  record Reach(double from, double to) {

    boolean isEmpty() {
      return from > to;
    }
  }

  /** The field's reach across the AB line: its offsets. */
  Reach across() {
    List<Double> offsets = vertices().stream().map(vertex -> vertex.x).toList();
    return new Reach(Collections.min(offsets), Collections.max(offsets));
  }

  /** The field's reach along the AB line between two offsets; empty if it has none there. */
  Reach along(double fromOffset, double toOffset) {
    double from = Double.POSITIVE_INFINITY;
    double to = Double.NEGATIVE_INFINITY;
    for (List<Coordinate> ring : rings) {
      for (int i = 1; i < ring.size(); i++) {
        Coordinate p = ring.get(i - 1);
        Coordinate q = ring.get(i);
        if (Math.max(p.x, q.x) >= fromOffset && Math.min(p.x, q.x) <= toOffset) {
          double first = alongAt(p, q, Math.max(fromOffset, Math.min(p.x, q.x)));
          double last = alongAt(p, q, Math.min(toOffset, Math.max(p.x, q.x)));
          from = Math.min(from, Math.min(first, last));
          to = Math.max(to, Math.max(first, last));
          if (p.x == q.x) {
            from = Math.min(from, Math.min(p.y, q.y));
            to = Math.max(to, Math.max(p.y, q.y));
          }
        }
      }
    }
    return new Reach(from, to);
  }

  private static double alongAt(Coordinate p, Coordinate q, double offset) {
    return p.x == q.x ? p.y : p.y + (q.y - p.y) * (offset - p.x) / (q.x - p.x);
  }
}
