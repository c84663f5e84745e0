package org.lynchet.geometry.coverage;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Random;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.locationtech.jts.algorithm.construct.MaximumInscribedCircle;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.LineString;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.geom.prep.PreparedGeometry;
import org.locationtech.jts.geom.prep.PreparedGeometryFactory;
import org.locationtech.jts.operation.distance.IndexedFacetDistance;

/** Where the headland lies: its inner edge keeps its distance from the boundary to 1 cm. */
class HeadlandTest {
  private static final double EXACT = 0.01;

  @ParameterizedTest(name = "{0}, {1} m wide")
  @CsvSource({
    "rectangle, 18.288",
    "L, 9.144",
    "L, 36.576",
    "star, 3",
    "star, 18.288",
    "jagged, 0.5",
    "jagged, 6",
    "jagged, 18.288",
    "jagged, 73.152",
    "huge, 109.728",
    "huge, 300",
    "comb, 4.572",
    "many small jags, 9.144",
    "many small jags, 18.288",
    "many deep jags, 9.144",
    "many deep jags, 18.288",
    "dense deep jags, 18.288",
    "dense deeper jags, 18.288",
    "square, 120"
  })
  void innerEdgeKeepsItsDistance(String name, double width) {
    Geometry field = field(name);
    TestField test = TestField.of(field).headland(width, true);
    Geometry inside = Insides.of(test.regions());
    double deepest = MaximumInscribedCircle.getRadiusLine(test.inMetres(), 0.1).getLength();
    assertThat(inside.isEmpty()).as("deepest %s m", deepest).isEqualTo(deepest < width);
    checkDistance(inside, test.inMetres().getBoundary(), width);
  }

  private static Geometry field(String name) {
    return switch (name) {
      case "rectangle" -> TestField.read("POLYGON ((0 0, 300 0, 300 200, 0 200, 0 0))");
      case "L" -> TestField.read("POLYGON ((0 0, 300 0, 300 120, 140 120, 140 300, 0 300, 0 0))");
      case "star" -> RandomFields.star(new Random(1), 0, 0, 400, 24);
      case "jagged" -> RandomFields.jagged(new Random(2), 500, 2000);
      case "many small jags" -> RandomFields.jagged(new Random(5), 220, 30_000, 0.02);
      case "many deep jags" -> RandomFields.jagged(new Random(6), 220, 30_000, 0.5);
      case "dense deep jags" -> RandomFields.jagged(new Random(7), 220, 10_000, 0.5);
      case "dense deeper jags" -> RandomFields.jagged(new Random(8), 220, 20_000, 2);
      case "square" -> TestField.read("POLYGON ((0 0, 200 0, 200 200, 0 200, 0 0))");
      case "huge" -> RandomFields.star(new Random(3), 0, 0, 3000, 11);
      default -> RandomFields.comb(new Random(4));
    };
  }

  /** Every place of the inner edge, each half metre, by distance to the boundary. */
  private static void checkDistance(Geometry inside, Geometry boundary, double width) {
    IndexedFacetDistance toBoundary = new IndexedFacetDistance(boundary);
    for (int i = 0; i < inside.getNumGeometries(); i++) {
      Coordinate[] edge = inside.getGeometryN(i).getBoundary().getCoordinates();
      for (int e = 1; e < edge.length; e++) {
        int steps = 1 + (int) (edge[e - 1].distance(edge[e]) / 0.5);
        for (int s = 0; s < steps; s++) {
          double t = (double) s / steps;
          Coordinate at =
              new Coordinate(
                  edge[e - 1].x + t * (edge[e].x - edge[e - 1].x),
                  edge[e - 1].y + t * (edge[e].y - edge[e - 1].y));
          double distance = toBoundary.distance(boundary.getFactory().createPoint(at));
          assertThat(distance).as("at %s", at).isCloseTo(width, within(EXACT));
        }
      }
    }
  }

  /**
   * The other way round: no place that is deep enough is headland, none near the edge is inside.
   */
  @ParameterizedTest
  @CsvSource({
    "star, 18.288",
    "jagged, 18.288",
    "comb, 4.572",
    "many small jags, 18.288",
    "many deep jags, 18.288"
  })
  void allPlacesAreOnTheirSide(String name, double width) {
    Geometry field = field(name);
    TestField test = TestField.of(field).headland(width, true);
    Regions regions = test.regions();
    PreparedGeometry inside = PreparedGeometryFactory.prepare(Insides.of(regions));
    PreparedGeometry whole = PreparedGeometryFactory.prepare(field);
    IndexedFacetDistance boundary = new IndexedFacetDistance(test.inMetres().getBoundary());
    Random random = new Random(9);
    for (int i = 0; i < 2000; i++) {
      Coordinate at =
          new Coordinate(
              field.getEnvelopeInternal().getMinX()
                  + random.nextDouble() * field.getEnvelopeInternal().getWidth(),
              field.getEnvelopeInternal().getMinY()
                  + random.nextDouble() * field.getEnvelopeInternal().getHeight());
      Geometry place = field.getFactory().createPoint(at);
      double deep = whole.covers(place) ? boundary.distance(place) : -1;
      if (Math.abs(deep - width) > EXACT) {
        assertThat(inside.covers(place)).as("%s, %s m deep", at, deep).isEqualTo(deep > width);
      }
    }
  }

  @Test
  @DisplayName("the headland fills the field")
  void fillsTheField() {
    Coverage coverage =
        TestField.of("POLYGON ((0 0, 30 0, 30 20, 0 20, 0 0))").headland(11, true).cut(10, 20);
    assertThat(coverage.cells()).hasSize(1);
    assertThat(coverage.cells().get(0).region().headland()).isTrue();
    assertThat(coverage.cells().get(0).band()).isEqualTo(Cell.NO_BAND);
  }

  @Test
  @DisplayName("around holes or along the outside only")
  void aroundHolesOrNot() {
    String wkt = "POLYGON ((0 0, 100 0, 100 100, 0 100, 0 0), (40 40, 60 40, 60 60, 40 60, 40 40))";
    Regions around = TestField.of(wkt).headland(10, true).regions();
    Regions outside = TestField.of(wkt).headland(10, false).regions();
    // the hole's own ring: 40 x 40 with corners of radius 10 rounded
    double grown = 40 * 40 - (400 - Math.PI * 100);
    assertThat(Insides.of(around).getArea()).isCloseTo(6400 - grown, within(0.5));
    assertThat(Insides.of(outside).getArea()).isCloseTo(6400 - 400, within(1e-4));
    TestField.of(wkt).headland(10, true).cut(30, 50, 70);
    TestField.of(wkt).headland(10, false).cut(30, 50, 70);
  }

  @Test
  @DisplayName("a hole in the headland: it is not planted, and not around it either")
  void holeInTheHeadland() {
    String wkt = "POLYGON ((0 0, 100 0, 100 100, 0 100, 0 0), (4 40, 16 40, 16 60, 4 60, 4 40))";
    Regions outside = TestField.of(wkt).headland(10, false).regions();
    assertThat(Insides.of(outside).getArea()).isCloseTo(6400 - 6 * 20, within(1e-4));
    TestField.of(wkt).headland(10, false).cut(30, 50, 70);
  }

  @Test
  @DisplayName("a waist narrower than two headlands parts the inside in two")
  void partsTheInside() {
    TestField field =
        TestField.of(
                "POLYGON ((0 0, 60 0, 60 20, 90 20, 90 0, 150 0, 150 60, 90 60, 90 35, 60 35,"
                    + " 60 60, 0 60, 0 0))")
            .headland(10, true);
    Geometry inside = Insides.of(field.regions());
    assertThat(inside.getNumGeometries()).isEqualTo(2);
    Coverage coverage = field.cut(30, 75, 120);
    assertThat(coverage.cells().stream().filter(cell -> cell.band() != Cell.NO_BAND)).hasSize(4);
    assertThat(field.regions().insideHeadland().minOffsetMetres()).isCloseTo(10, within(1e-6));
    assertThat(field.regions().insideHeadland().maxOffsetMetres()).isCloseTo(140, within(1e-6));
  }

  @Test
  @DisplayName("inside and headland share the vertices of the edge between them, cuts included")
  void sharesItsInnerEdge() {
    Coverage coverage =
        TestField.of("POLYGON ((0 0, 100 0, 100 100, 0 100, 0 0))").headland(10, true).cut(50);
    Polygon headland = coverage.inOffsetFrame(coverage.cells().get(coverage.cells().size() - 1));
    LineString inner = headland.getInteriorRingN(0);
    assertThat(java.util.Arrays.stream(inner.getCoordinates()).anyMatch(at -> at.x == 50)).isTrue();
  }
}
