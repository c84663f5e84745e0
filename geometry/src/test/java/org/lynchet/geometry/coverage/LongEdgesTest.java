package org.lynchet.geometry.coverage;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import net.sf.geographiclib.Geodesic;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.lynchet.geometry.frame.PlaneFrame;
import org.lynchet.geometry.guidance.OffsetFrame;

/**
 * Strip edges stay straight on the ground to 1 mm for readers that draw them straight in longitude
 * and latitude: WGS 84 by GeographicLib, Karney 2013, doi:10.1007/s00190-012-0578-z.
 */
class LongEdgesTest {

  @ParameterizedTest
  @CsvSource({"43, 90", "43, 45", "-45, 270", "60, 120", "10, 90", "43, 13"})
  void middlesOfEdgesAreWithinAMillimetreOfTheStraightLine(double latitude, double heading) {
    PlaneFrame plane = PlaneFrame.centredOn(-94.1, latitude);
    OffsetFrame frame = OffsetFrame.onHeading(plane, new Coordinate(-94.1, latitude), heading);
    Geometry boundary = TestField.read("POLYGON ((-50 -805, 50 -805, 50 805, -50 805, -50 -805))");
    boundary.apply((Coordinate at) -> at.setCoordinate(frame.toLonLat(at.x, at.y)));
    boundary.geometryChanged();
    Coverage rounded =
        Coverage.cut(
                Regions.whole(FieldShape.of(boundary, frame)), new double[] {-30, -9.144, 0, 9.144})
            .rounded();
    int edges = 0;
    for (Cell cell : rounded.cells()) {
      Coordinate[] drawn = rounded.inLonLat(cell).getCoordinates();
      Coordinate[] exact = rounded.inOffsetFrame(cell).getCoordinates();
      for (int i = 1; i < drawn.length; i++) {
        double offset = exact[i].x;
        if (Math.abs(offset) < 40 && Math.abs(exact[i - 1].x - offset) < 1e-6) {
          double middleLon = (drawn[i].x + drawn[i - 1].x) / 2;
          double middleLat = (drawn[i].y + drawn[i - 1].y) / 2;
          Coordinate on = frame.toLonLat(offset, frame.toOffset(middleLon, middleLat).y);
          double off = Geodesic.WGS84.Inverse(on.y, on.x, middleLat, middleLon).s12;
          assertThat(off).as("at offset %s", offset).isLessThan(1e-3);
          edges++;
        }
      }
    }
    assertThat(edges).isGreaterThanOrEqualTo(8);
  }

  @Test
  void divisionsAreSharedByBothSides() {
    Coverage coverage =
        TestField.of("POLYGON ((0 -2000, 40 -2000, 40 2000, 0 2000, 0 -2000))").cut(10, 20);
    double[] left = onCut(coverage, 0);
    assertThat(left).hasSizeGreaterThan(10);
    assertThat(onCut(coverage, 1)).containsExactly(left, within(0.0));
  }

  /** Where along the AB line a cell has vertices on the cut at 10. */
  private static double[] onCut(Coverage coverage, int cell) {
    return Arrays.stream(coverage.inOffsetFrame(coverage.cells().get(cell)).getCoordinates())
        .filter(at -> at.x == 10)
        .mapToDouble(at -> at.y)
        .distinct()
        .sorted()
        .toArray();
  }
}
