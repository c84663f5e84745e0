package org.lynchet.geometry.guidance;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import net.sf.geographiclib.Geodesic;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.locationtech.jts.geom.Coordinate;
import org.lynchet.geometry.frame.PlaneFrame;

/** How far lines bow when they are drawn straight in longitude and latitude, on WGS 84. */
class LineBowTest {
  private static final double LONGITUDE = -94.1;

  @Test
  void anEastWestMileAt43NorthBowsBy47Millimetres() {
    OffsetFrame frame = frame(43, 90);
    assertThat(bow(frame, 1609.344)).isCloseTo(0.047, within(0.001));
    assertThat(frame.longestWithinBowMetres(0.0472)).isCloseTo(1609.344, within(15.0));
  }

  /** The formula is a series' first term: a percent is enough for its use. */
  @ParameterizedTest
  @CsvSource({
    "43, 90, 0.0005",
    "43, 45, 0.0005",
    "43, 13, 0.001",
    "-45, 120, 0.0005",
    "60, 90, 0.01",
    "60, 200, 0.0005",
    "10, 90, 0.0005"
  })
  void theLongestLineBowsByThatMuch(double latitude, double heading, double bowMetres) {
    OffsetFrame frame = frame(latitude, heading);
    double longest = frame.longestWithinBowMetres(bowMetres);
    assertThat(bow(frame, longest)).isCloseTo(bowMetres, within(0.02 * bowMetres));
  }

  @Test
  void northSouthLinesAndTheEquatorDoNotBow() {
    assertThat(frame(43, 0).longestWithinBowMetres(0.0005)).isGreaterThan(1e9);
    assertThat(frame(0, 90).longestWithinBowMetres(0.0005)).isInfinite();
  }

  private static OffsetFrame frame(double latitude, double heading) {
    PlaneFrame plane = PlaneFrame.centredOn(LONGITUDE, latitude);
    return OffsetFrame.onHeading(plane, new Coordinate(LONGITUDE, latitude), heading);
  }

  /** Distance on the ground, across the line, from its middle to the middle as readers draw it. */
  private static double bow(OffsetFrame frame, double length) {
    Coordinate a = frame.toLonLat(0, -length / 2);
    Coordinate b = frame.toLonLat(0, length / 2);
    Coordinate drawn = frame.toOffset((a.x + b.x) / 2, (a.y + b.y) / 2);
    Coordinate on = frame.toLonLat(0, drawn.y);
    return Geodesic.WGS84.Inverse(on.y, on.x, (a.y + b.y) / 2, (a.x + b.x) / 2).s12;
  }
}
