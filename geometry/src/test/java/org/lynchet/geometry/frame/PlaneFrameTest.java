package org.lynchet.geometry.frame;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.ObjectInputStream;
import java.io.ObjectOutputStream;
import net.sf.geographiclib.Geodesic;
import net.sf.geographiclib.GeodesicData;
import net.sf.geographiclib.PolygonArea;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.locationtech.jts.geom.Coordinate;

/**
 * Holds the plane against geodesics on WGS 84: GeographicLib, C. F. F. Karney, Algorithms for
 * geodesics, J. Geodesy 87, 43-55 (2013), doi:10.1007/s00190-012-0578-z.
 */
class PlaneFrameTest {
  private static final double LONGITUDE = 11.3;
  private static final Geodesic EARTH = Geodesic.WGS84;

  @ParameterizedTest
  @ValueSource(doubles = {-75, -45, 0, 42, 60, 75})
  void roundTripsWithin10Kilometres(double latitude) {
    PlaneFrame frame = PlaneFrame.centredOn(LONGITUDE, latitude);
    for (int east = -10_000; east <= 10_000; east += 2_500) {
      for (int north = -10_000; north <= 10_000; north += 2_500) {
        Coordinate lonLat = frame.toLonLat(east, north);
        Coordinate back = frame.toPlane(lonLat.x, lonLat.y);
        assertThat(back.x).isCloseTo(east, within(1e-8));
        assertThat(back.y).isCloseTo(north, within(1e-8));
      }
    }
  }

  @ParameterizedTest
  @ValueSource(doubles = {-45, 0, 42, 60})
  void lengthsOnA5KilometreFieldAreThoseOnTheGround(double latitude) {
    PlaneFrame frame = PlaneFrame.centredOn(LONGITUDE, latitude);
    for (double azimuth = 0; azimuth < 360; azimuth += 15) {
      for (double x : new double[] {-2500, 0, 2500}) {
        Coordinate from = frame.toLonLat(x, 1000);
        Coordinate to =
            frame.toLonLat(
                x + 9.144 * Math.sin(Math.toRadians(azimuth)),
                1000 + 9.144 * Math.cos(Math.toRadians(azimuth)));
        // a strip's width: 1e-6 m
        assertThat(EARTH.Inverse(from.y, from.x, to.y, to.x).s12).isCloseTo(9.144, within(1e-6));
      }
    }
    Coordinate west = frame.toLonLat(-2500, 0);
    Coordinate east = frame.toLonLat(2500, 0);
    // x^2 / 2 R^2 averaged over the line is 0.026 parts per million: 0.13 mm of 5 km
    assertThat(EARTH.Inverse(west.y, west.x, east.y, east.x).s12).isCloseTo(5000, within(2e-4));
  }

  @ParameterizedTest
  @ValueSource(doubles = {-45, 0, 42, 60})
  void areaOfA5KilometreFieldIsThatOnTheGround(double latitude) {
    PlaneFrame frame = PlaneFrame.centredOn(LONGITUDE, latitude);
    PolygonArea ground = new PolygonArea(EARTH, false);
    double[][] corners = {{-2500, -2500}, {2500, -2500}, {2500, 2500}, {-2500, 2500}};
    for (int side = 0; side < 4; side++) {
      for (int step = 0; step < 100; step++) {
        double t = step / 100.0;
        double[] a = corners[side];
        double[] b = corners[(side + 1) % 4];
        Coordinate at = frame.toLonLat(a[0] + t * (b[0] - a[0]), a[1] + t * (b[1] - a[1]));
        ground.AddPoint(at.y, at.x);
      }
    }
    assertThat(ground.Compute().area).isCloseTo(25e6, within(25e6 * 1e-6));
  }

  /** Offsets of places on the central meridian and off it, along geodesics. */
  @ParameterizedTest
  @CsvSource({"42, 0, 2000", "42, 90, 2000", "42, 200, 1500", "-45, 270, 2500", "60, 45, 2500"})
  void placesAreWhereGeodesicsFromTheCentreGo(double latitude, double azimuth, double metres) {
    PlaneFrame frame = PlaneFrame.centredOn(LONGITUDE, latitude);
    GeodesicData to = EARTH.Direct(latitude, LONGITUDE, azimuth, metres);
    Coordinate at = frame.toPlane(to.lon2, to.lat2);
    double heading = Math.toRadians(azimuth);
    // 0.1 mm over some kilometres
    assertThat(at.x).isCloseTo(metres * Math.sin(heading), within(1e-4));
    assertThat(at.y).isCloseTo(metres * Math.cos(heading), within(1e-4));
  }

  @Test
  void northIsTrueAtTheCentreAndTurnsWithTheMeridianBesideIt() {
    PlaneFrame frame = PlaneFrame.centredOn(LONGITUDE, 42);
    assertThat(frame.trueNorthRadians(LONGITUDE, 42.01)).isCloseTo(0, within(1e-12));
    // Convergence of meridians: (lon - lon0) sin(lat) near the centre; meridians lean to the
    // centre.
    double expected = -Math.toRadians(0.1) * Math.sin(Math.toRadians(42));
    assertThat(frame.trueNorthRadians(LONGITUDE + 0.1, 42)).isCloseTo(expected, within(1e-8));
    assertThat(frame.trueNorthRadians(LONGITUDE - 0.1, 42)).isCloseTo(-expected, within(1e-8));
  }

  @ParameterizedTest
  @CsvSource({"180.1, 0", "-181, 0", "0, 89.1", "0, -90", "NaN, 0", "0, NaN", "Infinity, 0"})
  void refusesCentresOffTheMap(double longitude, double latitude) {
    assertThatThrownBy(() -> PlaneFrame.centredOn(longitude, latitude))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining(String.valueOf(longitude))
        .hasMessageContaining(String.valueOf(latitude));
  }

  @Test
  void theDateLineIsNoBorder() {
    PlaneFrame frame = PlaneFrame.centredOn(179.999, -16.5);
    Coordinate east = frame.toPlane(-179.999, -16.5);
    double metres = EARTH.Inverse(-16.5, 179.999, -16.5, -179.999).s12;
    assertThat(east.x).isCloseTo(metres, within(1e-4));
  }

  @Test
  void serialises() throws IOException, ClassNotFoundException {
    PlaneFrame frame = PlaneFrame.centredOn(LONGITUDE, 42);
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    try (ObjectOutputStream out = new ObjectOutputStream(bytes)) {
      out.writeObject(frame);
    }
    try (ObjectInputStream in =
        new ObjectInputStream(new ByteArrayInputStream(bytes.toByteArray()))) {
      PlaneFrame copy = (PlaneFrame) in.readObject();
      assertThat(copy.toPlane(11.31, 42.01)).isEqualTo(frame.toPlane(11.31, 42.01));
      assertThat(copy.centreLatitudeDegrees()).isEqualTo(42);
    }
  }
}
