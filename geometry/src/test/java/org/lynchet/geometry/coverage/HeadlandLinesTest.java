package org.lynchet.geometry.coverage;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.locationtech.jts.densify.Densifier;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.LineString;
import org.locationtech.jts.operation.buffer.BufferOp;
import org.locationtech.jts.operation.buffer.BufferParameters;
import org.locationtech.jts.operation.distance.IndexedFacetDistance;
import org.lynchet.geometry.guidance.AbLine;

/**
 * Holds headland lines against buffers of JTS, distances, and lines worked out by hand. Rows run
 * along y; where headland lies at their ends it is 10 m wide.
 */
class HeadlandLinesTest {
  /** How exact a line is said to be, in metres: 1 cm. */
  private static final double EXACT = 0.01;

  private static List<LineString> ends(String wkt, boolean aroundHoles, double distance) {
    HeadlandEnds ends = new HeadlandEnds(30, new AbLine(TestField.FRAME));
    return HeadlandLines.of(
            DrawnHeadland.of(TestField.of(wkt).shape, new Headland(10, aroundHoles, ends)))
        .at(distance);
  }

  /** How far places of lines, at most 2 m apart, are from others. */
  private static List<Double> distances(Geometry lines, Geometry others) {
    IndexedFacetDistance nearest = new IndexedFacetDistance(others);
    return Arrays.stream(Densifier.densify(lines, 2).getCoordinates())
        .map(at -> nearest.distance(others.getFactory().createPoint(at)))
        .toList();
  }

  @ParameterizedTest
  @ValueSource(doubles = {4.572, 13.716, 40})
  @DisplayName("closed lines keep their distance, and follow the buffer of JTS")
  void allAround(double distance) {
    for (Geometry field :
        List.of(
            RandomFields.star(new Random(1), 0, 0, 400, 24),
            RandomFields.jagged(new Random(2), 500, 2000),
            RandomFields.holed(new Random(5)))) {
      TestField test = TestField.of(field);

      List<LineString> lines =
          HeadlandLines.of(DrawnHeadland.of(test.shape, new Headland(40, true))).at(distance);

      assertThat(lines).isNotEmpty().allMatch(LineString::isClosed);
      Geometry drawn = test.inMetres().getFactory().buildGeometry(lines);
      assertThat(distances(drawn, test.inMetres().getBoundary()))
          .allSatisfy(far -> assertThat(far).isCloseTo(distance, within(EXACT)));
      BufferParameters round = new BufferParameters(64);
      round.setSimplifyFactor(1e-6);
      Geometry buffer = BufferOp.bufferOp(test.inMetres(), -distance, round).getBoundary();
      // The buffer itself is too near by up to 40 x 0.05^2 / 2 where it leaves arcs out.
      assertThat(distances(drawn, buffer)).allMatch(far -> far < 0.1);
      assertThat(distances(buffer, drawn)).allMatch(far -> far < 0.1);
      assertThat(drawn.getLength()).isCloseTo(buffer.getLength(), within(0.01 * drawn.getLength()));
    }
  }

  @ParameterizedTest(name = "{0} at {2}")
  @CsvSource(
      delimiter = '|',
      value = {
        "rectangle | ((0 0, 100 0, 100 100, 0 100, 0 0)) | 2.5"
            + " | (0 2.5, 100 2.5), (0 97.5, 100 97.5)",
        "L-shape | ((0 0, 200 0, 200 200, 100 200, 100 100, 0 100, 0 0)) | 7.5"
            + " | (0 7.5, 200 7.5), (100 192.5, 200 192.5), (0 92.5, 100 92.5)",
        // 7.5 m inside x + y = 100: x + y = 100 - 7.5 sqrt(2), to the sides y = 7.5 ... one run.
        "triangle | ((0 0, 100 0, 0 100, 0 0)) | 7.5" + " | (0 7.5, 81.893398 7.5, 0 89.393398)",
        // y = 50 + x / 2 - 7.5 sqrt(1.25), from side to side.
        "slanted end | ((0 0, 100 0, 100 100, 0 50, 0 0)) | 7.5"
            + " | (0 7.5, 100 7.5), (0 41.614745, 100 91.614745)",
        // Ends along the row x = 36.397, 7.5 sqrt(2) deep; the foot from side to side.
        "end and side almost in line"
            + " | ((0 0, 136.397023 0, 136.397023 200, 36.397023 100, 0 0)) | 7.5"
            + " | (2.729777 7.5, 136.397023 7.5), (36.397023 89.393398, 136.397023 189.393398)",
        "hole | ((0 0, 100 0, 100 100, 0 100, 0 0), (40 40, 60 40, 60 60, 40 60, 40 40)) | 2.5"
            + " | (0 2.5, 100 2.5), (0 97.5, 100 97.5), (40 37.5, 60 37.5), (40 62.5, 60 62.5)",
      })
  void atEnds(String name, String field, double distance, String expected) {
    List<LineString> lines = ends("POLYGON " + field, true, distance);

    Geometry wanted = TestField.read("MULTILINESTRING (" + expected + ")");
    assertThat(lines).as("%s", lines).hasSize(wanted.getNumGeometries());
    Geometry drawn = wanted.getFactory().buildGeometry(lines);
    assertThat(distances(drawn, wanted)).allMatch(far -> far < 1e-3);
    assertThat(distances(wanted, drawn)).allMatch(far -> far < 1e-3);
    assertThat(drawn.getLength()).isCloseTo(wanted.getLength(), within(1e-3));
  }

  @Test
  @DisplayName("lines at the ends keep their distance from a jagged boundary")
  void jaggedEnds() {
    Geometry field = RandomFields.jagged(new Random(2), 500, 2000);
    TestField test = TestField.of(field);
    HeadlandEnds ends = new HeadlandEnds(30, new AbLine(TestField.FRAME));

    List<LineString> lines =
        HeadlandLines.of(DrawnHeadland.of(test.shape, new Headland(18.288, true, ends))).at(13.716);

    // The outline r = 500 + 40 sin 5a is never more than atan(200 / 460) = 23.5 degrees off a
    // circle,
    // so rows end at its bottom and at its top, in one run each.
    assertThat(lines).hasSize(2).noneMatch(LineString::isClosed);
    IndexedFacetDistance boundary = new IndexedFacetDistance(test.inMetres().getBoundary());
    for (LineString line : lines) {
      Geometry tips = line.getBoundary();
      for (Coordinate at : Densifier.densify(line, 1).getCoordinates()) {
        Geometry place = line.getFactory().createPoint(at);
        double off = boundary.distance(place) - 13.716;
        assertThat(off).as("at %s", at).isLessThan(EXACT);
        if (tips.distance(place) > 2 * 18.288 + EXACT) {
          // Nearer only where a line goes on beyond its run to a side, at most two widths.
          assertThat(off).as("at %s", at).isGreaterThan(-EXACT);
        }
      }
    }
  }

  @Test
  @DisplayName("lines stop at holes that the headland does not follow")
  void pastHoles() {
    String wkt = "POLYGON ((0 0, 100 0, 100 100, 0 100, 0 0), (40 2, 60 2, 60 20, 40 20, 40 2))";
    List<LineString> open = ends(wkt, false, 7.5);
    assertThat(open).hasSize(3).extracting(Geometry::getLength).contains(100.0);
    assertThat(open.stream().mapToDouble(Geometry::getLength).sum()).isCloseTo(180, within(1e-3));

    List<LineString> closed =
        HeadlandLines.of(DrawnHeadland.of(TestField.of(wkt).shape, new Headland(10, false)))
            .at(7.5);
    assertThat(closed).singleElement().satisfies(line -> assertThat(line.isClosed()).isFalse());
    assertThat(closed.get(0).getLength()).isCloseTo(4 * 85 - 20, within(1e-3));
  }

  @Test
  @DisplayName("a field too narrow for a line has none")
  void tooNarrow() {
    String wkt = "POLYGON ((0 0, 100 0, 100 14, 0 14, 0 0))";
    assertThat(
            HeadlandLines.of(DrawnHeadland.of(TestField.of(wkt).shape, new Headland(10, true)))
                .at(7.5))
        .isEmpty();
    assertThat(
            HeadlandLines.of(DrawnHeadland.of(TestField.of(wkt).shape, new Headland(10, true)))
                .at(2.5))
        .hasSize(1);
  }
}
