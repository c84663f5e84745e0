package org.lynchet.integration.witness.ground;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;

class GroundPlaneTest {
  private static final GeometryFactory FACTORY = new GeometryFactory();

  /** Geodesics are straight, distances from the centre true to (d/R)^2: 0.4 mm on 2.5 km. */
  @ParameterizedTest
  @CsvSource({"-45, 13", "0, 90", "42, 271", "60, 45"})
  void geodesicsAreStraight(double latitude, double azimuth) {
    Coordinate centre = new Coordinate(-94.1, latitude);
    Coordinate from = GroundTruth.point(centre, azimuth, 2500);
    Coordinate to = GroundTruth.point(from, azimuth + 250, 5000);
    Coordinate middle = GroundTruth.point(from, azimuth + 250, 1234);
    Geometry line = FACTORY.createLineString(new Coordinate[] {from, middle, to});
    Coordinate[] plane = GroundPlane.at(centre).project(line).getCoordinates();
    Geometry straight = FACTORY.createLineString(new Coordinate[] {plane[0], plane[2]});
    assertThat(straight.distance(FACTORY.createPoint(plane[1]))).isLessThan(1e-5); // 0.01 mm
    assertThat(Math.hypot(plane[0].x, plane[0].y)).isCloseTo(2500, within(4e-4));
    assertThat(Math.toDegrees(Math.atan2(plane[0].x, plane[0].y)))
        .isCloseTo(azimuth > 180 ? azimuth - 360 : azimuth, within(1e-9));
  }
}
