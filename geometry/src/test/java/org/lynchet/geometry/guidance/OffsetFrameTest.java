package org.lynchet.geometry.guidance;

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
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.locationtech.jts.geom.Coordinate;
import org.lynchet.geometry.frame.PlaneFrame;

/**
 * Holds offsets against geodesics on WGS 84: GeographicLib, Karney 2013,
 * doi:10.1007/s00190-012-0578-z.
 */
class OffsetFrameTest {
  private static final double LONGITUDE = -94.1;
  private static final Geodesic EARTH = Geodesic.WGS84;

  /** Strips 9.144 m apart on 5 km: the distance from the AB line's own geodesic. */
  @ParameterizedTest
  @CsvSource({
    "-45, 0",
    "-45, 90",
    "-45, 137",
    "0, 0",
    "0, 90",
    "0, 222",
    "42, 0",
    "42, 90",
    "42, 13",
    "42, 301",
    "60, 0",
    "60, 90",
    "60, 45"
  })
  void offsetsAreDistancesFromTheLineOnTheGround(double latitude, double heading) {
    PlaneFrame plane = PlaneFrame.centredOn(LONGITUDE, latitude);
    Coordinate a = new Coordinate(LONGITUDE, latitude);
    OffsetFrame frame = OffsetFrame.onHeading(plane, a, heading);
    for (double along : new double[] {-2500, -1000, 0, 700, 2500}) {
      for (double offset : new double[] {-2496.312, -9.144, -1.524, 0, 9.144, 100.584, 2496.312}) {
        Coordinate at = frame.toLonLat(offset, along);
        // 1 mm, the goal on the ground; here the line and the place are up to 2.5 km from A
        assertThat(distanceRightOf(a, heading, at)).isCloseTo(offset, within(1e-3));
      }
      Coordinate left = frame.toLonLat(2496.312 - 9.144, along);
      Coordinate right = frame.toLonLat(2496.312, along);
      double width = EARTH.Inverse(left.y, left.x, right.y, right.x).s12;
      assertThat(width).isCloseTo(9.144, within(1e-5));
    }
  }

  /** A parallel line: what lay on it lies that much less to the right, and as far along. */
  @ParameterizedTest
  @ValueSource(doubles = {9.144, -100.3, 0})
  void movedRight(double metres) {
    PlaneFrame plane = PlaneFrame.centredOn(LONGITUDE, 43);
    OffsetFrame frame = OffsetFrame.onHeading(plane, new Coordinate(LONGITUDE, 43), 77);
    OffsetFrame moved = frame.movedRight(metres);
    Coordinate at = frame.toLonLat(250, -400);
    Coordinate seen = moved.toOffset(at.x, at.y);
    assertThat(seen.x).isCloseTo(250 - metres, within(1e-7));
    assertThat(seen.y).isCloseTo(-400, within(1e-7));
    assertThat(distanceRightOf(new Coordinate(LONGITUDE, 43), 77, moved.toLonLat(0, 0)))
        .isCloseTo(metres, within(1e-4));
  }

  /** A stays, and the new heading is that of a geodesic from A. */
  @ParameterizedTest
  @CsvSource({"10, 30", "350, 20", "90, -100", "0, 180"})
  void turned(double heading, double degrees) {
    PlaneFrame plane = PlaneFrame.centredOn(LONGITUDE - 0.01, 43);
    Coordinate a = new Coordinate(LONGITUDE, 43);
    OffsetFrame turned = OffsetFrame.onHeading(plane, a, heading).turned(Math.toRadians(degrees));
    double expected = (heading + degrees + 360) % 360;
    assertThat(turned.headingDegrees()).isCloseTo(expected, within(1e-9));
    GeodesicData on = EARTH.Direct(a.y, a.x, expected, 1000);
    Coordinate seen = turned.toOffset(on.lon2, on.lat2);
    assertThat(seen.x).isCloseTo(0, within(1e-3));
    assertThat(seen.y).isCloseTo(1000, within(1e-3));
  }

  /** Distance to the nearest place of a geodesic, by ternary search; positive to its right. */
  private static double distanceRightOf(Coordinate a, double azimuth, Coordinate at) {
    double low = -8000;
    double high = 8000;
    for (int i = 0; i < 120; i++) {
      double p = low + (high - low) / 3;
      double q = high - (high - low) / 3;
      if (distance(a, azimuth, p, at) < distance(a, azimuth, q, at)) {
        high = q;
      } else {
        low = p;
      }
    }
    GeodesicData nearest = EARTH.Direct(a.y, a.x, azimuth, (low + high) / 2);
    GeodesicData to = EARTH.Inverse(nearest.lat2, nearest.lon2, at.y, at.x);
    double side = Math.sin(Math.toRadians(to.azi1 - nearest.azi2));
    return to.s12 * Math.signum(side);
  }

  private static double distance(Coordinate a, double azimuth, double along, Coordinate at) {
    GeodesicData on = EARTH.Direct(a.y, a.x, azimuth, along);
    return EARTH.Inverse(on.lat2, on.lon2, at.y, at.x).s12;
  }

  /** A and B within the field: 1e-6 degree is 0.02 mm at the end of a mile. */
  @ParameterizedTest
  @CsvSource({"-45, 0", "-45, 89", "0, 135", "42, 0", "42, 92.5", "42, 270", "60, 13", "60, 359.9"})
  void headingOfTwoPointsIsTheAzimuthOfTheGeodesicAtA(double latitude, double azimuth) {
    PlaneFrame plane = PlaneFrame.centredOn(LONGITUDE, latitude);
    GeodesicData b = EARTH.Direct(latitude, LONGITUDE, azimuth, 800);
    OffsetFrame frame =
        OffsetFrame.throughPoints(
            plane, new Coordinate(LONGITUDE, latitude), new Coordinate(b.lon2, b.lat2));
    assertThat(frame.headingDegrees()).isCloseTo(azimuth, within(1e-6));
    Coordinate atB = frame.toOffset(b.lon2, b.lat2);
    assertThat(atB.x).isCloseTo(0, within(1e-8));
    assertThat(atB.y).isCloseTo(800, within(1e-4));
  }

  /** The plane's north is off by 0.08 degree there; the line's heading is not. */
  @ParameterizedTest
  @CsvSource({"0, 10000", "90, 10000", "13, 10000", "187, -10000", "300, -10000"})
  void lineFarFromTheCentreKeepsItsTrueHeading(double heading, double east) {
    PlaneFrame plane = PlaneFrame.centredOn(LONGITUDE, 42);
    Coordinate a = plane.toLonLat(east, 3000);
    OffsetFrame frame = OffsetFrame.onHeading(plane, a, heading);
    assertThat(frame.headingDegrees()).isCloseTo(heading, within(1e-9));
    Coordinate b = frame.toLonLat(0, 100);
    double azimuth = EARTH.Inverse(a.y, a.x, b.y, b.x).azi1;
    assertThat(Math.IEEEremainder(azimuth - heading, 360)).isCloseTo(0, within(2e-6));
    OffsetFrame again = OffsetFrame.throughPoints(plane, a, b);
    double turned = Math.IEEEremainder(again.headingDegrees() - heading, 360);
    assertThat(turned).isCloseTo(0, within(1e-6));
  }

  @Test
  void rightIsPositiveAndAlongRisesFromAToB() {
    PlaneFrame plane = PlaneFrame.centredOn(LONGITUDE, 42);
    OffsetFrame east =
        OffsetFrame.throughPoints(
            plane, new Coordinate(LONGITUDE, 42), new Coordinate(LONGITUDE + 0.01, 42));
    Coordinate south = east.toOffset(LONGITUDE + 0.005, 41.999);
    assertThat(south.x).isCloseTo(111, within(1.0)); // a degree of latitude is about 111 km
    assertThat(south.y).isPositive();
  }

  @ParameterizedTest
  @ValueSource(doubles = {0, 13, 90, 211.7, 359})
  void roundTrips(double heading) {
    PlaneFrame plane = PlaneFrame.centredOn(LONGITUDE, 42);
    OffsetFrame frame = OffsetFrame.onHeading(plane, new Coordinate(LONGITUDE, 42.01), heading);
    for (double offset = -5000; offset <= 5000; offset += 1250) {
      Coordinate lonLat = frame.toLonLat(offset, offset / 3 + 7);
      Coordinate back = frame.toOffset(lonLat.x, lonLat.y);
      assertThat(back.x).isCloseTo(offset, within(1e-8));
      assertThat(back.y).isCloseTo(offset / 3 + 7, within(1e-8));
    }
  }

  @ParameterizedTest
  @CsvSource({"360, 0", "-10, 350", "725, 5", "0, 0", "-1e-15, 0"})
  void headingsAreFrom0To360(double given, double expected) {
    PlaneFrame plane = PlaneFrame.centredOn(LONGITUDE, 42);
    OffsetFrame frame = OffsetFrame.onHeading(plane, new Coordinate(LONGITUDE, 42), given);
    assertThat(frame.headingDegrees()).isCloseTo(expected, within(1e-9)).isBetween(0.0, 359.9999);
  }

  @Test
  void refusesALineThroughOnePoint() {
    PlaneFrame plane = PlaneFrame.centredOn(LONGITUDE, 42);
    Coordinate a = new Coordinate(LONGITUDE, 42);
    assertThatThrownBy(() -> OffsetFrame.throughPoints(plane, a, a.copy()))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessage("A equals B");
  }

  @Test
  void serialises() throws IOException, ClassNotFoundException {
    PlaneFrame plane = PlaneFrame.centredOn(LONGITUDE, 42);
    OffsetFrame frame = OffsetFrame.onHeading(plane, new Coordinate(LONGITUDE, 42.01), 13);
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    try (ObjectOutputStream out = new ObjectOutputStream(bytes)) {
      out.writeObject(frame);
    }
    try (ObjectInputStream in =
        new ObjectInputStream(new ByteArrayInputStream(bytes.toByteArray()))) {
      OffsetFrame copy = (OffsetFrame) in.readObject();
      assertThat(copy.toLonLat(100, 200)).isEqualTo(frame.toLonLat(100, 200));
      assertThat(copy.headingDegrees()).isEqualTo(frame.headingDegrees());
    }
  }
}
