package org.lynchet.integration.witness.coverage;

import java.util.List;
import java.util.function.UnaryOperator;
import org.locationtech.jts.coverage.CoverageUnion;
import org.locationtech.jts.coverage.CoverageValidator;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.Polygonal;
import org.locationtech.jts.geom.util.GeometryFixer;
import org.locationtech.jts.index.quadtree.Quadtree;
import org.locationtech.jts.operation.distance.IndexedFacetDistance;
import org.locationtech.jts.operation.overlayng.OverlayNG;
import org.locationtech.jts.operation.overlayng.OverlayNGRobust;
import org.locationtech.jts.operation.relateng.RelateNG;
import org.locationtech.jts.operation.valid.IsValidOp;
import org.locationtech.jts.operation.valid.TopologyValidationError;
import org.lynchet.integration.witness.Finding;
import org.lynchet.integration.witness.Findings;
import org.lynchet.integration.witness.ground.GroundPlane;

/**
 * Checks that zones are an edge-matched partition of a field.
 *
 * <p>Between zones nothing is tolerated: they must match as the numbers stand in the file. Between
 * the zones' outline and the field's boundary there is a tolerance, since a cut that meets the
 * boundary between two of its vertices adds a vertex there, and that is rounded. They are compared
 * on the ground: read as straight in longitude and latitude, a boundary's long edge would run
 * beside vertices that are on it.
 */
public final class CoverageWitness {
  /** The pattern of the DE-9IM matrix for interiors that share something. */
  private static final String INTERIORS_MEET = "T********";

  /** Half a unit of the ninth decimal of a degree both ways is 0.08 mm. */
  private static final double ROUNDING_METRES = 1e-4;

  private static final double EARTH_RADIUS_METRES = 6_371_008.8;

  private final List<Geometry> zones;
  private final Geometry field;
  private final UnaryOperator<Geometry> ground;
  private final double tolerance;
  private final Findings findings = new Findings();

  private CoverageWitness(
      List<Geometry> zones, Geometry field, UnaryOperator<Geometry> ground, double tolerance) {
    this.zones = zones;
    this.field = field;
    this.ground = ground;
    this.tolerance = tolerance;
  }

  /**
   * Looks at all zones of one field.
   *
   * @param zones in the order of the file; findings count them from 1
   * @param field the boundary, valid; both in longitude and latitude
   * @return what is wrong; empty if nothing is
   */
  public static List<Finding> inspect(List<Geometry> zones, Geometry field) {
    GroundPlane plane = GroundPlane.at(field.getEnvelopeInternal().centre());
    double extent = plane.project(field).getEnvelopeInternal().getDiameter();
    double bow = Math.pow(extent, 3) / 16 / Math.pow(EARTH_RADIUS_METRES, 2);
    return inspect(zones, field, plane::project, ROUNDING_METRES + bow);
  }

  /** Looks at zones in any coordinates, with what makes a plane of them and a tolerance in that. */
  static List<Finding> inspect(
      List<Geometry> zones, Geometry field, UnaryOperator<Geometry> ground, double tolerance) {
    CoverageWitness witness = new CoverageWitness(zones, field, ground, tolerance);
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
    Geometry union = asInSimpleFeatures(CoverageUnion.union(zones.toArray(new Geometry[0])));
    findings.addUnlessEqual(
        CoverageRule.NO_GAP, "holes of the zones' union", holes(union), holes(field));
    findings.addUnlessEqual(
        CoverageRule.NO_GAP,
        "parts of the zones' union",
        union.getNumGeometries(),
        field.getNumGeometries());
    compare(ground.apply(union), ground.apply(field));
  }

  /**
   * Where a hole touches the outer ring in a vertex, CoverageUnion (JTS 1.20.0) may give both as
   * one ring that touches itself, which OGC 06-103r4, 6.1.11, does not allow. The points are the
   * same.
   */
  private static Geometry asInSimpleFeatures(Geometry union) {
    return union.isValid() ? union : GeometryFixer.fix(union);
  }

  private void compare(Geometry union, Geometry expected) {
    checkOutline("outline of the zones' union", union.getBoundary(), expected.getBoundary());
    checkOutline("boundary of the field", expected.getBoundary(), union.getBoundary());
    checkLength(union, expected);
    double most = tolerance * expected.getLength();
    double more = union.getArea() - expected.getArea();
    Geometry difference = OverlayNGRobust.overlay(union, expected, OverlayNG.SYMDIFFERENCE);
    if (Math.abs(more) > most || difference.getArea() > most) {
      findings.add(
          CoverageRule.SAME_AREA,
          "union of all zones",
          "area more by " + more + ", difference of " + difference.getArea() + at(difference));
    }
  }

  /** A slit between two rings has no tip, but two sides; a tip that is lost had two as well. */
  private void checkLength(Geometry union, Geometry expected) {
    double longer = union.getLength() - expected.getLength();
    if (Math.abs(longer) > tolerance * union.getNumPoints()) {
      findings.add(
          CoverageRule.SAME_OUTLINE,
          longer > 0 ? "outline of the zones' union" : "boundary of the field",
          "longer by " + Math.abs(longer));
    }
  }

  /** A slit that is open to the outside has a tip, and that is far from the field's boundary. */
  private void checkOutline(String where, Geometry outline, Geometry expected) {
    IndexedFacetDistance distance = new IndexedFacetDistance(expected);
    for (Coordinate c : outline.getCoordinates()) {
      double apart = distance.distance(outline.getFactory().createPoint(c));
      if (apart > tolerance) {
        findings.add(CoverageRule.SAME_OUTLINE, where, c.x + " " + c.y + " is off by " + apart);
      }
    }
  }

  private static String at(Geometry difference) {
    Coordinate c = difference.getCoordinate();
    return c == null ? "" : " at " + c.x + " " + c.y;
  }

  private static int holes(Geometry polygonal) {
    // Boundary components less shells.
    return polygonal.getBoundary().getNumGeometries() - polygonal.getNumGeometries();
  }

  private String place(int zone) {
    return "zone " + (zone + 1);
  }
}
