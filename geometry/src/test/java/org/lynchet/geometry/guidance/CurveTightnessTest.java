package org.lynchet.geometry.guidance;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.lynchet.geometry.frame.PlaneFrame;

/** Holds the offset at which a curve becomes too tight against the radius of a circle. */
class CurveTightnessTest {
  private static final GeometryFactory FACTORY = new GeometryFactory();

  /** Left of a left-turning arc of 120 m radius lines go as far as its centre. */
  @Test
  void anArcGoesAsFarAsItsRadius() {
    Curve curve = TestCurves.through(TestCurves.arc(0, 0, 120, 90, 1));
    List<TightPlace> places = find(curve, -200, 200);
    assertThat(places).hasSize(1);
    TightPlace place = places.get(0);
    // 20 degrees of it have to go first, which they do a little before the centre: 120 (1 - cos
    // 0.5 degrees) = 5 mm for the chords
    assertThat(place.offsetMetres()).isCloseTo(-120, within(0.01));
    Coordinate at = TestCurves.PLANE.toPlane(place.longitudeDegrees(), place.latitudeDegrees());
    assertThat(Math.hypot(at.x, at.y)).isLessThan(0.1);
    assertThat(place.turnDegrees()).isBetween(20.0, 90.0);
  }

  @Test
  void aFieldThatEndsBeforeTheCentreIsTaken() {
    Curve curve = TestCurves.through(TestCurves.arc(0, 0, 120, 90, 1));
    assertThat(find(curve, 5, 200)).isEmpty();
  }

  /** Of a corner of 30 degrees every line on its inside has one, the curve itself too. */
  @Test
  void aCornerOfTheCurveIsFoundAtOnce() {
    Curve curve =
        TestCurves.through(
            List.of(new Coordinate(0, -100), new Coordinate(0, 0), new Coordinate(50, 86.6)));
    List<TightPlace> places = find(curve, -200, 200);
    assertThat(places).isNotEmpty();
    assertThat(places.get(0).offsetMetres()).isZero();
    assertThat(places.get(0).turnDegrees()).isCloseTo(30, within(0.01));
  }

  /** A bend of 15 degrees in all is taken however far: its lines have a corner of 15 degrees. */
  @Test
  void aSlightBendIsTakenHoweverFar() {
    Curve curve = TestCurves.through(TestCurves.arc(0, 0, 100, 15, 1));
    assertThat(find(curve, -400, 400)).isEmpty();
  }

  /** Noise of 2 cm on points 1 m apart, as receivers have, is no tight place. */
  @Test
  void noiseIsNoTightPlace() {
    List<Coordinate> points = TestCurves.arc(-400, 0, 400, 40, 0.15);
    for (int i = 0; i < points.size(); i += 2) {
      points.get(i).x += 0.02;
    }
    assertThat(find(TestCurves.through(points), -250, 250)).isEmpty();
  }

  private static List<TightPlace> find(Curve curve, double from, double to) {
    PlaneFrame plane = TestCurves.PLANE;
    Geometry field = FACTORY.toGeometry(new Envelope(from, to, from, to));
    field.apply(
        (Coordinate at) -> {
          Coordinate lonLat = plane.toLonLat(at.x, at.y);
          at.setCoordinate(curve.frame().toOffset(lonLat.x, lonLat.y));
        });
    field.geometryChanged();
    return new CurveTightness(curve, field).find();
  }
}
