package org.lynchet.geometry.guidance;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.ShrinkingMode;
import net.sf.geographiclib.Geodesic;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.LineString;
import org.locationtech.jts.operation.buffer.BufferParameters;
import org.locationtech.jts.operation.buffer.OffsetCurve;

/** Holds offsets of curves against circles, JTS, and geodesics of GeographicLib. */
class CurveTest {
  private static final GeometryFactory FACTORY = new GeometryFactory();
  private static final Geodesic EARTH = Geodesic.WGS84;

  /** A circle's arc of 300 m radius to the left: left of it the radius shrinks by the offset. */
  @ParameterizedTest
  @ValueSource(doubles = {-290, -100, -9.144, 0, 9.144, 300})
  void offsetsOfAnArcAreArcs(double offset) {
    Curve curve = TestCurves.through(TestCurves.arc(-300, 0, 300, 60, 0.05));
    Coordinate centre = curve.frame().toOffset(lonLat(-300, 0).x, lonLat(-300, 0).y);
    List<LinePoint> line = curve.pointsAt(offset, -2000, 2000);
    long onArc = 0;
    for (LinePoint point : line) {
      Coordinate at = new Coordinate(point.x(), point.y());
      Coordinate ground = curve.frame().toLonLat(at.x, at.y);
      Coordinate plane = TestCurves.PLANE.toPlane(ground.x, ground.y);
      double angle = Math.toDegrees(Math.atan2(plane.y, plane.x + 300));
      if (angle > 0.1 && angle < 59.9) {
        onArc++;
        // 300 m x 0.05 degrees squared / 8: how far the chords of the curve are from the arc
        assertThat(at.distance(centre)).isCloseTo(300 + offset, within(5e-5));
      }
    }
    assertThat(onArc).isGreaterThan(20);
  }

  /** Rows around a centre run across its radii, and are as long as the radius has it. */
  @ParameterizedTest
  @ValueSource(doubles = {-200, -9.144, 0, 9.144, 300})
  void rowsOfAnArcRunAcrossItsRadii(double offset) {
    Curve curve = TestCurves.through(TestCurves.arc(-300, 0, 300, 60, 0.05));
    Coordinate centre = curve.frame().toOffset(lonLat(-300, 0).x, lonLat(-300, 0).y);
    double[] along = new double[2];
    for (int end = 0; end < 2; end++) {
      double angle = Math.toRadians(end == 0 ? 10 : 50);
      double east = (300 + offset) * Math.cos(angle) - 300;
      Coordinate lonLat = lonLat(east, (300 + offset) * Math.sin(angle));
      Coordinate at = curve.frame().toOffset(lonLat.x, lonLat.y);
      double across = Math.atan2(centre.y - at.y, at.x - centre.x);
      // Chords turn by 0.05 degrees, half of it to either side
      assertThat(Math.toDegrees(curve.directionRadians(at.x, at.y) - across))
          .isCloseTo(0, within(0.0251));
      along[end] = curve.alongMetres(lonLat);
    }
    // A place between two chords is 300 m x 0.05 degrees squared / 8 off, and both ends are
    assertThat(curve.lengthMetres(offset, along[0], along[1]))
        .isCloseTo(Math.toRadians(40) * (300 + offset), within(1e-3));
  }

  /**
   * JTS draws round joins as chords and simplifies what bends inward (measured: up to 32 mm off
   * here), so this tells the course; the exact offset is held in the next test.
   */
  @Property(seed = "11", tries = 60, shrinking = ShrinkingMode.OFF)
  void linesAreWhereJtsDrawsThem(@ForAll long seed) {
    Random random = new Random(seed);
    Curve curve = TestCurves.through(TestCurves.gentle(random));
    double offset = 300 * (2 * random.nextDouble() - 1);
    LineString line = drawn(curve.pointsAt(offset, -400, 400));
    Geometry drawn =
        OffsetCurve.getCurve(
            curve.inFrame(),
            -offset,
            90,
            BufferParameters.JOIN_ROUND,
            BufferParameters.DEFAULT_MITRE_LIMIT);
    Geometry near = drawn.intersection(FACTORY.toGeometry(new Envelope(-2000, 2000, -390, 390)));
    assertThat(farthest(near, line)).as("seed %s, offset %s", seed, offset).isLessThan(0.1);
  }

  /** Every point is at the offset from the curve, and so is the middle of every chord. */
  @Property(seed = "12", tries = 100, shrinking = ShrinkingMode.OFF)
  void pointsAndChordsAreAtTheOffset(@ForAll long seed) {
    Random random = new Random(seed);
    Curve curve = TestCurves.through(TestCurves.gentle(random));
    double offset = 400 * (2 * random.nextDouble() - 1);
    List<LinePoint> line = curve.pointsAt(offset, -400, 400);
    LineString whole = curve.inFrame();
    for (int i = 0; i < line.size(); i++) {
      LinePoint point = line.get(i);
      assertThat(distance(whole, point.x(), point.y())).isCloseTo(Math.abs(offset), within(1e-8));
      assertThat(curve.offsetMetres(point.x(), point.y())).isCloseTo(offset, within(1e-8));
      if (i > 0) {
        LinePoint before = line.get(i - 1);
        double x = (before.x() + point.x()) / 2;
        double y = (before.y() + point.y()) / 2;
        // 0.5 mm, half of what a strip edge may stray
        assertThat(distance(whole, x, y)).isCloseTo(Math.abs(offset), within(5.01e-4));
        assertThat(point.alongMetres()).isGreaterThanOrEqualTo(before.alongMetres());
      }
    }
  }

  /** What tells where along the curve a place is agrees with what the line says of its points. */
  @Property(seed = "13", tries = 60, shrinking = ShrinkingMode.OFF)
  void placesAlongAgree(@ForAll long seed) {
    Random random = new Random(seed);
    Curve curve = TestCurves.through(TestCurves.gentle(random));
    double offset = 400 * (2 * random.nextDouble() - 1);
    List<LinePoint> line = curve.pointsAt(offset, -300, 300);
    for (int i = 1; i + 1 < line.size(); i++) {
      LinePoint point = line.get(i);
      double along = curve.alongMetres(point.x(), point.y());
      assertThat(along)
          .isBetween(line.get(i - 1).alongMetres() - 1e-6, line.get(i + 1).alongMetres() + 1e-6);
    }
  }

  /** Neighbouring lines are 9.144 m apart on the ground, 1 mm. */
  @Property(seed = "14", tries = 20, shrinking = ShrinkingMode.OFF)
  void neighboursAreAPassApartOnTheGround(@ForAll long seed) {
    Random random = new Random(seed);
    Curve curve = TestCurves.through(TestCurves.gentle(random));
    double offset = 300 * (2 * random.nextDouble() - 1);
    double from = curve.alongMetres(offset, -200);
    double to = curve.alongMetres(offset, 200);
    List<Coordinate> line = curve.line(offset, from, to);
    List<Coordinate> next = curve.line(offset + 9.144, from - 50, to + 50);
    for (int i = 0; i < line.size(); i += Math.max(1, line.size() / 7)) {
      assertThat(onGround(line.get(i), next)).isCloseTo(9.144, within(1e-3));
    }
  }

  /** Beyond the centre of a bend its ends alone make the line: it is whole, though far away. */
  @ParameterizedTest
  @ValueSource(doubles = {120, 170, 175, 178, 178.9})
  void linesBeyondTheCentreOfABendAreWhole(double span) {
    Curve curve = TestCurves.through(TestCurves.arc(-100, 0, 100, span, 0.1));
    for (double offset : new double[] {-95, -112, -300}) {
      List<LinePoint> line = curve.pointsAt(offset, -1e6, 1e6);
      assertThat(line).hasSizeGreaterThan(2);
      for (LinePoint point : line) {
        assertThat(curve.offsetMetres(point.x(), point.y())).isCloseTo(offset, within(0.01));
      }
      LinePoint middle = line.get(line.size() / 2);
      double along = middle.alongMetres();
      assertThat(curve.lengthMetres(offset, along - 10, along + 10)).isBetween(0.9, 20.001);
      assertThat(curve.line(offset, along - 10, along + 10)).hasSizeGreaterThan(1);
    }
  }

  @ParameterizedTest
  @ValueSource(doubles = {179.2, 181})
  void refusesACurveThatNearlyTurnsBack(double span) {
    List<Coordinate> back = TestCurves.arc(0, 0, 100, span, 0.1);
    assertThatThrownBy(() -> TestCurves.through(back)).hasMessageContaining("turns back");
  }

  @Test
  void refusesACurveThatTurnsBack() {
    List<Coordinate> back = TestCurves.arc(0, 0, 100, 181, 1);
    assertThatThrownBy(() -> TestCurves.through(back)).hasMessageContaining("turns back");
    assertThat(CurveDirections.of(TestCurves.lonLat(back), TestCurves.PLANE).spanRadians())
        .isCloseTo(Math.toRadians(180), within(1e-9));
  }

  private static Coordinate lonLat(double east, double north) {
    return TestCurves.PLANE.toLonLat(east, north);
  }

  private static LineString drawn(List<LinePoint> line) {
    return FACTORY.createLineString(
        line.stream().map(p -> new Coordinate(p.x(), p.y())).toArray(Coordinate[]::new));
  }

  private static double distance(Geometry line, double x, double y) {
    return line.distance(FACTORY.createPoint(new Coordinate(x, y)));
  }

  private static double farthest(Geometry from, Geometry to) {
    double farthest = 0;
    for (Coordinate at : from.getCoordinates()) {
      farthest = Math.max(farthest, distance(to, at.x, at.y));
    }
    return farthest;
  }

  /** The shortest way on the ground to a line drawn straight in longitude and latitude. */
  private static double onGround(Coordinate at, List<Coordinate> line) {
    double least = Double.POSITIVE_INFINITY;
    for (int i = 1; i < line.size(); i++) {
      Coordinate a = line.get(i - 1);
      Coordinate b = line.get(i);
      double low = 0;
      double high = 1;
      for (int k = 0; k < 60; k++) {
        double p = low + (high - low) / 3;
        double q = high - (high - low) / 3;
        if (ground(at, a, b, p) < ground(at, a, b, q)) {
          high = q;
        } else {
          low = p;
        }
      }
      least = Math.min(least, ground(at, a, b, low));
    }
    return least;
  }

  private static double ground(Coordinate at, Coordinate a, Coordinate b, double t) {
    return EARTH.Inverse(at.y, at.x, a.y + t * (b.y - a.y), a.x + t * (b.x - a.x)).s12;
  }
}
