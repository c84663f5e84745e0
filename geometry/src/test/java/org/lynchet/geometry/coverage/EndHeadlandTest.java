package org.lynchet.geometry.coverage;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.locationtech.jts.densify.Densifier;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.LineString;
import org.locationtech.jts.operation.distance.IndexedFacetDistance;
import org.locationtech.jts.simplify.TopologyPreservingSimplifier;
import org.lynchet.geometry.guidance.AbLine;

/**
 * Holds a headland that lies only where rows end against fields worked out by hand. Rows run along
 * y, the headland is 10 m wide, and edges steeper than 30 degrees to the rows are ends.
 */
class EndHeadlandTest {
  private static final double[] CUTS = TestField.every(9, -50, 300);

  @ParameterizedTest(name = "{0}")
  @CsvSource(
      delimiter = '|',
      value = {
        // Ends are y = 0 and y = 100.
        "rectangle | (0 0, 100 0, 100 100, 0 100, 0 0) | (0 10, 100 10, 100 90, 0 90, 0 10)",
        // Three ends; the one at y = 100 stops at x = 100, where rows pass it on the right.
        "L-shape | (0 0, 200 0, 200 200, 100 200, 100 100, 0 100, 0 0)"
            + " | (0 10, 200 10, 200 190, 100 190, 100 90, 0 90, 0 10)",
        // The slant is 45 degrees to the rows: x + y = 100 - 10 sqrt(2) inside. One run of two
        // edges.
        "triangle with a blunt slant | (0 0, 100 0, 0 100, 0 0)"
            + " | (0 10, 75.857864 10, 0 85.857864, 0 10)",
        // The slant is atan(30 / 100) = 16.7 degrees to the rows: a side.
        "triangle with a steep slant | (0 0, 30 0, 0 100, 0 0) | (0 10, 27 10, 0 100, 0 10)",
        // The slant is 63.4 degrees to the rows; its inner edge lies 10 sqrt(1.25) lower and goes
        // on
        // over the foot of the perpendicular, x = 4.47, to the side x = 0.
        "slanted end | (0 0, 100 0, 100 100, 0 50, 0 0)"
            + " | (0 10, 100 10, 100 88.819660, 0 38.819660, 0 10)",
        // Left side 20 degrees, end 45 degrees to the rows: 25 degrees between them, so the inner
        // edge would meet the side 10 / tan(25) = 21.4 m on: it ends along the row x = 36.397, of
        // which the headland has 10 sqrt(2). At the foot the side is at x = 10 tan(20).
        "end and side almost in line | (0 0, 136.397023 0, 136.397023 200, 36.397023 100, 0 0)"
            + " | (3.639702 10, 136.397023 10, 136.397023 185.857864, 36.397023 85.857864,"
            + " 36.397023 100, 3.639702 10)",
        // Reflex where an end falls to the right: the row at x = 100 goes 10 sqrt(1.25) deep.
        "slanted end beside an arm"
            + " | (0 0, 200 0, 200 200, 100 200, 100 100, 0 150, 0 0)"
            + " | (0 10, 200 10, 200 190, 100 190, 100 88.819660, 0 138.819660, 0 10)",
        // Reflex where an end rises to the right.
        "slanted end rising to an arm"
            + " | (0 0, 200 0, 200 200, 100 200, 100 150, 0 100, 0 0)"
            + " | (0 10, 200 10, 200 190, 100 190, 100 138.819660, 0 88.819660, 0 10)",
        // A step of 8 m in the right side is bridged: rows run on past it.
        "short step | (0 0, 100 0, 100 100, 92 100, 92 200, 0 200, 0 0)"
            + " | (0 10, 100 10, 100 100, 92 100, 92 190, 0 190, 0 10)",
        // A step of 20 m is an end of its own.
        "long step | (0 0, 100 0, 100 100, 80 100, 80 200, 0 200, 0 0)"
            + " | (0 10, 100 10, 100 90, 80 90, 80 190, 0 190, 0 10)",
        // Both ends are narrower than the headland, between sides that run opposite ways.
        "narrow field | (0 0, 6 0, 6 100, 0 100, 0 0) | (0 10, 6 10, 6 90, 0 90, 0 10)",
      })
  void insideIs(String name, String field, String inside) {
    TestField test = TestField.of("POLYGON (" + field + ")").endHeadland(10, true);

    Geometry expected = TestField.read("POLYGON (" + inside + ")");
    Geometry found = Insides.of(test.regions());

    assertThat(found.symDifference(expected).getArea()).as("%s", found).isLessThan(1e-3);
    assertThat(withoutStraights(found).getNumPoints())
        .as("no corner but these: %s", found)
        .isEqualTo(withoutStraights(expected).getNumPoints());
    test.cut(CUTS);
  }

  private static Geometry withoutStraights(Geometry polygon) {
    return TopologyPreservingSimplifier.simplify(polygon, 1e-4);
  }

  @Test
  @DisplayName("a short step in an end is bridged, its inner corner rounded at the true distance")
  void stepInEnd() {
    TestField field =
        TestField.of("POLYGON ((0 0, 100 0, 100 108, 50 108, 50 100, 0 100, 0 0))")
            .endHeadland(10, true);
    // Reflex at (50 100): the edge is y = 90 up to x = 50, then round the corner to x = 50 + 10 sin
    // a
    // where it meets y = 98: cos a = 0.2, a = 1.369438. Area under it from x = 50: sector and
    // triangle: integral of 100 - sqrt(100 - u^2) for u in [0, 9.797959].
    double u = Math.sqrt(96);
    double arc = 100 * u - (u * 2 + 100 * Math.asin(u / 10)) / 2;
    double area = 50 * 80 + arc - 10 * u + (50 - u) * 88;
    assertThat(Insides.of(field.regions()).getArea()).isCloseTo(area, within(0.05));
    field.cut(CUTS);
  }

  @Test
  @DisplayName("a hole has headland where rows meet it")
  void hole() {
    String wkt = "POLYGON ((0 0, 100 0, 100 100, 0 100, 0 0), (40 40, 60 40, 60 60, 40 60, 40 40))";
    TestField around = TestField.of(wkt).endHeadland(10, true);
    TestField past = TestField.of(wkt).endHeadland(10, false);

    Geometry expected =
        TestField.read(
            "POLYGON ((0 10, 100 10, 100 90, 0 90, 0 10), (40 30, 40 70, 60 70, 60 30, 40 30))");
    assertThat(Insides.of(around.regions()).symDifference(expected).getArea()).isLessThan(1e-3);
    assertThat(Insides.of(past.regions()).getArea()).isCloseTo(8000 - 400, within(1e-3));
    around.cut(CUTS);
    past.cut(CUTS);
  }

  @Test
  @DisplayName("a mast has headland all around, whatever the angles of its edges")
  void mast() {
    String wkt = "POLYGON ((0 0, 100 0, 100 100, 0 100, 0 0), (50 47, 49 50, 50 53, 51 50, 50 47))";
    TestField field = TestField.of(wkt).endHeadland(10, true);
    // Steiner: area + perimeter x 10 + pi x 10^2 of a rhombus with diagonals 2 and 6.
    double grown = 6 + 4 * Math.sqrt(10) * 10 + Math.PI * 100;
    assertThat(Insides.of(field.regions()).getArea()).isCloseTo(8000 - grown, within(0.5));
    field.cut(CUTS);
  }

  @Test
  @DisplayName("two parts: each has its own ends")
  void multipolygon() {
    TestField field =
        TestField.of(
                "MULTIPOLYGON (((0 0, 100 0, 100 100, 0 100, 0 0)),"
                    + " ((150 50, 250 50, 250 250, 150 250, 150 50)))")
            .endHeadland(10, true);
    assertThat(Insides.of(field.regions()).getArea()).isCloseTo(8000 + 18000, within(1e-3));
    field.cut(CUTS);
  }

  @Test
  @DisplayName("a jagged side stays a side, a jagged end an end")
  void jagged() {
    StringBuilder wkt = new StringBuilder("POLYGON ((0 0");
    for (int x = 4; x <= 96; x += 4) {
      wkt.append(", ").append(x).append(x % 8 == 4 ? " 2" : " 0");
    }
    wkt.append(", 100 0");
    for (int y = 2; y <= 198; y += 2) {
      wkt.append(y % 4 == 2 ? ", 102 " : ", 100 ").append(y);
    }
    TestField field = TestField.of(wkt + ", 100 200, 0 200, 0 0))").endHeadland(10, true);

    Geometry inside = Insides.of(field.regions());

    assertThat(inside.getNumGeometries()).isEqualTo(1);
    assertThat(inside.getEnvelopeInternal().getMaxX()).isCloseTo(102, within(1e-6));
    assertThat(inside.getEnvelopeInternal().getMaxY()).isCloseTo(190, within(1e-6));
    // Teeth of the end point into the field, tips at y = 2, 8 m apart: between two tips the edge is
    // lowest, at 2 + sqrt(100 - 16).
    Geometry middle =
        inside.intersection(TestField.read("POLYGON ((20 0, 80 0, 80 50, 20 50, 20 0))"));
    assertThat(middle.getEnvelopeInternal().getMinY()).isCloseTo(11.165151, within(0.002));
    field.cut(CUTS);
  }

  @ParameterizedTest(name = "{0} edges a side, jags of {1} m, headland of {2} m")
  @CsvSource({
    "2500, 0.02, 9.144",
    "2500, 0.5, 18.288",
    "5000, 0.5, 9.144",
    "5000, 2, 18.288",
    "10000, 2, 9.144"
  })
  @DisplayName("many jags: the edge keeps its distance along an end, and a side has none")
  void manyJags(int edges, double jag, double width) {
    TestField field =
        TestField.of(RandomFields.jaggedRectangle(new Random(11), 300, 400, edges, jag))
            .endHeadland(width, true);

    Geometry inside = Insides.of(field.regions());

    Geometry edge = inside.getBoundary();
    IndexedFacetDistance boundary = new IndexedFacetDistance(field.inMetres().getBoundary());
    for (double y : new double[] {0, 400}) {
      Geometry along =
          TestField.read("POLYGON ((40 %1$s, 260 %1$s, 260 200, 40 200, 40 %1$s))".formatted(y));
      Geometry there = edge.intersection(along);
      assertThat(there.getLength()).as("edge along %s", y).isGreaterThan(220);
      for (Coordinate at : Densifier.densify(there, 0.2).getCoordinates()) {
        assertThat(boundary.distance(there.getFactory().createPoint(at)))
            .as("at %s", at)
            .isCloseTo(width, within(0.01));
      }
    }
    Geometry middle = TestField.read("POLYGON ((-9 50, 309 50, 309 350, -9 350, -9 50))");
    assertThat(inside.intersection(middle).getArea())
        .isCloseTo(field.inMetres().intersection(middle).getArea(), within(1e-6));
    HeadlandEnds ends = new HeadlandEnds(30, new AbLine(TestField.FRAME));
    // Jags of the sides part crumbs off.
    assertThat(
            HeadlandLines.of(DrawnHeadland.of(field.shape, new Headland(width, true, ends)))
                .at(width / 2))
        .filteredOn(line -> line.getLength() > 5)
        .hasSize(2)
        .allMatch(line -> line.getLength() > 290);
  }

  /**
   * The right side is straight, then has ten teeth of 45 degrees, then is straight again: a line
   * over whole teeth runs along the rows, or nearly so.
   */
  @ParameterizedTest(name = "teeth of {0} m by {1} m, drifting {2} m each, headland of {3} m")
  @CsvSource({
    // Stairs of pixels of 10 m, seen at 45 degrees.
    "14.142135623730951, -7.0710678118654755, 0, 12.192",
    "14.142135623730951, 7.0710678118654755, 0, 12.192",
    "8, -4, 0, 10",
    "8, 4, 0, 10",
    "8, -4, 0.02, 10",
    "8, 4, 0.02, 10",
    "8, 4, 0.2, 10",
    "8, 4, 1, 10",
    "8, -4, -1, 10",
    "15, 7.5, 1, 10",
  })
  void teethInASide(double tooth, double height, double drift, double width) {
    StringBuilder places = new StringBuilder("200 150");
    double x = 200;
    double y = 150;
    for (int i = 0; i < 10; i++) {
      places.append(", ").append(x + height).append(' ').append(y + tooth / 2);
      x += drift;
      y += tooth;
      places.append(", ").append(x).append(' ').append(y);
    }
    double top = y + 150;
    TestField field =
        TestField.of("POLYGON ((0 0, 200 0, %s, %s %s, 0 %s, 0 0))".formatted(places, x, top, top))
            .endHeadland(width, true);

    Geometry headland = field.inMetres().difference(Insides.of(field.regions()));

    Geometry teeth = TestField.read("LINESTRING (" + places + ")");
    assertThat(headland.difference(teeth.buffer(2 * width, 16)).getArea())
        .as("no headland but at both ends lies farther than two widths from the teeth")
        .isCloseTo((200 + x) * width, within(0.01));
    HeadlandEnds ends = new HeadlandEnds(30, new AbLine(TestField.FRAME));
    HeadlandLines lines =
        HeadlandLines.of(DrawnHeadland.of(field.shape, new Headland(width, true, ends)));
    List<LineString> drawn = lines.at(width / 2);
    for (int i = 0; i < headland.getNumGeometries(); i++) {
      Geometry part = headland.getGeometryN(i);
      if (part.getArea() > width * width) {
        assertThat(drawn).as("along %s", part).anyMatch(line -> line.intersects(part));
      }
    }
    field.cut(CUTS);
  }
}
