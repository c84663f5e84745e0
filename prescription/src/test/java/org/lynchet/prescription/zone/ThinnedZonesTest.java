package org.lynchet.prescription.zone;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.lynchet.prescription.zone.SamplePlans.cornAndSoybean;
import static org.lynchet.prescription.zone.SamplePlans.field;

import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.coverage.CoverageValidator;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.Polygon;
import org.lynchet.prescription.fault.Warning;
import org.lynchet.prescription.spraying.SprayedArea;

class ThinnedZonesTest {
  private static final int VERTICES = 4000;

  /** A circle of 150 m around with vertices 24 cm apart, every second one 4 mm farther out. */
  private static String jagged() {
    StringBuilder wkt = new StringBuilder("POLYGON ((");
    for (int i = 0; i <= VERTICES; i++) {
      double angle = 2 * Math.PI * (i % VERTICES) / VERTICES;
      double radius = 150 + (i % 2 == 0 ? 0.004 : 0);
      wkt.append(i == 0 ? "" : ", ")
          .append(
              String.format(
                  Locale.ROOT,
                  "%.9f %.9f",
                  100 + radius * Math.cos(angle),
                  200 + radius * Math.sin(angle)));
    }
    return wkt.append("))").toString();
  }

  private static FieldLayout layout() throws Exception {
    return FieldLayout.of(
        cornAndSoybean().headland(1, true).sprayer(90, 10.0).plan(), field(jagged()));
  }

  private static int vertices(FieldLayout layout) {
    return layout.zones().stream().mapToInt(zone -> zone.polygon().getNumPoints()).sum();
  }

  private static Set<Coordinate> places(FieldLayout layout) {
    return layout.zones().stream()
        .flatMap(zone -> Stream.of(zone.polygon().getCoordinates()))
        .collect(Collectors.toSet());
  }

  private static boolean isCoverage(Stream<Polygon> polygons) {
    List<Polygon> list = polygons.toList();
    return list.stream().allMatch(Polygon::isValid)
        && CoverageValidator.isValid(list.toArray(Geometry[]::new));
  }

  @Test
  void verticesGoAndZonesStillMatch() throws Exception {
    FieldLayout before = layout();
    FieldLayout after = ThinnedZones.of(before, 0.05);
    assertThat(vertices(after)).isLessThan(vertices(before) * 6 / 10);
    assertThat(isCoverage(after.zones().stream().map(Zone::polygon))).isTrue();
    assertThat(isCoverage(after.spraying().areas().stream().map(SprayedArea::polygon))).isTrue();
    assertThat(after.zones()).hasSameSizeAs(before.zones());
    // What stays is where it was, to the last digit.
    assertThat(places(before)).containsAll(places(after));
  }

  @Test
  void areasAreMeasuredAnewAndAddUp() throws Exception {
    FieldLayout before = layout();
    FieldLayout after = ThinnedZones.of(before, 0.05);
    assertThat(after.zones().stream().mapToDouble(Zone::areaSquareMetres).sum())
        .isCloseTo(after.areaSquareMetres(), within(1e-6));
    // 2000 jags of 4 mm x 24 cm: at most 2 m2; the ring's circle is 150 m.
    assertThat(after.areaSquareMetres()).isCloseTo(before.areaSquareMetres(), within(2.5));
    assertThat(after.areaSquareMetres()).isNotEqualTo(before.areaSquareMetres());
    assertThat(after.boundary().getNumPoints()).isLessThan(before.boundary().getNumPoints());
    Geometry inMetres = after.boundary().copy();
    inMetres.apply((Coordinate at) -> at.setCoordinate(SamplePlans.FRAME.toOffset(at.x, at.y)));
    inMetres.geometryChanged();
    assertThat(inMetres.getArea()).isCloseTo(after.areaSquareMetres(), within(1e-3));
  }

  @Test
  void saysWhatItDid() throws Exception {
    FieldLayout after = ThinnedZones.of(layout(), 0.05);
    assertThat(after.warnings())
        .filteredOn(warning -> warning.code() == Warning.Code.ZONES_THINNED)
        .singleElement()
        .extracting(Warning::text)
        .asString()
        .contains("vertices", "the field is", "a zone's area changed", "edges moved by at most");
  }

  /** Triangles of 0.5 x 48 cm x 4 mm are 10 cm2: 1 cm of tolerance, 1 cm2, leaves them. */
  @Test
  void aSmallToleranceLeavesWhatIsLarger() throws Exception {
    FieldLayout before = layout();
    FieldLayout after = ThinnedZones.of(before, 0.01);
    assertThat(after.boundary().getNumPoints())
        .isGreaterThan(before.boundary().getNumPoints() * 9 / 10);
  }
}
