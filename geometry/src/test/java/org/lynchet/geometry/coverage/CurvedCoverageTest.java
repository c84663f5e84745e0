package org.lynchet.geometry.coverage;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.ShrinkingMode;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.lynchet.geometry.guidance.AbLine;
import org.lynchet.geometry.guidance.Curve;
import org.lynchet.geometry.guidance.Guidance;
import org.lynchet.geometry.guidance.OffsetFrame;
import org.lynchet.geometry.guidance.TestCurves;

/** Holds cells between offsets of a curve against the AB line, circles, and the partition laws. */
class CurvedCoverageTest {
  /** How far a strip edge may be from its offset: 0.5 mm for chords and 0.001 mm for vertices. */
  private static final double STRAY = 5.02e-4;

  /**
   * How far corners may be apart: where a boundary runs nearly along a cut, 1e-9 m across it are
   * much more along it (measured: 1.6e-7 m).
   */
  private static final double TIP = 1e-6;

  /** A curve of three points on a line gives what the AB line gives. */
  @Property(seed = "21", tries = 40, shrinking = ShrinkingMode.OFF)
  void threePointsOnALineAreAnAbLine(@ForAll long seed) {
    Random random = new Random(seed);
    Geometry metres =
        random.nextBoolean() ? RandomFields.any(random) : RandomFields.onGrid(random, 5, 10);
    Geometry boundary = TestField.lonLat(metres);
    OffsetFrame frame = TestField.FRAME;
    Curve curve =
        Curve.through(
            List.of(frame.toLonLat(0, 0), frame.toLonLat(0, 170), frame.toLonLat(0, 400)),
            TestCurves.PLANE,
            boundary.getEnvelopeInternal());
    double[] cuts = RandomFields.cuts(random, metres.getEnvelopeInternal());
    Coverage straight = Coverage.cut(regions(boundary, frame), new AbLine(frame), cuts);
    Coverage curved = Coverage.cut(regions(boundary, curve.frame()), curve, cuts);
    assertThat(curved.cells()).hasSameSizeAs(straight.cells());
    List<Geometry> expected = sorted(straight);
    List<Geometry> got = sorted(curved);
    for (int i = 0; i < got.size(); i++) {
      assertThat(got.get(i).getArea())
          .isCloseTo(expected.get(i).getArea(), within(1e-8 * got.get(i).getLength()));
      assertThat(farthest(got.get(i), expected.get(i))).as("seed %s", seed).isLessThan(TIP);
      assertThat(farthest(expected.get(i), got.get(i))).as("seed %s", seed).isLessThan(TIP);
      for (Coordinate at : got.get(i).getCoordinates()) {
        double off = Arrays.stream(cuts).map(cut -> Math.abs(at.x - cut)).min().orElse(1);
        // What lies on a cut lies there to 5e-9 m: degrees in doubles are exact to 1.6e-9 m
        assertThat(off).as("seed %s", seed).matches(x -> x > 1e-5 || x < 5e-9);
      }
    }
  }

  /** Bands between concentric arcs: angle / 2 x (R^2 - r^2); rows on them: angle x r. */
  @Test
  void bandsOfAnArcAreSectorsOfRings() {
    Curve curve = TestCurves.through(TestCurves.arc(-300, 0, 300, 60, 0.05));
    List<Coordinate> ring = new ArrayList<>(TestCurves.arc(-300, 0, 450, 40, 0.02));
    List<Coordinate> inner = TestCurves.arc(-300, 0, 150, 40, 0.02);
    Collections.reverse(inner);
    ring.addAll(inner);
    ring.add(ring.get(0).copy());
    Geometry sector =
        Rings.FACTORY.createPolygon(TestCurves.lonLat(ring).toArray(new Coordinate[0]));
    Regions regions = regions(sector, curve.frame());
    double[] cuts = {-120, -20, -10, 0, 60.5, 149};
    Coverage coverage = Coverage.cut(regions, curve, cuts);
    PartitionLaws.partition(coverage, area(sector, curve));
    double angle = Math.toRadians(40);
    double[] areas = regions.insideHeadland(curve).areasSquareMetres(cuts);
    double[] lengths = regions.insideHeadland(curve).lengthsMetres(cuts);
    double[] radii = {150, 180, 280, 290, 300, 360.5, 449, 450};
    for (int band = 0; band < areas.length; band++) {
      double expected = angle / 2 * (sq(radii[band + 1]) - sq(radii[band]));
      // 1 mm of edge, and the field's own chords: 450 m x 0.02 degrees squared / 8 = 7e-6 m
      assertThat(areas[band]).isCloseTo(expected, within(1e-3 * angle * 450));
    }
    for (int cut = 0; cut < cuts.length; cut++) {
      // 5 mm chords: 5e-3 / (3 x 180) of the length
      assertThat(lengths[cut]).isCloseTo(angle * (300 + cuts[cut]), within(2e-3));
    }
    assertThat(regions.insideHeadland(curve).minOffsetMetres()).isCloseTo(-150, within(1e-4));
    assertThat(regions.insideHeadland(curve).maxOffsetMetres()).isCloseTo(150, within(1e-4));
  }

  /** Pieces found without a coverage are those of the coverage, along a curve and an AB line. */
  @Test
  void piecesWithoutACoverageAreTheSame() {
    Curve curve = TestCurves.through(TestCurves.arc(-300, 0, 300, 60, 0.05));
    Geometry boundary =
        TestField.lonLat(
            Rings.FACTORY
                .toGeometry(new Envelope(-60, 60, 20, 80))
                .union(Rings.FACTORY.toGeometry(new Envelope(-60, 60, 120, 200))));
    double[] cuts = {-30, -10, 0, 25};
    for (Guidance guidance : List.of(curve, new AbLine(curve.frame()))) {
      Regions regions = regions(boundary, guidance.frame());
      List<Piece> whole = Coverage.cut(regions, guidance, cuts).pieces(Cell::band, guidance);
      List<Piece> quick = Coverage.pieces(regions, guidance, cuts, Cell::band);
      assertThat(quick).hasSameSizeAs(whole).hasSizeGreaterThan(5);
      for (int i = 0; i < quick.size(); i++) {
        assertThat(quick.get(i).group()).isEqualTo(whole.get(i).group());
        assertThat(quick.get(i).areaSquareMetres())
            .isCloseTo(whole.get(i).areaSquareMetres(), within(1e-6));
        assertThat(quick.get(i).maxAlongMetres())
            .isCloseTo(whole.get(i).maxAlongMetres(), within(1e-6));
      }
    }
  }

  /** Fields and gentle curves of chance keep every law, headland and management zones or not. */
  @Property(seed = "22", tries = 25, shrinking = ShrinkingMode.OFF)
  void gentleCurvesKeepTheLaws(@ForAll long seed) {
    Random random = new Random(seed);
    Curve curve = TestCurves.through(TestCurves.gentle(random));
    Geometry metres = RandomFields.any(random);
    Geometry boundary = TestField.lonLat(metres);
    FieldShape shape = FieldShape.of(boundary, curve.frame());
    Headland headland =
        random.nextBoolean() ? new Headland(1 + 40 * random.nextDouble(), true) : null;
    List<ManagementZone> zones = new ArrayList<>();
    if (random.nextBoolean()) {
      for (Geometry zone : RandomFields.zones(random, metres.getEnvelopeInternal())) {
        zones.add(new ManagementZone("zone " + zones.size(), TestField.lonLat(zone)));
      }
    }
    Regions regions = Regions.divided(shape, headland, zones);
    Section inside = regions.insideHeadland(curve);
    if (inside.isEmpty()) {
      return;
    }
    Envelope reach = new Envelope(inside.minOffsetMetres(), inside.maxOffsetMetres(), 0, 1);
    double[] cuts = RandomFields.cuts(random, reach);
    Coverage coverage = Coverage.cut(regions, curve, cuts);
    PartitionLaws.partition(coverage, shape.areaSquareMetres());
    double[] byBand = new double[cuts.length + 1];
    for (Cell cell : coverage.cells()) {
      if (cell.band() != Cell.NO_BAND) {
        inBand(coverage, cell, curve, cuts, seed);
        byBand[cell.band()] += coverage.areaSquareMetres(cell);
      }
    }
    double[] measured = inside.areasSquareMetres(cuts);
    for (int band = 0; band < byBand.length; band++) {
      assertThat(measured[band]).isCloseTo(byBand[band], within(1e-6));
    }
  }

  /** Every vertex, and the middle of every edge, is within its band's cuts. */
  private static void inBand(Coverage coverage, Cell cell, Curve curve, double[] cuts, long seed) {
    double left = cell.band() == 0 ? Double.NEGATIVE_INFINITY : cuts[cell.band() - 1];
    double right = cell.band() == cuts.length ? Double.POSITIVE_INFINITY : cuts[cell.band()];
    Coordinate[] ring = coverage.inOffsetFrame(cell).getExteriorRing().getCoordinates();
    for (int i = 1; i < ring.length; i++) {
      double vertex = curve.offsetMetres(ring[i].x, ring[i].y);
      double middle =
          curve.offsetMetres((ring[i - 1].x + ring[i].x) / 2, (ring[i - 1].y + ring[i].y) / 2);
      assertThat(vertex).as("seed %s", seed).isBetween(left - STRAY, right + STRAY);
      assertThat(middle).as("seed %s", seed).isBetween(left - STRAY, right + STRAY);
    }
  }

  private static Regions regions(Geometry boundary, OffsetFrame frame) {
    return Regions.divided(FieldShape.of(boundary, frame), null, List.of());
  }

  private static double area(Geometry boundary, Curve curve) {
    return FieldShape.of(boundary, curve.frame()).areaSquareMetres();
  }

  private static double sq(double value) {
    return value * value;
  }

  /** The cells of a coverage in the frame of the tests, by band and then place. */
  private static List<Geometry> sorted(Coverage coverage) {
    List<Geometry> cells = new ArrayList<>();
    for (Cell cell : coverage.cells()) {
      Geometry polygon = coverage.inOffsetFrame(cell).copy();
      polygon.apply(
          (Coordinate at) -> {
            Coordinate lonLat = coverage.frame().toLonLat(at.x, at.y);
            at.setCoordinate(TestField.FRAME.toOffset(lonLat.x, lonLat.y));
          });
      polygon.setUserData(cell.band());
      cells.add(polygon);
    }
    cells.sort(
        Comparator.comparingInt((Geometry cell) -> (int) cell.getUserData())
            .thenComparingDouble(cell -> Math.rint(1e4 * cell.getCentroid().getX()))
            .thenComparingDouble(cell -> Math.rint(1e4 * cell.getCentroid().getY())));
    return cells;
  }

  private static double farthest(Geometry from, Geometry to) {
    double farthest = 0;
    Geometry edges = to.getBoundary();
    for (Coordinate at : from.getCoordinates()) {
      farthest = Math.max(farthest, edges.distance(Rings.FACTORY.createPoint(at)));
    }
    return farthest;
  }
}
