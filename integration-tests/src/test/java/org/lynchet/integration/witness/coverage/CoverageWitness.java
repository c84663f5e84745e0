package org.lynchet.integration.witness.coverage;

import java.util.List;
import org.locationtech.jts.coverage.CoverageUnion;
import org.locationtech.jts.coverage.CoverageValidator;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.Polygonal;
import org.locationtech.jts.index.quadtree.Quadtree;
import org.locationtech.jts.operation.distance.IndexedFacetDistance;
import org.locationtech.jts.operation.overlayng.OverlayNG;
import org.locationtech.jts.operation.overlayng.OverlayNGRobust;
import org.locationtech.jts.operation.relateng.RelateNG;
import org.locationtech.jts.operation.valid.IsValidOp;
import org.locationtech.jts.operation.valid.TopologyValidationError;
import org.lynchet.integration.witness.Finding;
import org.lynchet.integration.witness.Findings;

/**
 * Checks that zones are an edge-matched partition of a field.
 *
 * <p>Known limit: where a cut meets the boundary between two of its vertices, the rounded crossing
 * lies up to half a unit of the last decimal beside the boundary's edge. The zones' union and the
 * field then differ by hair-thin triangles, so their areas are compared within a tolerance; between
 * zones there is none.
 */
public final class CoverageWitness {
  /** The pattern of the DE-9IM matrix for interiors that share something. */
  private static final String INTERIORS_MEET = "T********";

  /** Two units of the ninth decimal: rounding moves a crossing by at most 0.71 of one. */
  private static final double OUTLINE_DEGREES = 2e-9;

  private final List<Geometry> zones;
  private final Geometry field;
  private final double areaTolerance;
  private final Findings findings = new Findings();

  private CoverageWitness(List<Geometry> zones, Geometry field, double areaTolerance) {
    this.zones = zones;
    this.field = field;
    this.areaTolerance = areaTolerance;
  }

  /**
   * Looks at all zones of one field.
   *
   * @param zones in the order of the file; findings count them from 1
   * @param field the boundary, valid, in the same coordinates
   * @param areaTolerance the part of the field's area that zones and field may differ by, such as
   *     1e-8
   * @return what is wrong; empty if nothing is
   */
  public static List<Finding> inspect(List<Geometry> zones, Geometry field, double areaTolerance) {
    CoverageWitness witness = new CoverageWitness(zones, field, areaTolerance);
    if (witness.checkEach()) {
      witness.checkEdges();
      witness.checkOverlaps();
    }
    // A union of what is no coverage means nothing.
    if (witness.findings.list().isEmpty()) {
      witness.checkUnion();
    }
    return witness.findings.list();
  }

  private boolean checkEach() {
    for (int i = 0; i < zones.size(); i++) {
      Geometry zone = zones.get(i);
      if (!(zone instanceof Polygonal) || zone.isEmpty()) {
        findings.add(CoverageRule.POLYGONAL, place(i), zone.toText());
        continue;
      }
      TopologyValidationError error = new IsValidOp(zone).getValidationError();
      if (error != null) {
        findings.add(CoverageRule.VALID, place(i), error.toString());
      }
    }
    return findings.list().isEmpty();
  }

  private void checkEdges() {
    Geometry[] invalid = CoverageValidator.validate(zones.toArray(new Geometry[0]), 0);
    for (int i = 0; i < invalid.length; i++) {
      if (invalid[i] != null && !invalid[i].isEmpty()) {
        findings.add(CoverageRule.EDGE_MATCHED, place(i), invalid[i].toText());
      }
    }
  }

  private void checkOverlaps() {
    // A quadtree, since an STRtree takes nothing more once it was asked.
    Quadtree earlier = new Quadtree();
    for (int i = 0; i < zones.size(); i++) {
      Envelope envelope = zones.get(i).getEnvelopeInternal();
      for (Object found : earlier.query(envelope)) {
        int j = (Integer) found;
        if (RelateNG.relate(zones.get(i), zones.get(j), INTERIORS_MEET)) {
          findings.add(CoverageRule.NO_OVERLAP, place(j) + " and " + place(i), "share interior");
        }
      }
      earlier.insert(envelope, i);
    }
  }

  private void checkUnion() {
    Geometry union = CoverageUnion.union(zones.toArray(new Geometry[0]));
    findings.addUnlessEqual(
        CoverageRule.NO_GAP, "holes of the zones' union", holes(union), holes(field));
    findings.addUnlessEqual(
        CoverageRule.NO_GAP,
        "parts of the zones' union",
        union.getNumGeometries(),
        field.getNumGeometries());
    checkOutline("outline of the zones' union", union.getBoundary(), field.getBoundary());
    checkOutline("boundary of the field", field.getBoundary(), union.getBoundary());
    checkSame("in area", union.getArea() - field.getArea());
    Geometry difference = OverlayNGRobust.overlay(union, field, OverlayNG.SYMDIFFERENCE);
    checkSame("by " + at(difference), difference.getArea());
  }

  /** A slit that is open to the outside has a tip, and that is far from the field's boundary. */
  private void checkOutline(String where, Geometry outline, Geometry expected) {
    IndexedFacetDistance distance = new IndexedFacetDistance(expected);
    for (Coordinate c : outline.getCoordinates()) {
      double apart = distance.distance(outline.getFactory().createPoint(c));
      if (apart > OUTLINE_DEGREES) {
        findings.add(CoverageRule.SAME_OUTLINE, where, c.x + " " + c.y + " is off by " + apart);
      }
    }
  }

  private void checkSame(String how, double area) {
    if (Math.abs(area) > areaTolerance * field.getArea()) {
      findings.add(
          CoverageRule.SAME_AREA,
          "union of all zones",
          "differs from the field " + how + ", " + area / field.getArea() + " of the field");
    }
  }

  private static String at(Geometry difference) {
    Coordinate c = difference.getCoordinate();
    return c == null ? "nothing" : "an area at " + c.x + " " + c.y;
  }

  private static int holes(Geometry polygonal) {
    // Boundary components less shells.
    return polygonal.getBoundary().getNumGeometries() - polygonal.getNumGeometries();
  }

  private String place(int zone) {
    return "zone " + (zone + 1);
  }
}
