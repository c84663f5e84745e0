package org.lynchet.prescription.picture;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.locationtech.jts.geom.Coordinate;
import org.lynchet.geometry.frame.PlaneFrame;
import org.lynchet.geometry.guidance.OffsetFrame;

class MapPlaneTest {
  private static final Box BOX = new Box(100, 50, 600, 550);

  @ParameterizedTest
  @CsvSource({"0", "37", "90", "181.5", "300"})
  void putsNorthAboveAndEastToTheRight(double heading) {
    PlaneFrame frame = PlaneFrame.centredOn(SampleLayouts.LONGITUDE, SampleLayouts.LATITUDE);
    Coordinate a = new Coordinate(SampleLayouts.LONGITUDE, SampleLayouts.LATITUDE);
    MapPlane plane =
        MapPlane.fitting(
            List.of(new Coordinate(-300, -200), new Coordinate(300, 200)),
            OffsetFrame.onHeading(frame, a, heading),
            BOX);
    Coordinate here = plane.fromLonLat(a);
    Coordinate north = plane.fromLonLat(new Coordinate(a.x, a.y + 0.001));
    Coordinate east = plane.fromLonLat(new Coordinate(a.x + 0.001, a.y));
    assertThat(north.y).isLessThan(here.y);
    assertThat(north.x).isCloseTo(here.x, within(1e-3));
    assertThat(east.x).isGreaterThan(here.x);
    assertThat(east.y).isCloseTo(here.y, within(1e-3));
    // 0.001 degree of latitude at 43.55 is 111.11 m on WGS 84 (Karney 2013, GeographicLib)
    assertThat((here.y - north.y) / plane.pointsPerMetre()).isCloseTo(111.11, within(0.02));
  }

  @ParameterizedTest
  @CsvSource({"0", "45", "200"})
  void fillsTheBoxAndKeepsInside(double heading) {
    PlaneFrame frame = PlaneFrame.centredOn(SampleLayouts.LONGITUDE, SampleLayouts.LATITUDE);
    Coordinate a = new Coordinate(SampleLayouts.LONGITUDE, SampleLayouts.LATITUDE);
    List<Coordinate> offsets = List.of(new Coordinate(0, 0), new Coordinate(500, 100));
    MapPlane plane = MapPlane.fitting(offsets, OffsetFrame.onHeading(frame, a, heading), BOX);
    Coordinate from = plane.fromOffset(0, 0);
    Coordinate to = plane.fromOffset(500, 100);
    double fill =
        Math.max(Math.abs(to.x - from.x) / BOX.width(), Math.abs(to.y - from.y) / BOX.height());
    assertThat(fill).isCloseTo(1, within(1e-9));
    assertThat((from.x + to.x) / 2).isCloseTo(BOX.centreX(), within(1e-9));
    assertThat((from.y + to.y) / 2).isCloseTo(BOX.centreY(), within(1e-9));
  }
}
