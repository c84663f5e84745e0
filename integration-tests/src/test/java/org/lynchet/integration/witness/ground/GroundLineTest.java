package org.lynchet.integration.witness.ground;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.locationtech.jts.geom.Coordinate;

/** Offsets from lines whose geometry is known, and from laid-out points elsewhere. */
class GroundLineTest {
  private static final double TENTH_OF_MICROMETRE = 1e-7;

  /** Equator and meridian cross at a right angle; a degree of the equator is a pi / 180. */
  @Test
  void eastOfMeridianIsRight() {
    GroundLine north = GroundLine.of(new Coordinate(10, 0), 0);
    double degree = 6378137.0 * Math.PI / 180;
    assertThat(north.offsetMetres(new Coordinate(10.01, 0)))
        .isCloseTo(degree / 100, within(TENTH_OF_MICROMETRE));
    assertThat(north.offsetMetres(new Coordinate(9.99, 0)))
        .isCloseTo(-degree / 100, within(TENTH_OF_MICROMETRE));
  }

  /** A meridian meets the equator at a right angle, so the offset is the arc of the meridian. */
  @Test
  void northOfEquatorIsLeft() {
    GroundLine east = GroundLine.of(new Coordinate(-3, 0), 90);
    assertThat(east.offsetMetres(new Coordinate(-2, 1))).isCloseTo(-meridianDegree(), within(1e-5));
    assertThat(east.alongMetres(new Coordinate(-2, 0))).isCloseTo(111319.491, within(1e-3));
  }

  /** Walk along, turn right, walk out: the tape must give both walks back. */
  @ParameterizedTest
  @CsvSource({
    "-45,  13, 2500,  12.192",
    "  0,  90, 5000,  -9.144",
    " 42, 271, 5000, 2500",
    " 60, 180,  -50, -2500",
    " 60,  45, 5000,   0.762",
  })
  void givesBackWhatWasLaidOut(double latitude, double azimuth, double along, double offset) {
    Coordinate a = new Coordinate(179.99, latitude);
    Coordinate foot = GroundTruth.point(a, azimuth, along);
    double direction =
        along > 0 ? GroundTruth.azimuthDegrees(foot, a) + 180 : GroundTruth.azimuthDegrees(foot, a);
    Coordinate point = GroundTruth.point(foot, direction + 90, offset);
    GroundLine line = GroundLine.of(a, azimuth);
    assertThat(line.offsetMetres(point)).isCloseTo(offset, within(TENTH_OF_MICROMETRE));
    assertThat(line.alongMetres(point)).isCloseTo(along, within(1e-6));
  }

  @Test
  void throughTwoPointsBothLieOnIt() {
    Coordinate a = new Coordinate(-94.1021, 43.5512);
    Coordinate b = new Coordinate(-94.0933, 43.5512);
    GroundLine line = GroundLine.through(a, b);
    assertThat(line.offsetMetres(a)).isCloseTo(0, within(TENTH_OF_MICROMETRE));
    assertThat(line.offsetMetres(b)).isCloseTo(0, within(TENTH_OF_MICROMETRE));
    assertThat(line.alongMetres(b)).isCloseTo(GroundTruth.distanceMetres(a, b), within(1e-7));
  }

  /** The arc from the equator to 1 degree: Simpson's rule over the meridian's radius. */
  private static double meridianDegree() {
    int steps = 100;
    double sum = 0;
    for (int i = 0; i <= steps; i++) {
      int weight = i == 0 || i == steps ? 1 : i % 2 == 1 ? 4 : 2;
      sum += weight * meridianRadius(Math.toRadians((double) i / steps));
    }
    return sum * Math.toRadians(1) / steps / 3;
  }

  private static double meridianRadius(double latitude) {
    double f = 1 / 298.257223563;
    double e2 = f * (2 - f);
    return 6378137.0 * (1 - e2) / Math.pow(1 - e2 * Math.pow(Math.sin(latitude), 2), 1.5);
  }
}
