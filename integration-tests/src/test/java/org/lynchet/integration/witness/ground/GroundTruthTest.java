package org.lynchet.integration.witness.ground;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.io.ParseException;
import org.locationtech.jts.io.WKTReader;

/** The measuring tape is itself measured, against figures that need no geodesic routine. */
class GroundTruthTest {
  private static final double A = 6378137.0;
  private static final double F = 1 / 298.257223563;

  /** An eighth of the ellipsoid, whose area has a closed form: the authalic sphere's. */
  @Test
  void octantHasAnEighthOfTheEllipsoid() throws ParseException {
    Geometry octant = new WKTReader().read("POLYGON((0 0,90 0,0 90,0 0))");
    assertThat(GroundTruth.areaSquareMetres(octant))
        .isCloseTo(ellipsoidArea() / 8, within(1.0)); // of 6.4e13 m2
  }

  @Test
  void holesCountOffWhicheverWayTheyRun() throws ParseException {
    WKTReader reader = new WKTReader();
    double whole = GroundTruth.areaSquareMetres(reader.read("POLYGON((0 0,3 0,3 3,0 3,0 0))"));
    double hole = GroundTruth.areaSquareMetres(reader.read("POLYGON((1 1,2 1,2 2,1 2,1 1))"));
    String left = "POLYGON((0 0,3 0,3 3,0 3,0 0),(1 1,2 1,2 2,1 2,1 1))";
    String right = "POLYGON((0 0,3 0,3 3,0 3,0 0),(1 1,1 2,2 2,2 1,1 1))";
    for (String holed : new String[] {left, right}) {
      assertThat(GroundTruth.areaSquareMetres(reader.read(holed)))
          .isCloseTo(whole - hole, within(1e-3));
    }
  }

  /** A square of 100 m laid by geodesics is 1 ha, at any latitude. */
  @ParameterizedTest
  @CsvSource({"-45", "0", "42", "60"})
  void squareOfHundredMetresIsOneHectare(double latitude) {
    Coordinate sw = new Coordinate(-94, latitude);
    Coordinate se = GroundTruth.point(sw, 90, 100);
    Coordinate nw = GroundTruth.point(sw, 0, 100);
    Coordinate ne = GroundTruth.point(se, GroundTruth.azimuthDegrees(se, sw) + 90, 100);
    Geometry square = new GeometryFactory().createPolygon(new Coordinate[] {sw, se, ne, nw, sw});
    assertThat(GroundTruth.areaSquareMetres(square)).isCloseTo(10_000, within(1e-3));
  }

  /** The series for the bow: L^2 tan(latitude) / 8R; R here is the prime vertical's radius. */
  @ParameterizedTest
  @CsvSource({"42, 800", "42, 5000", "60, 5000", "-45, 5000"})
  void bowOfAnEastwardEdge(double latitude, double length) {
    double n = A / Math.sqrt(1 - F * (2 - F) * Math.pow(Math.sin(Math.toRadians(latitude)), 2));
    double degrees = Math.toDegrees(length / (n * Math.cos(Math.toRadians(latitude))));
    double bow =
        GroundTruth.midEdgeBowMetres(
            new Coordinate(0, latitude), new Coordinate(degrees, latitude));
    double expected = length * length * Math.abs(Math.tan(Math.toRadians(latitude))) / (8 * n);
    assertThat(bow).isCloseTo(expected, within(1e-5)); // 0.01 mm
  }

  @Test
  void noBowOnAMeridian() {
    assertThat(GroundTruth.midEdgeBowMetres(new Coordinate(5, 42), new Coordinate(5, 42.05)))
        .isLessThan(1e-8);
  }

  /** Closed form of the surface of an oblate ellipsoid of revolution. */
  private static double ellipsoidArea() {
    double e = Math.sqrt(F * (2 - F));
    double b = A * (1 - F);
    double atanh = Math.log((1 + e) / (1 - e)) / 2;
    return 2 * Math.PI * (A * A + b * b * atanh / e);
  }
}
