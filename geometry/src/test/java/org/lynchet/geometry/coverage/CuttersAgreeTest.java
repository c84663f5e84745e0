package org.lynchet.geometry.coverage;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import java.util.Random;
import net.jqwik.api.Assume;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.ShrinkingMode;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;

/** The quick way and the careful way give the same cells, and OverlayNG as many. */
class CuttersAgreeTest {

  @Property(seed = "41", tries = 60, shrinking = ShrinkingMode.OFF)
  void sameCells(@ForAll long seed) {
    Random random = new Random(seed);
    Geometry field = RandomFields.any(random);
    TestField test = TestField.of(field);
    if (random.nextBoolean()) {
      RandomFields.zones(random, field.getEnvelopeInternal()).forEach(test::zone);
    }
    Regions regions = test.regions();
    double[] cuts = RandomFields.cuts(random, field.getEnvelopeInternal());
    Vertices quickVertices = new Vertices(regions.vertices(), 0);
    Optional<List<Cell>> quick = ParallelCutter.cut(quickVertices, regions.list(), cuts);
    Assume.that(quick.isPresent());
    Vertices nodedVertices = new Vertices(regions.vertices(), 0);
    List<Cell> noded = NodedCutter.cut(nodedVertices, regions.list(), cuts);
    // Cells below 10 square centimetres are where the grid may decide otherwise.
    assertThat(areas(nodedVertices, noded))
        .usingComparatorForType(
            (p, q) -> Math.abs(p - q) < 1e-4 ? 0 : Double.compare(p, q), Double.class)
        .containsExactlyElementsOf(areas(quickVertices, quick.get()));
  }

  private static List<Double> areas(Vertices vertices, List<Cell> cells) {
    return cells.stream()
        .map(cell -> Rings.area(vertices, cell.rings))
        .filter(area -> area > 1e-3)
        .sorted()
        .toList();
  }

  @Property(seed = "42", tries = 60, shrinking = ShrinkingMode.OFF)
  void asManyCellsAsOverlayNg(@ForAll long seed) {
    Random random = new Random(seed);
    Geometry field = RandomFields.any(random);
    TestField test = TestField.of(field);
    double[] cuts = RandomFields.cuts(random, field.getEnvelopeInternal());
    Coverage coverage = test.cut(cuts);
    Geometry inside = Insides.of(test.regions());
    Envelope reach = inside.getEnvelopeInternal();
    int[] expected = new int[cuts.length + 1];
    for (int band = 0; band < expected.length; band++) {
      Geometry clip = Insides.clip(inside, reach, cuts, band);
      for (int i = 0; i < clip.getNumGeometries(); i++) {
        expected[band] += clip.getGeometryN(i).getArea() > 1e-3 ? 1 : 0;
      }
    }
    int[] counts = new int[cuts.length + 1];
    for (Cell cell : coverage.cells()) {
      counts[cell.band()] += coverage.areaSquareMetres(cell) > 1e-3 ? 1 : 0;
    }
    assertThat(counts).containsExactly(expected);
  }

  @Test
  void theQuickWayGivesUpOnVerticesOnCuts() {
    Regions regions = TestField.of("POLYGON ((0 0, 20 0, 20 20, 10 30, 0 20, 0 0))").regions();
    Vertices vertices = new Vertices(regions.vertices(), 0);
    assertThat(ParallelCutter.cut(vertices, regions.list(), new double[] {10})).isEmpty();
    assertThat(ParallelCutter.cut(vertices, regions.list(), new double[] {9})).isPresent();
  }
}
