package org.lynchet.geometry.coverage;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.ShrinkingMode;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.LineString;
import org.locationtech.jts.operation.overlayng.OverlayNG;
import org.locationtech.jts.operation.overlayng.OverlayNGRobust;

/** Lengths of rows and areas between offsets, by hand and against JTS OverlayNG. */
class CrossSectionTest {

  @Test
  void ofATriangle() {
    CrossSection section =
        TestField.of("POLYGON ((0 0, 8 0, 0 8, 0 0))").regions().insideHeadland();
    assertThat(section.isEmpty()).isFalse();
    assertThat(section.minOffsetMetres()).isCloseTo(0, within(1e-8));
    assertThat(section.maxOffsetMetres()).isCloseTo(8, within(1e-8));
    assertThat(section.lengthsMetres(new double[] {-1, 1, 4, 7, 9}))
        .containsExactly(new double[] {0, 7, 4, 1, 0}, within(1e-7));
    assertThat(section.areasSquareMetres(new double[] {-1, 4, 9}))
        .containsExactly(new double[] {0, 24, 8, 0}, within(1e-7));
  }

  @Test
  void aRowThroughAHoleAndTwoPartsIsAddedUp() {
    CrossSection section =
        TestField.of(
                "MULTIPOLYGON (((0 0, 8 0, 8 8, 0 8, 0 0), (2 2, 6 2, 6 6, 2 6, 2 2)),"
                    + " ((3 10, 9 10, 9 15, 3 15, 3 10)))")
            .regions()
            .insideHeadland();
    assertThat(section.lengthsMetres(new double[] {1, 4, 7, 8.5}))
        .containsExactly(new double[] {8, 4 + 5, 8 + 5, 5}, within(1e-7));
    assertThat(section.areasSquareMetres(new double[] {}))
        .containsExactly(new double[] {64 - 16 + 30}, within(1e-6));
  }

  @Test
  void headlandIsNotMeasured() {
    Regions regions =
        TestField.of("POLYGON ((0 0, 30 0, 30 20, 0 20, 0 0))").headland(4, true).regions();
    assertThat(regions.insideHeadland().lengthsMetres(new double[] {2, 15}))
        .containsExactly(new double[] {0, 12}, within(1e-6));
    Regions filled =
        TestField.of("POLYGON ((0 0, 30 0, 30 20, 0 20, 0 0))").headland(12, true).regions();
    assertThat(filled.insideHeadland().isEmpty()).isTrue();
    assertThat(filled.insideHeadland().lengthsMetres(new double[] {2, 15})).containsOnly(0);
  }

  @Property(seed = "21", tries = 60, shrinking = ShrinkingMode.OFF)
  void lengthsAreThoseOfJts(@ForAll long seed) {
    Random random = new Random(seed);
    TestField test = TestField.of(RandomFields.any(random));
    if (random.nextBoolean()) {
      RandomFields.zones(random, test.inMetres().getEnvelopeInternal()).forEach(test::zone);
    }
    Geometry field = test.inMetres();
    Envelope reach = field.getEnvelopeInternal();
    double[] offsets = TestField.every(7.3, reach.getMinX() - 3, reach.getMaxX() + 3);
    double[] lengths = test.regions().insideHeadland().lengthsMetres(offsets);
    for (int i = 0; i < offsets.length; i++) {
      LineString row =
          field
              .getFactory()
              .createLineString(
                  new Coordinate[] {
                    new Coordinate(offsets[i], reach.getMinY() - 1),
                    new Coordinate(offsets[i], reach.getMaxY() + 1)
                  });
      double expected = OverlayNGRobust.overlay(row, field, OverlayNG.INTERSECTION).getLength();
      assertThat(lengths[i]).as("row at %s", offsets[i]).isCloseTo(expected, within(1e-5));
    }
  }
}
