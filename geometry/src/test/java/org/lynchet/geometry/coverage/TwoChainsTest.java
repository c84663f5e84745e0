package org.lynchet.geometry.coverage;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Random;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.locationtech.jts.algorithm.Orientation;
import org.locationtech.jts.geom.Polygon;
import org.lynchet.geometry.guidance.OffsetFrame;

/** Holds what two chains say of a ring against the validity test of JTS. */
class TwoChainsTest {
  private static final double LONGITUDE = -94.1;
  private static final double LATITUDE = 43.5;

  /** On a grid of 5 x 5 places nearly every case occurs: repeats, folds, edges one over another. */
  @ParameterizedTest
  @EnumSource(Rings.Place.class)
  void whatIsCertainIsValidAndOnTheLeft(Rings.Place place) {
    Random random = new Random(20270502L);
    int certain = 0;
    int valid = 0;
    for (int i = 0; i < 100_000; i++) {
      Vertices vertices = new Vertices(TestField.FRAME, 16);
      int[] ring = new int[3 + random.nextInt(4)];
      for (int v = 0; v < ring.length; v++) {
        ring[v] = add(vertices, random.nextInt(5), random.nextInt(5));
      }
      Polygon polygon = Rings.polygon(vertices, new int[][] {ring}, place);
      boolean isValid =
          polygon.isValid() && Orientation.isCCW(polygon.getExteriorRing().getCoordinates());
      valid += isValid ? 1 : 0;
      if (new TwoChains(vertices, place).areCertain(ring)) {
        certain++;
        assertThat(isValid).as(polygon.toText()).isTrue();
      }
    }
    // Of rings so small few are more than two chains.
    assertThat(certain).isGreaterThan(valid * 2 / 3);
  }

  /** A cell of a strip, its cut edges drawn to and fro by the rounding to 9 decimals. */
  @ParameterizedTest
  @ValueSource(doubles = {0, 13, 90, 222.5})
  void cellsOfStripsAreCertain(double heading) {
    OffsetFrame frame = TestField.frame(heading);
    Vertices vertices = new Vertices(frame, 16);
    double[][] places = {{0, 0}, {3, 4}, {9, 1}, {9, 150}, {9, 300}, {5, 290}, {0, 301}, {0, 150}};
    int[] ring = new int[places.length];
    for (int i = 0; i < ring.length; i++) {
      ring[i] = vertices.add(places[i][0], places[i][1]);
    }
    vertices.round();
    assertThat(new TwoChains(vertices, Rings.Place.OFFSET).areCertain(ring)).isTrue();
    assertThat(new TwoChains(vertices, Rings.Place.LON_LAT).areCertain(ring)).isTrue();
  }

  /** In longitude and latitude neighbours on the grid are the least that is written apart. */
  private static int add(Vertices vertices, int x, int y) {
    return vertices.add(x, y, LONGITUDE + x * 1e-9, LATITUDE + y * 1e-9);
  }
}
