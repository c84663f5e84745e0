package org.lynchet.geometry.coverage;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.locationtech.jts.geom.Geometry;

/**
 * Pictures of fields and their cells, in metres of the offset frame. {@link TestField#cut} holds
 * every one of them against the laws of a partition too.
 */
class CoverageExamplesTest {

  /** Fields, cuts, and how many cells each band has, from left to right. */
  @ParameterizedTest(name = "{0}")
  @CsvSource(
      delimiter = '|',
      textBlock =
"""
rectangle               | POLYGON ((0 0, 30 0, 30 20, 0 20, 0 0))                                 | 10 20       | 1 1 1
no cuts                 | POLYGON ((0 0, 30 0, 30 20, 0 20, 0 0))                                 |             | 1
clockwise ring          | POLYGON ((0 0, 0 20, 30 20, 30 0, 0 0))                                 | 10 20       | 1 1 1
cuts beyond both ends   | POLYGON ((0 0, 30 0, 30 20, 0 20, 0 0))                                 | -9 -5 15 40 | 0 0 1 1 0
narrower than one strip | POLYGON ((1 0, 3 0, 3 20, 1 20, 1 0))                                   | 0 10        | 0 1 0
cuts in its outer edges | POLYGON ((0 0, 30 0, 30 20, 0 20, 0 0))                                 | 0 15 30     | 0 1 1 0
L                       | POLYGON ((0 0, 30 0, 30 10, 12 10, 12 30, 0 30, 0 0))                   | 10 20       | 1 1 1
L, inner edge on a cut  | POLYGON ((0 0, 30 0, 30 10, 10 10, 10 30, 0 30, 0 0))                   | 10 20       | 1 1 1
U, cut along its bottom | POLYGON ((0 0, 9 0, 9 20, 30 20, 30 0, 39 0, 39 40, 0 40, 0 0))         | 4 20 35     | 1 1 1 1
U on its side           | POLYGON ((0 0, 40 0, 40 10, 10 10, 10 30, 40 30, 40 40, 0 40, 0 0))     | 5 20 30     | 1 1 2 2
comb on its side        | POLYGON ((0 0, 20 0, 20 2, 4 2, 4 4, 20 4, 20 6, 4 6, 4 8, 20 8, 20 10, 0 10, 0 0)) | 2 10 15 | 1 1 3 3
comb, back on a cut     | POLYGON ((0 0, 20 0, 20 2, 4 2, 4 4, 20 4, 20 6, 4 6, 4 8, 20 8, 20 10, 0 10, 0 0)) | 4 10    | 1 3 3
hole inside one band    | POLYGON ((0 0, 30 0, 30 30, 0 30, 0 0), (12 12, 18 12, 18 18, 12 18, 12 12)) | 10 20  | 1 1 1
hole across bands       | POLYGON ((0 0, 30 0, 30 30, 0 30, 0 0), (5 12, 25 12, 25 18, 5 18, 5 12))    | 10 20  | 1 2 1
hole between two cuts   | POLYGON ((0 0, 30 0, 30 30, 0 30, 0 0), (10 12, 20 12, 20 18, 10 18, 10 12)) | 10 20  | 1 2 1
hole touches shell      | POLYGON ((0 0, 15 0, 30 0, 30 30, 0 30, 0 0), (15 0, 18 9, 12 9, 15 0))      | 10 20  | 1 1 1
hole touches at a cut   | POLYGON ((0 0, 15 0, 30 0, 30 30, 0 30, 0 0), (15 0, 18 9, 12 9, 15 0))      | 15     | 1 1
two holes touch         | POLYGON ((0 0, 30 0, 30 30, 0 30, 0 0), (15 15, 18 9, 12 9, 15 15), (15 15, 12 21, 18 21, 15 15)) | 10 20 | 1 1 1
parts touch in a vertex | MULTIPOLYGON (((0 0, 10 0, 10 10, 0 10, 0 0)), ((10 10, 20 10, 20 20, 10 20, 10 10))) | 5 15 | 1 2 1
they touch on a cut     | MULTIPOLYGON (((0 0, 10 0, 10 10, 0 10, 0 0)), ((10 10, 20 10, 20 20, 10 20, 10 10))) | 10   | 1 1
parts apart in one band | MULTIPOLYGON (((0 0, 10 0, 10 10, 0 10, 0 0)), ((0 20, 10 20, 10 30, 0 30, 0 20)))    | 5    | 2 2
vertices on cuts        | POLYGON ((0 10, 10 0, 20 10, 10 20, 0 10))                              | 5 10 15     | 1 1 1 1
spike over a cut        | POLYGON ((0 0, 9 0, 9 5, 21 5.001, 9 5.002, 9 10, 0 10, 0 0))           | 10 20       | 1 1 1
spike onto a cut        | POLYGON ((0 0, 9 0, 9 5, 20 5.001, 9 5.002, 9 10, 0 10, 0 0))           | 10 20       | 1 1 0
collinear along a cut   | POLYGON ((0 0, 10 0, 10 4, 10 7, 10 20, 0 20, 0 0))                     | 5 10        | 1 1 0
collinear, both sides   | POLYGON ((0 0, 20 0, 20 8, 10 8, 10 12, 10 14, 20 14, 20 20, 0 20, 0 0)) | 10         | 1 2
1e-7 m left of a cut    | POLYGON ((0 0, 9.9999999 0, 9.9999999 20, 0 20, 0 0))                   | 5 10        | 1 1 0
1e-7 m right of a cut   | POLYGON ((0 0, 10.0000001 0, 10.0000001 20, 0 20, 0 0))                 | 5 10        | 1 1 0
0.01 mm right of a cut  | POLYGON ((0 0, 10.00001 0, 10.00001 20, 0 20, 0 0))                     | 5 10        | 1 1 1
leans 1e-7 m over a cut | POLYGON ((0 0, 9.9999999 0, 10.0000001 20, 0 20, 0 0))                  | 5 10        | 1 1 0
""")
  void cellsInBands(String name, String wkt, String cuts, String expected) {
    double[] offsets =
        cuts == null
            ? new double[0]
            : Arrays.stream(cuts.split(" ")).mapToDouble(Double::parseDouble).toArray();
    Coverage coverage = TestField.of(wkt).cut(offsets);
    int[] counts = new int[offsets.length + 1];
    coverage.cells().forEach(cell -> counts[cell.band()]++);
    assertThat(counts)
        .containsExactly(Arrays.stream(expected.split(" ")).mapToInt(Integer::parseInt).toArray());
  }

  @Test
  @DisplayName("a slanted field: the cells, vertex for vertex")
  void cellsOfATriangle() {
    Coverage coverage = TestField.of("POLYGON ((1 0, 9 0, 1 8, 1 0))").cut(5);
    assertThat(coverage.cells()).hasSize(2);
    assertDrawn(coverage, 0, "POLYGON ((1 0, 5 0, 5 4, 1 8, 1 0))");
    assertDrawn(coverage, 1, "POLYGON ((5 0, 9 0, 5 4, 5 0))");
  }

  @Test
  @DisplayName("the same field gives the same cells in the same order")
  void isRepeatable() {
    String wkt = "POLYGON ((0 0, 30 0, 30 30, 0 30, 0 0), (5 12, 25 12, 25 18, 5 18, 5 12))";
    Coverage first = TestField.of(wkt).zone("POLYGON ((0 0, 9 0, 9 9, 0 0))").cut(10, 20);
    Coverage again = TestField.of(wkt).zone("POLYGON ((0 0, 9 0, 9 9, 0 0))").cut(10, 20);
    assertThat(again.cells().stream().map(again::inOffsetFrame).map(Geometry::toText))
        .containsExactlyElementsOf(
            first.cells().stream().map(first::inOffsetFrame).map(Geometry::toText).toList());
  }

  @Test
  @DisplayName("what comes in keeps its longitude and latitude to the last of 9 decimals")
  void boundaryVerticesKeepTheirPlace() {
    Geometry boundary =
        TestField.read(
            "POLYGON ((-94.1 43.55, -94.099 43.55, -94.0990001 43.5512345, -94.1 43.551, -94.1 43.55))");
    Coverage coverage =
        Coverage.cut(Regions.whole(FieldShape.of(boundary, TestField.FRAME)), new double[0]);
    Coverage rounded = coverage.rounded();
    assertThat(rounded.inLonLat(rounded.cells().get(0)).equalsTopo(boundary)).isTrue();
  }

  private static void assertDrawn(Coverage coverage, int cell, String wkt) {
    Geometry drawn = coverage.inOffsetFrame(coverage.cells().get(cell)).norm();
    assertThat(drawn.equalsExact(TestField.read(wkt).norm(), 1e-7)).as(drawn.toText()).isTrue();
    assertThat(coverage.areaSquareMetres(coverage.cells().get(cell)))
        .isCloseTo(TestField.read(wkt).getArea(), within(1e-6));
  }
}
