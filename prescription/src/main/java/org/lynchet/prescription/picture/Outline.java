package org.lynchet.prescription.picture;

import java.util.ArrayList;
import java.util.List;
import org.locationtech.jts.geom.Coordinate;

/** Holds lines or rings on the page, in points; rings may nest (even-odd). */
final class Outline {
  /** Points nearer than this to the one before are left out: a hundredth of a millimetre. */
  private static final double NEAR = 0.03;

  private final List<List<Coordinate>> parts = new ArrayList<>();
  private final boolean closed;

  private Outline(boolean closed) {
    this.closed = closed;
  }

  /** An outline of rings, none yet. */
  static Outline rings() {
    return new Outline(true);
  }

  /** An outline of lines, none yet. */
  static Outline lines() {
    return new Outline(false);
  }

  /** One line through points given as x, y, x, y, ... */
  static Outline line(double... xy) {
    return lines().add(points(xy));
  }

  /** One ring through points given as x, y, x, y, ...; the first is not repeated. */
  static Outline ring(double... xy) {
    return rings().add(points(xy));
  }

  /** A rectangle. */
  static Outline of(Box box) {
    return ring(
        box.left(),
        box.top(),
        box.right(),
        box.top(),
        box.right(),
        box.bottom(),
        box.left(),
        box.bottom());
  }

  /** Adds one line or ring, without the points that nobody could tell apart. */
  Outline add(List<Coordinate> points) {
    List<Coordinate> kept = new ArrayList<>();
    for (int i = 0; i < points.size(); i++) {
      Coordinate point = points.get(i);
      boolean end = i == points.size() - 1;
      if (kept.isEmpty() || end || kept.get(kept.size() - 1).distance(point) >= NEAR) {
        kept.add(point);
      }
    }
    parts.add(kept);
    return this;
  }

  /** The lines or rings. */
  List<List<Coordinate>> parts() {
    return parts;
  }

  /** Whether the parts are rings. */
  boolean closed() {
    return closed;
  }

  boolean isEmpty() {
    return parts.isEmpty();
  }

  /**
   * How wide rings that are long are on average, in points: twice their area over their length; 0
   * if there are none.
   */
  double meanWidth() {
    double area = 0;
    double length = 0;
    for (List<Coordinate> ring : parts) {
      Coordinate before = ring.get(ring.size() - 1);
      for (Coordinate at : ring) {
        area += (before.x * at.y - at.x * before.y) / 2;
        length += before.distance(at);
        before = at;
      }
    }
    return length > 0 ? 2 * Math.abs(area) / length : 0;
  }

  private static List<Coordinate> points(double[] xy) {
    List<Coordinate> points = new ArrayList<>();
    for (int i = 0; i < xy.length; i += 2) {
      points.add(new Coordinate(xy[i], xy[i + 1]));
    }
    return points;
  }
}
