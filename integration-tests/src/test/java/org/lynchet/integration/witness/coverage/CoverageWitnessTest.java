package org.lynchet.integration.witness.coverage;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.function.UnaryOperator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.io.ParseException;
import org.locationtech.jts.io.WKTReader;
import org.lynchet.integration.witness.Finding;
import org.lynchet.integration.witness.Sample;
import org.lynchet.integration.witness.ground.GroundTruth;

/** The witness is silent on a partition and names each way of not being one. */
class CoverageWitnessTest {
  private static final double TOLERANCE = 2e-9;
  private static final String FIELD = "POLYGON((0 0,9 0,9 6,0 6,0 0),(4 2,4 4,5 4,5 2,4 2))";
  private static final String LEFT = "POLYGON((0 0,4 0,4 2,4 4,4 6,0 6,0 0))";
  private static final String BELOW = "POLYGON((4 0,5 0,5 2,4 2,4 0))";
  private static final String ABOVE = "POLYGON((4 4,5 4,5 6,4 6,4 4))";
  private static final String RIGHT = "POLYGON((5 0,9 0,9 6,5 6,5 4,5 2,5 0))";

  @TempDir Path folder;

  @Test
  void silentOnPartitionAroundHole() throws ParseException {
    assertThat(inspect(LEFT, BELOW, ABOVE, RIGHT)).isEmpty();
  }

  @Test
  void silentOnZoneOfTwoParts() throws ParseException {
    String middle = "MULTIPOLYGON(((4 0,5 0,5 2,4 2,4 0)),((4 4,5 4,5 6,4 6,4 4)))";
    assertThat(inspect(LEFT, middle, RIGHT)).isEmpty();
  }

  /** Whether or not the cut meets the vertex in which they touch. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "POLYGON((0 0,4 0,3 2,4 2,4 6,0 6,0 0))     | POLYGON((4 0,9 0,9 6,4 6,4 2,5 2,4 0))",
        "POLYGON((0 0,1 0,1 6,0 6,0 0)) "
            + "| POLYGON((1 0,4 0,9 0,9 6,1 6,1 0),(4 0,3 2,4 2,5 2,4 0))",
      })
  void silentOnHoleThatTouchesTheOuterRing(String left, String right) throws ParseException {
    WKTReader reader = new WKTReader();
    Geometry field = reader.read("POLYGON((0 0,4 0,9 0,9 6,0 6,0 0),(4 0,3 2,4 2,5 2,4 0))");
    List<Geometry> zones = List.of(reader.read(left), reader.read(right));
    assertThat(CoverageWitness.inspect(zones, field, UnaryOperator.identity(), TOLERANCE))
        .isEmpty();
    Geometry whole = reader.read("POLYGON((0 0,4 0,9 0,9 6,0 6,0 0))");
    assertThat(CoverageWitness.inspect(zones, whole, UnaryOperator.identity(), TOLERANCE))
        .extracting(Finding::rule)
        .contains(CoverageRule.NO_GAP);
  }

  @ParameterizedTest(name = "{0}")
  @CsvSource(
      delimiter = '|',
      value = {
        "missing vertex     | EDGE_MATCHED | POLYGON((0 0,4 0,4 6,0 6,0 0))",
        "1e-9 into its neighbour | EDGE_MATCHED | POLYGON((0 0,4 0,4.000000001 2,4 4,4 6,0 6,0 0))",
        "1e-9 into its neighbour | NO_OVERLAP | POLYGON((0 0,4.000000001 0,4 2,4 4,4 6,0 6,0 0))",
        "1e-9 slit from the hole | SAME_OUTLINE | POLYGON((0 0,4 0,4 2,4 4,3.999999999 6,0 6,0 0))",
        "twice the same     | NO_OVERLAP   | " + BELOW,
        "inside another     | NO_OVERLAP   | POLYGON((6 1,7 1,7 2,6 2,6 1))",
        "1e-9 slit from outside | SAME_OUTLINE "
            + "| POLYGON((0 0,4 0,4 2,4 4,4 6,0 6,0 3.000000001,2 3,0 3,0 0))",
        "notch of 1e-8      | SAME_OUTLINE "
            + "| POLYGON((0 0,4 0,4 2,4 4,4 6,0 6,0 3,0.00000001 2,0 1,0 0))",
        "beyond the field   | SAME_AREA    | POLYGON((-1 0,4 0,4 2,4 4,4 6,0 6,-1 0))",
        "short of the field | SAME_AREA    | POLYGON((1 0,4 0,4 2,4 4,4 6,0 6,1 0))",
        "a hole of its own  | NO_GAP       "
            + "| POLYGON((0 0,4 0,4 2,4 4,4 6,0 6,0 0),(1 1,1 1.000001,1.000001 1,1 1))",
        "apart from the rest | NO_GAP      | POLYGON((0 0,3 0,3 6,0 6,0 0))",
        "bow-tie            | VALID        | POLYGON((0 0,4 0,0 6,4 6,0 0))",
        "no area            | VALID        | POLYGON((0 0,4 0,4 0,0 0))",
        "empty              | POLYGONAL    | POLYGON EMPTY",
        "a line             | POLYGONAL    | LINESTRING(0 0,4 0)",
      })
  void namesTheFault(String name, CoverageRule rule, String left) throws ParseException {
    assertThat(inspect(left, BELOW, ABOVE, RIGHT))
        .as(name)
        .extracting(Finding::rule)
        .contains(rule);
  }

  /** The same area elsewhere: sums alone would not tell. */
  @Test
  void namesDisplacedUnion() throws ParseException {
    String shifted = "POLYGON((1 0,10 0,10 6,1 6,1 0),(4 2,4 4,5 4,5 2,4 2))";
    Geometry field = new WKTReader().read(FIELD);
    Geometry zone = new WKTReader().read(shifted);
    assertThat(CoverageWitness.inspect(List.of(zone), field, UnaryOperator.identity(), TOLERANCE))
        .extracting(Finding::rule)
        .contains(CoverageRule.SAME_AREA);
  }

  /** A field of 5 km at 60 degrees: an edge that runs east bows by 0.8 m in longitude, latitude. */
  @Test
  void silentOnVertexThatIsOnTheGroundOnALongEdge() {
    Coordinate sw = new Coordinate(-94, 60);
    Coordinate se = GroundTruth.point(sw, 90, 5000);
    Coordinate middle = GroundTruth.point(sw, 90, 2500);
    Coordinate beside = new Coordinate(middle.x, middle.y + 5e-9); // 0.56 mm
    Coordinate north = GroundTruth.point(middle, 0, 2000);
    GeometryFactory factory = new GeometryFactory();
    Geometry field = factory.createPolygon(new Coordinate[] {sw, se, north, sw});
    for (Coordinate foot : List.of(middle, beside)) {
      Geometry left = factory.createPolygon(new Coordinate[] {sw, foot, north, sw});
      Geometry right = factory.createPolygon(new Coordinate[] {foot, se, north, foot});
      assertThat(CoverageWitness.inspect(List.of(left, right), field).isEmpty())
          .isEqualTo(foot.equals(middle));
    }
  }

  @Test
  void readsWhatGdalWrote() throws IOException {
    List<Geometry> polygons = Polygons.read(Sample.geoJson(folder));
    assertThat(polygons)
        .extracting(Geometry::toText)
        .last()
        .isEqualTo("POLYGON ((-94.097 43.5, -94.096 43.5, -94.096 43.502, -94.097 43.5))");
    assertThat(polygons).extracting(Geometry::getNumGeometries).containsExactly(1, 2, 1);
  }

  private static List<Finding> inspect(String... zones) throws ParseException {
    WKTReader reader = new WKTReader();
    List<Geometry> geometries = new ArrayList<>();
    for (String zone : Arrays.asList(zones)) {
      geometries.add(reader.read(zone));
    }
    return CoverageWitness.inspect(
        geometries, reader.read(FIELD), UnaryOperator.identity(), TOLERANCE);
  }
}
