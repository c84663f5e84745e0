package org.lynchet.geometry.coverage;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.function.Function;
import org.locationtech.jts.algorithm.Orientation;
import org.locationtech.jts.coverage.CoverageValidator;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.LineSegment;
import org.locationtech.jts.geom.LineString;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.operation.overlayng.OverlayNGRobust;
import org.locationtech.jts.operation.valid.IsValidOp;

/**
 * Holds a coverage against what a partition of the field has to be: valid polygons (OGC 06-103r4,
 * 6.1.11, by JTS), a valid coverage (JTS CoverageValidator), nothing lost or twice (areas), every
 * cell in its band.
 */
final class PartitionLaws {
  /** The exactness of strip edges: 0.001 mm. */
  private static final double ON_CUT = 1e-6;

  private final TestField field;
  private final Regions regions;
  private final double[] cuts;

  PartitionLaws(TestField field, Regions regions, double[] cuts) {
    this.field = field;
    this.regions = regions;
    this.cuts = cuts;
  }

  /** Holds a coverage of which cells were joined over cuts against the laws that remain. */
  void checkJoined(Coverage coverage) {
    partition(coverage, field.inMetres().getArea());
    assertThat(field.shape.areaSquareMetres())
        .isCloseTo(field.inMetres().getArea(), withinPercentage(1e-7));
  }

  void check(Coverage coverage) {
    checkJoined(coverage);
    for (Cell cell : coverage.cells()) {
      inBand(coverage, cell);
    }
    bandsHoldTheirArea(coverage);
  }

  /**
   * What holds whatever the guidance line.
   *
   * @param area the field's area in square metres
   */
  static void partition(Coverage coverage, double area) {
    allValid(coverage, coverage::inOffsetFrame);
    sumsToField(coverage, area);
    Coverage rounded = coverage.rounded();
    allValid(rounded, rounded::inLonLat);
    roundedIsNear(coverage, rounded);
  }

  private static void allValid(Coverage coverage, Function<Cell, Polygon> draw) {
    Polygon[] polygons = coverage.cells().stream().map(draw).toArray(Polygon[]::new);
    for (Polygon polygon : polygons) {
      assertThat(new IsValidOp(polygon).getValidationError()).as("fault of %s", polygon).isNull();
      assertThat(Orientation.isCCW(polygon.getExteriorRing().getCoordinateSequence()))
          .as("outer ring of %s is counter-clockwise", polygon)
          .isTrue();
    }
    matches(polygons);
    Geometry[] faults = CoverageValidator.validate(polygons);
    for (Geometry fault : faults) {
      assertThat(fault == null || touchesItselfAt(polygons, fault))
          .as("CoverageValidator on %s: %s", List.of(polygons), Arrays.toString(faults))
          .isTrue();
    }
  }

  /**
   * Known limit of CoverageValidator (JTS 1.20.0, found 2026-11): where a polygon's hole touches
   * its shell, or two of its holes each other, it looks at one of the two corners at that vertex
   * only, and reports edges that leave it in the other as lying in the polygon. Such reports are
   * let pass here; {@link #matches} has judged those cells already.
   */
  private static boolean touchesItselfAt(Polygon[] polygons, Geometry fault) {
    Set<Coordinate> ends = new HashSet<>(List.of(fault.getCoordinates()));
    for (Polygon polygon : polygons) {
      Set<Coordinate> seen = new HashSet<>();
      for (int r = -1; r < polygon.getNumInteriorRing(); r++) {
        LineString ring = r < 0 ? polygon.getExteriorRing() : polygon.getInteriorRingN(r);
        for (Coordinate at : new HashSet<>(List.of(ring.getCoordinates()))) {
          if (!seen.add(at) && ends.contains(at)) {
            return true;
          }
        }
      }
    }
    return false;
  }

  /**
   * Valid polygons whose edges match are a coverage: no edge is walked twice one way, and what is
   * walked one way only is as long as the boundary of their union.
   */
  private static void matches(Polygon[] polygons) {
    Set<LineSegment> edges = new HashSet<>();
    for (Polygon polygon : polygons) {
      for (int r = -1; r < polygon.getNumInteriorRing(); r++) {
        LineString ring = r < 0 ? polygon.getExteriorRing() : polygon.getInteriorRingN(r);
        for (int i = 1; i < ring.getNumPoints(); i++) {
          LineSegment edge = new LineSegment(ring.getCoordinateN(i - 1), ring.getCoordinateN(i));
          assertThat(edges.add(edge)).as("%s is walked once that way", edge).isTrue();
        }
      }
    }
    double outside = 0;
    for (LineSegment edge : edges) {
      if (!edges.contains(new LineSegment(edge.p1, edge.p0))) {
        outside += edge.getLength();
      }
    }
    double boundary = OverlayNGRobust.union(List.of(polygons)).getLength();
    assertThat(outside).as("length of unmatched edges").isCloseTo(boundary, withinPercentage(1e-3));
  }

  /** Sum of cells = field to 1e-9, and to 1e-6 m2 where the field itself is next to nothing. */
  private static void sumsToField(Coverage coverage, double area) {
    double sum = coverage.cells().stream().mapToDouble(coverage::areaSquareMetres).sum();
    assertThat(sum).as("areas").isCloseTo(area, within(Math.max(area * 1e-9, 1e-6)));
  }

  /** Every vertex is within its band's cuts, and one that two bands share lies on the cut. */
  private void inBand(Coverage coverage, Cell cell) {
    if (cell.band() == Cell.NO_BAND) {
      assertThat(cell.region().headland()).isTrue();
      return;
    }
    double left = cell.band() == 0 ? Double.NEGATIVE_INFINITY : cuts[cell.band() - 1];
    double right = cell.band() == cuts.length ? Double.POSITIVE_INFINITY : cuts[cell.band()];
    for (Coordinate at : coverage.inOffsetFrame(cell).getCoordinates()) {
      assertThat(at.x).isBetween(left - ON_CUT, right + ON_CUT);
    }
  }

  /** What lies between two cuts, by JTS OverlayNG of the inside with a box. */
  private void bandsHoldTheirArea(Coverage coverage) {
    Geometry inside = Insides.of(regions);
    double[] byBand = new double[cuts.length + 1];
    for (Cell cell : coverage.cells()) {
      if (cell.band() != Cell.NO_BAND) {
        byBand[cell.band()] += coverage.areaSquareMetres(cell);
      }
    }
    double[] measured =
        regions.insideHeadland().isEmpty()
            ? new double[byBand.length]
            : regions.insideHeadland().areasSquareMetres(cuts);
    Envelope reach = inside.getEnvelopeInternal();
    for (int band = 0; band < byBand.length; band++) {
      double expected = Insides.between(inside, reach, cuts, band);
      double tolerance = 1e-6 + ON_CUT * reach.getHeight();
      assertThat(byBand[band]).as("cells of band %s", band).isCloseTo(expected, within(tolerance));
      assertThat(measured[band])
          .as("cross section of band %s", band)
          .isCloseTo(expected, within(1e-6 + 1e-12 * reach.getArea()));
    }
  }

  /** Rounding moves a vertex by half a step of 1e-9 degree at most, mending by one step. */
  private static void roundedIsNear(Coverage coverage, Coverage rounded) {
    double before = 0;
    double length = 0;
    for (Cell cell : coverage.cells()) {
      Geometry polygon = coverage.inOffsetFrame(cell).copy();
      polygon.apply((Coordinate at) -> at.setCoordinate(coverage.frame().toLonLat(at.x, at.y)));
      before += polygon.getArea();
      length += polygon.getLength();
    }
    double after =
        rounded.cells().stream().mapToDouble(cell -> rounded.inLonLat(cell).getArea()).sum();
    assertThat(after).as("area after rounding").isCloseTo(before, within(2e-9 * length));
    for (Cell cell : rounded.cells()) {
      for (Coordinate at : rounded.inLonLat(cell).getCoordinates()) {
        assertThat(at.x).isEqualTo(Math.rint(at.x * 1e9) / 1e9);
        assertThat(at.y).isEqualTo(Math.rint(at.y * 1e9) / 1e9);
      }
    }
  }
}
