package org.lynchet.integration.witness.shapefile;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.locationtech.jts.algorithm.Area;
import org.locationtech.jts.algorithm.PointLocation;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.LinearRing;
import org.locationtech.jts.geom.Location;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.operation.valid.IsValidOp;
import org.locationtech.jts.operation.valid.TopologyValidationError;
import org.lynchet.integration.witness.Findings;

/**
 * Checks the rings of one polygon record.
 *
 * <p>What a ring is, outer or hole, is told by where it lies and not by which way it runs: a ring
 * inside an odd number of the others is a hole. Only so can a hole that runs the wrong way be seen.
 */
final class Rings {
  private static final GeometryFactory FACTORY = new GeometryFactory();

  private final List<Coordinate[]> rings;
  private final String where;
  private final Findings findings;

  private Rings(List<Coordinate[]> rings, String where, Findings findings) {
    this.rings = rings;
    this.where = where;
    this.findings = findings;
  }

  static void check(List<Coordinate[]> rings, String where, Findings findings) {
    Rings check = new Rings(rings, where, findings);
    boolean whole = true;
    for (int i = 0; i < rings.size(); i++) {
      whole &= check.checkForm(rings.get(i), check.place(i));
    }
    if (whole) {
      check.checkDirections();
      check.checkClean();
    }
  }

  /** Checks one ring alone; true if it is good enough to be compared with the others. */
  private boolean checkForm(Coordinate[] ring, String place) {
    boolean whole = true;
    for (Coordinate c : ring) {
      if (!Double.isFinite(c.x) || !Double.isFinite(c.y)) {
        findings.add(ShapefileRule.FINITE, place, c.x + " " + c.y);
        return false;
      }
      if (Math.abs(c.x) > 180 || Math.abs(c.y) > 90) {
        findings.add(ShapefileRule.LON_LAT, place, c.x + " " + c.y);
      }
    }
    if (ring.length < 4) {
      findings.add(ShapefileRule.RING_POINTS, place, ring.length + " points");
      whole = false;
    }
    if (!ring[0].equals2D(ring[ring.length - 1])) {
      findings.add(
          ShapefileRule.RING_CLOSED, place, ring[0] + " first, " + ring[ring.length - 1] + " last");
      whole = false;
    }
    if (whole && Area.ofRing(ring) == 0) {
      findings.add(ShapefileRule.RING_AREA, place, "no area");
      whole = false;
    }
    return whole;
  }

  private void checkDirections() {
    for (int i = 0; i < rings.size(); i++) {
      boolean clockwise = Area.ofRingSigned(rings.get(i)) > 0;
      if (isHole(i) && clockwise) {
        findings.add(ShapefileRule.HOLE_COUNTER_CLOCKWISE, place(i), "the hole runs clockwise");
      }
      if (!isHole(i) && !clockwise) {
        findings.add(ShapefileRule.OUTER_CLOCKWISE, place(i), "the ring runs counter-clockwise");
      }
    }
  }

  private void checkClean() {
    for (int i = 0; i < rings.size(); i++) {
      if (isHole(i)) {
        continue;
      }
      TopologyValidationError error = new IsValidOp(polygon(i)).getValidationError();
      if (error != null) {
        findings.add(ShapefileRule.CLEAN, place(i), error.toString());
      }
      for (int j = 0; j < i; j++) {
        if (!isHole(j) && polygon(i).relate(polygon(j), "T********")) {
          findings.add(ShapefileRule.CLEAN, place(i), "overlaps ring " + (j + 1));
        }
      }
    }
  }

  /** The polygon of an outer ring with the holes whose smallest surrounding ring it is. */
  private Polygon polygon(int outer) {
    List<LinearRing> holes = new ArrayList<>();
    for (int i = 0; i < rings.size(); i++) {
      if (isHole(i) && shellOf(i).filter(shell -> shell == outer).isPresent()) {
        holes.add(FACTORY.createLinearRing(rings.get(i)));
      }
    }
    return FACTORY.createPolygon(
        FACTORY.createLinearRing(rings.get(outer)), holes.toArray(new LinearRing[0]));
  }

  private Optional<Integer> shellOf(int hole) {
    return around(hole).stream().min(Comparator.comparingDouble(i -> Area.ofRing(rings.get(i))));
  }

  private boolean isHole(int i) {
    return around(i).size() % 2 == 1;
  }

  /** The rings that ring {@code i} lies in. */
  private List<Integer> around(int i) {
    List<Integer> around = new ArrayList<>();
    for (int j = 0; j < rings.size(); j++) {
      if (j != i && isInside(rings.get(i), rings.get(j))) {
        around.add(j);
      }
    }
    return around;
  }

  /** Told by the first point that is not on the other ring; rings may touch in points. */
  private static boolean isInside(Coordinate[] ring, Coordinate[] other) {
    for (Coordinate c : ring) {
      int location = PointLocation.locateInRing(c, other);
      if (location != Location.BOUNDARY) {
        return location == Location.INTERIOR;
      }
    }
    return Area.ofRing(ring) < Area.ofRing(other);
  }

  private String place(int ring) {
    return where + " ring " + (ring + 1);
  }
}
