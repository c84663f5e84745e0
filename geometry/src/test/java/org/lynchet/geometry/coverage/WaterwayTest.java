package org.lynchet.geometry.coverage;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.coverage.CoverageValidator;
import org.locationtech.jts.geom.Geometry;
import org.lynchet.geometry.guidance.AbLine;

/** Holds waterways against areas worked out by hand and the laws of a coverage. */
class WaterwayTest {
  private static final String SQUARE = "POLYGON ((0 0, 100 0, 100 100, 0 100, 0 0))";
  private static final double[] CUTS = TestField.every(9, -50, 150);

  private static Regions divided(TestField field, Headland headland, String waterways) {
    return Regions.divided(
        field.shape, headland, List.of(), TestField.lonLat(TestField.read(waterways)));
  }

  @Test
  @DisplayName("a waterway across the field, headland and all, is one area")
  void across() {
    // A band 4 m high from beyond the left side to beyond the right one.
    String band = "POLYGON ((-20 50, 120 50, 120 54, -20 54, -20 50))";
    TestField field = TestField.of(SQUARE);
    Regions regions = divided(field, new Headland(10, true), band);

    Coverage rounded = Coverage.cut(regions, CUTS).joinSmall(10, Cell::band).coverage().rounded();

    assertThat(rounded.waterways())
        .singleElement()
        .satisfies(way -> assertThat(way.areaSquareMetres()).isCloseTo(400, within(1e-5)));
    double planted =
        rounded.cells().stream()
            .filter(cell -> cell.region().planted())
            .mapToDouble(rounded::areaSquareMetres)
            .sum();
    assertThat(planted).isCloseTo(9600, within(1e-5));
    assertThat(
            regions.plantedInsideHeadland(new AbLine(TestField.FRAME))
                .lengthsMetres(new double[] {50})[0])
        .isCloseTo(76, within(1e-6));
    assertThat(regions.insideHeadland().lengthsMetres(new double[] {50})[0])
        .isCloseTo(80, within(1e-6));
    Geometry[] areas =
        java.util.stream.Stream.concat(
                rounded.cells().stream()
                    .filter(cell -> cell.region().planted())
                    .map(rounded::inLonLat),
                rounded.waterways().stream().map(Waterway::polygon))
            .toArray(Geometry[]::new);
    assertThat(CoverageValidator.hasInvalidResult(CoverageValidator.validate(areas))).isFalse();
    assertThat(areas).allMatch(Geometry::isValid);
  }

  @Test
  @DisplayName("a waterway over a hole and the outside is the field's part of it")
  void overHoleAndOutside() {
    TestField field =
        TestField.of(
            "POLYGON ((0 0, 100 0, 100 100, 0 100, 0 0), (40 40, 60 40, 60 60, 40 60, 40 40))");
    Regions regions =
        Regions.divided(
            field.shape,
            null,
            List.of(),
            TestField.lonLat(TestField.read("POLYGON ((30 45, 130 45, 130 55, 30 55, 30 45))")));
    List<Waterway> ways = Coverage.cut(regions, CUTS).rounded().waterways();
    // Left of the hole 10 x 10, right of it 40 x 10.
    assertThat(ways).extracting(Waterway::areaSquareMetres).hasSize(2);
    assertThat(ways.stream().mapToDouble(Waterway::areaSquareMetres).sum())
        .isCloseTo(500, within(1e-5));
  }

  @Test
  @DisplayName("a small waterway neither joins a strip nor takes a small piece of one")
  void smallPieces() {
    // A waterway of 4 m2, and a corner of 2 m2 that it cuts off.
    String ways = "POLYGON ((0 2, 2 0, 3.4641016151 0, 0 3.4641016151, 0 2))";
    Regions regions = divided(TestField.of(SQUARE), new Headland(10, false), ways);
    SmallCellsJoined joined = Coverage.cut(regions, CUTS).joinSmall(10, cell -> 0);
    Coverage rounded = joined.coverage().rounded();
    assertThat(joined.joined()).isZero();
    assertThat(joined.kept()).isEqualTo(1);
    assertThat(rounded.waterways())
        .singleElement()
        .satisfies(way -> assertThat(way.areaSquareMetres()).isCloseTo(4, within(1e-5)));
  }
}
