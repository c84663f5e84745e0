package org.lynchet.geometry.coverage;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Random;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.Geometry;

/**
 * What rounding to 9 decimals of a degree, about 0.1 mm, does to fine cells. The laws that {@link
 * TestField#cut} checks hold after rounding too.
 */
class RoundingTest {

  @Test
  @DisplayName("vertices within 0.1 mm along an edge become one")
  void nearVerticesAreMerged() {
    Coverage coverage =
        TestField.of("POLYGON ((0 0, 10.00003 0, 20 0, 20 20, 10.00003 20, 0 20, 0 0))").cut(10);
    assertThat(coverage.inOffsetFrame(coverage.cells().get(0)).getNumPoints()).isEqualTo(5);
    assertThat(coverage.inOffsetFrame(coverage.cells().get(1)).getNumPoints()).isEqualTo(7);
    Coverage rounded = coverage.rounded();
    assertThat(rounded.inLonLat(rounded.cells().get(1)).getNumPoints()).isLessThanOrEqualTo(6);
  }

  @Test
  @DisplayName("a cell thinner than the grid vanishes, its neighbours still match")
  void thinCellVanishes() {
    Coverage coverage =
        TestField.of("POLYGON ((0 0, 10.00002 0, 10.00002 20, 0 20, 0 0))").cut(5, 10);
    assertThat(coverage.cells()).hasSize(3);
    assertThat(coverage.rounded().cells()).hasSizeBetween(2, 3);
  }

  @Test
  @DisplayName("a neck thinner than the grid parts a cell in two")
  void thinNeckParts() {
    Coverage coverage =
        TestField.of(
                "POLYGON ((0 0, 8 0, 8 5, 4.00002 10, 8 15, 8 20, 0 20, 0 15, 4 10, 0 5, 0 0))")
            .cut(-5);
    assertThat(coverage.cells()).hasSize(1);
    assertThat(coverage.rounded().cells()).hasSizeBetween(1, 2);
  }

  @Test
  @DisplayName("a cell with thousands of vertices has no repeated places either")
  void largeCells() {
    Geometry field = RandomFields.star(new Random(5), 0, 0, 0.9, 4000);
    TestField.of(field).cut(-0.3, 0.2);
  }

  @Test
  @DisplayName("rounding twice changes nothing")
  void isIdempotent() {
    Coverage once = TestField.of(RandomFields.holed(new Random(8))).cut(100, 101.5, 110).rounded();
    Coverage twice = once.rounded();
    for (int i = 0; i < once.cells().size(); i++) {
      assertThat(twice.inLonLat(twice.cells().get(i)).toText())
          .isEqualTo(once.inLonLat(once.cells().get(i)).toText());
    }
  }
}
