package org.lynchet.geometry.coverage;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.ShrinkingMode;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.Geometry;

/** Cells below a minimum area go to a neighbour in their strip, and nothing else changes. */
class SmallCellsTest {

  /** Three bands to a strip: border, centre, border. */
  private static int threeBands(Cell cell) {
    return cell.band() == Cell.NO_BAND ? -1 : cell.band() / 3;
  }

  private static int oneStrip(Cell cell) {
    return 0;
  }

  @Test
  @DisplayName("the small one goes to the neighbour with the longest common edge")
  void longestEdge() {
    // The triangle's tip right of 28 is 2 x 1.33 / 2 = 1.33 m2.
    Coverage coverage = TestField.of("POLYGON ((0 0, 30 0, 0 20, 0 0))").cut(10, 28);
    SmallCellsJoined joined = coverage.joinSmall(2, SmallCellsTest::oneStrip);
    assertThat(joined.joined()).isEqualTo(1);
    assertThat(joined.joinedSquareMetres()).isCloseTo(4.0 / 3, within(1e-6));
    assertThat(joined.kept()).isZero();
    assertDrawn(
        joined.coverage(), "POLYGON ((10 0, 28 0, 30 0, 28 1.3333333, 10 13.3333333, 10 0))");
  }

  @Test
  @DisplayName("not over the edge of its strip: it is kept, and counted")
  void staysInItsStrip() {
    Coverage coverage = TestField.of("POLYGON ((0 0, 30 0, 0 20, 0 0))").cut(10, 28);
    SmallCellsJoined joined = coverage.joinSmall(2, Cell::band);
    assertThat(joined.joined()).isZero();
    assertThat(joined.kept()).isEqualTo(1);
    assertThat(joined.coverage().cells()).hasSize(3);
  }

  @Test
  @DisplayName("a chain of small ones grows until it is large enough")
  void chain() {
    Coverage coverage =
        TestField.of("POLYGON ((0 0, 10 0, 10 1, 0 1, 0 0))").cut(1, 2, 3, 4, 5, 6, 7, 8, 9);
    SmallCellsJoined joined = coverage.joinSmall(2.5, SmallCellsTest::oneStrip);
    double total = 0;
    for (Cell cell : joined.coverage().cells()) {
      double area = joined.coverage().areaSquareMetres(cell);
      assertThat(area).isGreaterThanOrEqualTo(2.5 - 1e-9);
      total += area;
    }
    assertThat(total).isCloseTo(10, within(1e-6));
    assertThat(joined.coverage().cells().size()).isEqualTo(10 - joined.joined());
    assertThat(joined.kept()).isZero();
  }

  @Test
  @DisplayName("a strip that is smaller than the minimum becomes one cell, which is kept")
  void wholeStripIsSmall() {
    Coverage coverage = TestField.of("POLYGON ((0 0, 3 0, 3 1, 0 1, 0 0))").cut(1, 2);
    SmallCellsJoined joined = coverage.joinSmall(10, SmallCellsTest::oneStrip);
    assertThat(joined.coverage().cells()).hasSize(1);
    assertThat(joined.joined()).isEqualTo(2);
    assertThat(joined.kept()).isEqualTo(1);
  }

  @Test
  @DisplayName("cells around a hole become one with that hole")
  void aroundAHole() {
    Coverage coverage =
        TestField.of("POLYGON ((0 0, 9 0, 9 9, 0 9, 0 0), (3 3, 6 3, 6 6, 3 6, 3 3))").cut(4, 5);
    assertThat(coverage.cells()).hasSize(4);
    SmallCellsJoined joined = coverage.joinSmall(50, SmallCellsTest::oneStrip);
    assertThat(joined.coverage().cells()).hasSize(1);
    Cell cell = joined.coverage().cells().get(0);
    assertThat(joined.coverage().inOffsetFrame(cell).getNumInteriorRing()).isEqualTo(1);
  }

  @Test
  void aMinimumOfNothingJoinsNothing() {
    Coverage coverage = TestField.of("POLYGON ((0 0, 30 0, 0 20, 0 0))").cut(10, 29.999);
    assertThat(coverage.joinSmall(0, SmallCellsTest::oneStrip).coverage().cells()).hasSize(3);
  }

  @Property(seed = "11", tries = 80, shrinking = ShrinkingMode.OFF)
  void keepsThePartition(@ForAll long seed) {
    Random random = new Random(seed);
    boolean grid = random.nextBoolean();
    Geometry field = grid ? RandomFields.onGrid(random, 6, 10) : RandomFields.any(random);
    TestField test = TestField.of(field);
    double[] cuts =
        grid ? TestField.every(5, -20, 90) : RandomFields.cuts(random, field.getEnvelopeInternal());
    if (random.nextBoolean()) {
      RandomFields.zones(random, field.getEnvelopeInternal()).forEach(test::zone);
    }
    Coverage coverage = test.cut(cuts);
    double minimum = Math.pow(10, 3 * random.nextDouble());
    SmallCellsJoined joined = coverage.joinSmall(minimum, SmallCellsTest::threeBands);
    new PartitionLaws(test, test.regions(), cuts).checkJoined(joined.coverage());
    assertThat(joined.coverage().cells()).hasSize(coverage.cells().size() - joined.joined());
    assertThat(areasByStrip(joined.coverage()))
        .containsExactly(areasByStrip(coverage), within(1e-6 * field.getArea() + 1e-6));
    long small =
        joined.coverage().cells().stream()
            .filter(cell -> joined.coverage().areaSquareMetres(cell) < minimum - 1e-9)
            .count();
    assertThat(small).isEqualTo(joined.kept());
    smallOnesHaveNoNeighbour(joined.coverage(), minimum);
  }

  /** What is still small is alone: it shares no edge with another cell of its strip. */
  private static void smallOnesHaveNoNeighbour(Coverage coverage, double minimum) {
    for (Piece piece : coverage.pieces(SmallCellsTest::threeBands)) {
      if (piece.cells().size() > 1) {
        assertThat(piece.cells())
            .allMatch(i -> coverage.areaSquareMetres(coverage.cells().get(i)) >= minimum - 1e-9);
      }
    }
  }

  private static double[] areasByStrip(Coverage coverage) {
    double[] areas = new double[1000];
    for (Cell cell : coverage.cells()) {
      areas[threeBands(cell) + 1] += coverage.areaSquareMetres(cell);
    }
    return areas;
  }

  private static void assertDrawn(Coverage coverage, String wkt) {
    Geometry expected = TestField.read(wkt).norm();
    List<Geometry> drawn =
        coverage.cells().stream().map(coverage::inOffsetFrame).map(Geometry::norm).toList();
    assertThat(drawn).anyMatch(cell -> cell.equalsExact(expected, 1e-6));
  }
}
