package org.lynchet.geometry.coverage;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.locationtech.jts.geom.Coordinate;
import org.lynchet.geometry.frame.PlaneFrame;
import org.lynchet.geometry.guidance.OffsetFrame;

/** Holds the quick conversion against that of the projection library. */
class QuickLonLatTest {

  /** A box of half that size each way, off the frame's centre; 1e-12 degree is 1e-7 m. */
  @ParameterizedTest
  @CsvSource({"-45, 300", "0, 300", "42, 1000", "42, 10000", "60, 5000", "75, 1000", "88.9, 300"})
  void agreesWithTheFrame(double latitude, double half) {
    OffsetFrame frame = frame(latitude);
    QuickLonLat quick =
        QuickLonLat.over(frame, half / 3 - half, half / 3 + half, -half, half).orElseThrow();
    Random random = new Random(20270503);
    for (int i = 0; i < 1000; i++) {
      double x = half / 3 + half * (2 * random.nextDouble() - 1);
      double y = half * (2 * random.nextDouble() - 1);
      Coordinate exact = frame.toLonLat(x, y);
      assertThat(quick.longitude(x, y)).isCloseTo(exact.x, within(1.5e-12));
      assertThat(quick.latitude(x, y)).isCloseTo(exact.y, within(1.5e-12));
    }
  }

  /** Meridians come together so fast there that degree 4 does not do. */
  @ParameterizedTest
  @CsvSource({"88.9, 10000", "-88.5, 10000"})
  void givesUpNearAPole(double latitude, double half) {
    Optional<QuickLonLat> quick = QuickLonLat.over(frame(latitude), -half, half, -half, half);
    assertThat(quick).isEmpty();
  }

  private static OffsetFrame frame(double latitude) {
    return OffsetFrame.onHeading(
        PlaneFrame.centredOn(-94.1, latitude), new Coordinate(-94.1, latitude), 13);
  }
}
