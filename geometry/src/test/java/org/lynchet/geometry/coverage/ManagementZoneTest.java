package org.lynchet.geometry.coverage;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;

/** Fields under maps of management zones that fit, overlap, or leave something out. */
class ManagementZoneTest {
  private static final String SQUARE = "POLYGON ((0 0, 100 0, 100 100, 0 100, 0 0))";

  @Test
  @DisplayName("two halves that meet on the field's middle and share its boundary")
  void halves() {
    TestField field =
        TestField.of(SQUARE)
            .zone("POLYGON ((0 0, 100 0, 100 50, 0 50, 0 0))")
            .zone("POLYGON ((0 50, 100 50, 100 100, 0 100, 0 50))");
    Coverage coverage = field.cut(25, 50);
    assertThat(coverage.cells()).hasSize(6);
    assertThat(areas(coverage)).containsOnlyKeys(0, 1);
    assertThat(areas(coverage).get(0)).isCloseTo(5000, within(1e-5));
    assertThat(field.regions().overlapSquareMetres()).isLessThan(1e-4);
    assertThat(outside(field)).isLessThan(1e-4);
  }

  @Test
  @DisplayName("where they overlap, the first is taken, and the overlap is measured")
  void overlap() {
    TestField field =
        TestField.of(SQUARE)
            .zone("POLYGON ((-9 -9, 109 -9, 109 60, -9 60, -9 -9))")
            .zone("POLYGON ((-9 40, 109 40, 109 109, -9 109, -9 40))")
            .zone("POLYGON ((40 -9, 60 -9, 60 50, 40 50, 40 -9))");
    Map<Integer, Double> areas = areas(field.cut(25, 50));
    assertThat(areas).containsOnlyKeys(0, 1);
    assertThat(areas.get(0)).isCloseTo(6000, within(1e-4));
    assertThat(areas.get(1)).isCloseTo(4000, within(1e-4));
    // 100 x 20 twice, and 20 x 50 of the third; 20 x 10 of that lies in all three and counts once
    assertThat(field.regions().overlapSquareMetres()).isCloseTo(2000 + 1000 - 200, within(1e-4));
  }

  @Test
  @DisplayName("gaps are told with a place in them, the largest first")
  void gaps() {
    TestField field =
        TestField.of(SQUARE)
            .zone("POLYGON ((-9 -9, 109 -9, 109 50, -9 50, -9 -9))")
            .zone("POLYGON ((-9 60, 95 60, 95 109, -9 109, -9 60))");
    Coverage coverage = field.cut(25, 50);
    assertThat(areas(coverage).get(RegionLabel.NO_ZONE)).isCloseTo(1000 + 200, within(1e-4));
    List<UncoveredPlace> gaps = field.regions().outsideZones();
    assertThat(gaps).hasSize(1);
    Coordinate at =
        TestField.FRAME.toOffset(gaps.get(0).longitudeDegrees(), gaps.get(0).latitudeDegrees());
    Geometry gap = TestField.read("POLYGON ((0 50, 100 50, 100 100, 95 100, 95 60, 0 60, 0 50))");
    assertThat(gap.contains(gap.getFactory().createPoint(at))).isTrue();
    assertThat(gaps.get(0).areaSquareMetres()).isCloseTo(gap.getArea(), within(1e-4));
  }

  @Test
  @DisplayName("a zone with a hole, another in the hole")
  void nested() {
    TestField field =
        TestField.of(SQUARE)
            .zone(
                "POLYGON ((-9 -9, 109 -9, 109 109, -9 109, -9 -9),"
                    + " (30 30, 30 70, 70 70, 70 30, 30 30))")
            .zone("POLYGON ((30 30, 70 30, 70 70, 30 70, 30 30))");
    Map<Integer, Double> areas = areas(field.cut(50));
    assertThat(areas.get(0)).isCloseTo(8400, within(1e-4));
    assertThat(areas.get(1)).isCloseTo(1600, within(1e-4));
    assertThat(field.regions().overlapSquareMetres()).isLessThan(1e-4);
  }

  @Test
  @DisplayName("zones beside the field and around it, of either ring direction, in parts")
  void farAndWide() {
    TestField field =
        TestField.of(SQUARE)
            .zone("POLYGON ((200 0, 300 0, 300 100, 200 0))")
            .zone(
                "MULTIPOLYGON (((-900 -900, 20 -900, 20 900, -900 900, -900 -900)),"
                    + " ((80 -900, 80 900, 900 900, 900 -900, 80 -900)))")
            .zone("POLYGON ((20 -900, 20 900, 80 900, 80 -900, 20 -900))");
    Map<Integer, Double> areas = areas(field.headland(5, true).cut(50));
    assertThat(areas).containsOnlyKeys(1, 2);
    assertThat(areas.get(1)).isCloseTo(4000, within(1e-4));
    assertThat(areas.get(2)).isCloseTo(6000, within(1e-4));
    assertThat(field.regions().outsideZones()).isEmpty();
  }

  @Test
  @DisplayName("the headland is divided too, and not cut")
  void headlandIsDivided() {
    TestField field =
        TestField.of(SQUARE)
            .headland(10, true)
            .zone("POLYGON ((-9 -9, 109 -9, 109 50, -9 50, -9 -9))")
            .zone("POLYGON ((-9 50, 109 50, 109 109, -9 109, -9 50))");
    Coverage coverage = field.cut(50);
    assertThat(coverage.cells().stream().filter(cell -> cell.region().headland())).hasSize(2);
    assertThat(coverage.cells()).hasSize(6);
  }

  private static double outside(TestField field) {
    return field.regions().outsideZones().stream()
        .mapToDouble(UncoveredPlace::areaSquareMetres)
        .sum();
  }

  private static Map<Integer, Double> areas(Coverage coverage) {
    Map<Integer, Double> areas = new TreeMap<>();
    for (Cell cell : coverage.cells()) {
      double area = coverage.areaSquareMetres(cell);
      if (area > 1e-3) {
        areas.merge(cell.region().managementZone(), area, Double::sum);
      }
    }
    return areas;
  }
}
