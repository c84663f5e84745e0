package org.lynchet.prescription.zone;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.lynchet.prescription.zone.SamplePlans.byZone;
import static org.lynchet.prescription.zone.SamplePlans.cornAndSoybean;
import static org.lynchet.prescription.zone.SamplePlans.field;
import static org.lynchet.prescription.zone.SamplePlans.seeding;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.ObjectInputStream;
import java.io.ObjectOutputStream;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.lynchet.prescription.fault.RejectedException;
import org.lynchet.prescription.fault.Warning;
import org.lynchet.prescription.plan.PlannedGuidance.AbLineIs;
import org.lynchet.prescription.plan.PlannedStrip;
import org.lynchet.prescription.plan.PlannedStrip.Border;
import org.lynchet.prescription.plan.PlannedStrip.Sides;

/** Layouts small enough to work out by hand: strips are 9.144 m wide, border rows 2 x 0.762 m. */
class FieldLayoutTest {
  private static final double WIDTH = 9.144;
  private static final double BORDER = 1.524;

  /** Four whole strips, 100 m long. */
  private static final String FOUR_STRIPS = "POLYGON ((0 0, 36.576 0, 36.576 100, 0 100, 0 0))";

  @Test
  void fourWholeStrips() throws RejectedException {
    FieldLayout layout = FieldLayout.of(cornAndSoybean().plan(), field(FOUR_STRIPS));

    // Corn 1 has another crop on its right only, corn 3 on both sides.
    assertThat(picture(layout))
        .containsExactly(
            "1 corn centre tall-108 762",
            "1 corn border short-106 152",
            "2 soybean centre bean-2.4 914",
            "3 corn border short-106 152",
            "3 corn centre tall-108 610",
            "3 corn border short-106 152",
            "4 soybean centre bean-2.4 914");
    assertThat(layout.areaSquareMetres()).isCloseTo(4 * WIDTH * 100, within(1e-4));
    assertThat(layout.zones()).noneMatch(Zone::partial);
    assertThat(layout.passes())
        .extracting(pass -> pass.pass().number())
        .containsExactly(1, 2, 3, 4);
    assertThat(layout.passes().get(2).rowLengthMetres()).isCloseTo(12 * 100, within(1e-4));
    assertThat(layout.passes().get(1).rowLengthMetres()).isCloseTo(24 * 100, within(1e-4));
    assertThat(layout.warnings()).isEmpty();
  }

  /**
   * Three border rows each side of 24: in the first pass on the left, in the second on the right.
   */
  @Test
  void passesKnowTheirBorderRows() throws RejectedException {
    PlannedStrip corn =
        new PlannedStrip(
            "corn",
            "corn-planter",
            2,
            seeding("tall-108", 34000),
            new Border(3, Sides.BOTH, seeding("short-106", 36000)));
    FieldLayout layout =
        FieldLayout.of(
            cornAndSoybean().strip(0, corn).plan(),
            field("POLYGON ((-9.144 0, 27.432 0, 27.432 100, -9.144 100, -9.144 0))"));
    DrivenPass first = layout.passes().get(1);
    DrivenPass second = layout.passes().get(2);
    assertThat(first.borderRowsLeft()).isEqualTo(3);
    assertThat(first.borderRowsRight()).isZero();
    assertThat(second.borderRowsLeft()).isZero();
    assertThat(second.borderRowsRight()).isEqualTo(3);
    assertThat(second.isBorder(10)).isTrue();
    assertThat(second.isBorder(9)).isFalse();
    for (DrivenPass pass : layout.passes()) {
      double sum = pass.rowLengthsMetres().stream().mapToDouble(Double::doubleValue).sum();
      assertThat(sum).isCloseTo(pass.rowLengthMetres(), within(1e-9));
    }
  }

  @Test
  void zonesSumToTheField() throws RejectedException {
    FieldLayout layout =
        FieldLayout.of(
            cornAndSoybean().headland(1, true).plan(),
            field(
                "POLYGON ((-50 0, 90 -20, 120 130, 0 200, -50 0), (20 40, 30 80, 40 40, 20 40))"));
    double sum = layout.zones().stream().mapToDouble(Zone::areaSquareMetres).sum();
    assertThat(sum / layout.areaSquareMetres()).isCloseTo(1, within(1e-9));
  }

  @Test
  void linesLieOnTheirOffsets() throws RejectedException {
    FieldLayout layout = FieldLayout.of(cornAndSoybean().plan(), field(FOUR_STRIPS));
    for (DrivenPass pass : layout.passes()) {
      for (Coordinate at : pass.line().getCoordinates()) {
        Coordinate offset = SamplePlans.FRAME.toOffset(at.x, at.y);
        double expected = (pass.pass().number() - 0.5) * WIDTH;
        assertThat(offset.x).isCloseTo(expected, within(2e-4)); // 9 decimals are 0.1 mm
        assertThat(offset.y).isBetween(-2e-4, 100 + 2e-4);
      }
    }
  }

  @Test
  void passCentreShiftsByHalfAPass() throws RejectedException {
    FieldLayout layout =
        FieldLayout.of(
            cornAndSoybean().abLineIs(AbLineIs.PASS_CENTRE).plan(),
            field("POLYGON ((-4.572 0, 13.716 0, 13.716 50, -4.572 50, -4.572 0))"));
    assertThat(layout.passes()).hasSize(2);
    assertThat(layout.passes().get(0).pass().centreMetres()).isCloseTo(0, within(1e-9));
    assertThat(layout.passes().get(0).crop()).isEqualTo("corn");
  }

  @Test
  void aPassNarrowerThanItsMachineIsPartial() throws RejectedException {
    FieldLayout layout =
        FieldLayout.of(cornAndSoybean().plan(), field("POLYGON ((0 0, 14 0, 14 100, 0 100, 0 0))"));
    assertThat(layout.zones().stream().filter(Zone::partial).map(Zone::crop))
        .containsExactly("soybean");
    // Rows 1 to 12 stand at 9.144 + 0.1905 + k x 0.381 m; the 13th would stand at 13.9065 m.
    assertThat(layout.passes().get(1).rowsInField()).isEqualTo(13);
    assertThat(codes(layout)).containsExactly(Warning.Code.PARTIAL_PASSES);
  }

  @Test
  void onlyThePartialPassOfAStripIsPartial() throws RejectedException {
    PlannedStrip twoPasses =
        new PlannedStrip("soybean", "bean-planter", 2, seeding("bean-2.4", 140000), null);
    FieldLayout layout =
        FieldLayout.of(
            cornAndSoybean().strip(1, twoPasses).plan(),
            field("POLYGON ((0 0, 20 0, 20 100, 0 100, 0 0))"));
    List<Zone> soybean =
        layout.zones().stream().filter(zone -> zone.crop().equals("soybean")).toList();
    assertThat(soybean).extracting(Zone::partial).containsExactly(false, true);
    assertThat(soybean.get(0).areaSquareMetres()).isCloseTo(WIDTH * 100, within(1e-4));
    assertThat(soybean.get(1).areaSquareMetres()).isCloseTo((20 - 2 * WIDTH) * 100, within(1e-4));
  }

  @Test
  void bordersOnOneSide() throws RejectedException {
    PlannedStrip right =
        new PlannedStrip(
            "corn",
            "corn-planter",
            1,
            seeding("tall-108", 34000),
            new Border(2, Sides.RIGHT, seeding("short-106", 36000)));
    FieldLayout layout =
        FieldLayout.of(cornAndSoybean().strip(0, right).plan(), field(FOUR_STRIPS));
    assertThat(layout.zones().stream().filter(zone -> zone.kind() == Zone.Kind.BORDER))
        .hasSize(2)
        .allMatch(zone -> Math.abs(zone.areaSquareMetres() - BORDER * 100) < 1e-4);
  }

  @Test
  void aHoleSplitsAStripThatStaysOne() throws RejectedException {
    FieldLayout layout =
        FieldLayout.of(
            cornAndSoybean().plan(),
            field(
                "POLYGON ((0 0, 27.432 0, 27.432 100, 0 100, 0 0),"
                    + " (5 40, 5 60, 22 60, 22 40, 5 40))"));
    assertThat(layout.zones().stream().filter(zone -> zone.strip() == 2))
        .hasSize(2)
        .allMatch(zone -> Math.abs(zone.areaSquareMetres() - WIDTH * 40) < 1e-3);
    assertThat(layout.passes().get(1).line().getNumGeometries()).isEqualTo(2);
  }

  @Test
  void headlandFollowsTheBoundary() throws RejectedException {
    FieldLayout layout =
        FieldLayout.of(
            cornAndSoybean().headland(1, true).plan(),
            field("POLYGON ((0 0, 60 0, 60 100, 0 100, 0 0))"));
    Zone headland =
        layout.zones().stream()
            .filter(z -> z.kind() == Zone.Kind.HEADLAND)
            .findFirst()
            .orElseThrow();
    assertThat(headland.strip()).isZero();
    assertThat(headland.areaSquareMetres())
        .isCloseTo(6000 - (60 - 2 * WIDTH) * (100 - 2 * WIDTH), within(1e-3));
    assertThat(layout.passes())
        .allMatch(pass -> pass.rowLengthMetres() / pass.rowsInField() < 100 - 2 * WIDTH + 1e-3);
  }

  @Test
  void headlandThatFillsTheFieldIsAWarning() throws RejectedException {
    FieldLayout layout =
        FieldLayout.of(
            cornAndSoybean().headland(3, true).plan(),
            field("POLYGON ((0 0, 50 0, 50 100, 0 100, 0 0))"));
    assertThat(layout.zones()).extracting(Zone::kind).containsOnly(Zone.Kind.HEADLAND);
    assertThat(codes(layout))
        .contains(Warning.Code.HEADLAND_FILLS_FIELD, Warning.Code.NOTHING_PLANTED);
  }

  @Test
  void aStripWiderThanTheFieldIsAWarning() throws RejectedException {
    FieldLayout layout =
        FieldLayout.of(cornAndSoybean().plan(), field("POLYGON ((1 0, 6 0, 6 100, 1 100, 1 0))"));
    assertThat(codes(layout)).contains(Warning.Code.STRIP_WIDER_THAN_FIELD);
  }

  @Test
  void ratesGoByManagementZone() throws RejectedException {
    PlannedStrip soybean =
        new PlannedStrip(
            "soybean",
            "bean-planter",
            1,
            byZone("bean-2.4", Map.of("low", 120000.0, "high", 150000.0)),
            null);
    FieldLayout layout =
        FieldLayout.of(
            cornAndSoybean().strip(1, soybean).zones(null).plan(),
            field(
                "POLYGON ((0 0, 18.288 0, 18.288 100, 0 100, 0 0))",
                "low",
                "POLYGON ((-5 -5, 30 -5, 30 40, -5 40, -5 -5))",
                "high",
                "POLYGON ((-5 40, 30 40, 30 105, -5 105, -5 40))"));
    Map<Double, Double> area =
        layout.zones().stream()
            .filter(zone -> zone.crop().equals("soybean"))
            .collect(
                Collectors.toMap(zone -> zone.rate().seeds(), zone -> zone.areaSquareMetres()));
    assertThat(area.get(120000.0)).isCloseTo(WIDTH * 40, within(1e-3));
    assertThat(area.get(150000.0)).isCloseTo(WIDTH * 60, within(1e-3));
    assertThat(layout.zones()).extracting(Zone::managementZone).containsOnly("low", "high");
  }

  @Test
  void aManagementZoneWithoutARateIsNamed() {
    PlannedStrip soybean =
        new PlannedStrip(
            "soybean", "bean-planter", 1, byZone("bean-2.4", Map.of("low", 120000.0)), null);
    assertThatThrownBy(
            () ->
                FieldLayout.of(
                    cornAndSoybean().strip(1, soybean).zones("wet").plan(),
                    field(FOUR_STRIPS, "low", "POLYGON ((-5 -5, 50 -5, 50 40, -5 40, -5 -5))")))
        .isInstanceOfSatisfying(
            RejectedException.class,
            rejected ->
                assertThat(rejected.faults())
                    .singleElement()
                    .satisfies(fault -> assertThat(fault.what()).contains("'wet' has no rate")));
  }

  @Test
  void whatLiesInNoManagementZoneIsAFaultWithItsPlace() {
    assertThatThrownBy(
            () ->
                FieldLayout.of(
                    cornAndSoybean().zones(null).plan(),
                    field(FOUR_STRIPS, "low", "POLYGON ((-5 -5, 50 -5, 50 40, -5 40, -5 -5))")))
        .isInstanceOfSatisfying(
            RejectedException.class,
            rejected ->
                assertThat(rejected.faults().get(0).what())
                    .contains("lie in no management zone")
                    .contains("longitude -94.09"));
  }

  @Test
  void sliversOutsideTheManagementZonesGoToTheZoneBesideThem() throws RejectedException {
    FieldLayout layout =
        FieldLayout.of(
            cornAndSoybean().zones(null).plan(),
            field(
                FOUR_STRIPS,
                "low",
                "POLYGON ((-5 -5, 50 -5, 50 40, -5 40, -5 -5))",
                "high",
                "POLYGON ((-5 40.1, 50 40.1, 50 105, -5 105, -5 40.1))"));
    assertThat(codes(layout)).containsExactly(Warning.Code.ZONES_LEAVE_SLIVERS);
    assertThat(layout.zones()).extracting(Zone::managementZone).containsOnly("low", "high");
    double sum = layout.zones().stream().mapToDouble(Zone::areaSquareMetres).sum();
    assertThat(sum / layout.areaSquareMetres()).isCloseTo(1, within(1e-9));
  }

  @Test
  void smallPiecesJoinTheirStrip() throws RejectedException {
    // A corner of 3 m by 3 m beyond the border edge of corn: 4.5 m2 of centre.
    String corner =
        "POLYGON ((7.62 0, 18.288 0, 18.288 100, 7.62 100, 7.62 20, 4.62 20, 7.62 17, 7.62 0))";
    FieldLayout joined = FieldLayout.of(cornAndSoybean().plan(), field(corner));
    FieldLayout apart = FieldLayout.of(cornAndSoybean().minimumPiece(0).plan(), field(corner));
    assertThat(joined.joinedPieces().joined()).isEqualTo(1);
    assertThat(joined.joinedPieces().joinedSquareMetres()).isCloseTo(4.5, within(1e-3));
    assertThat(apart.joinedPieces().joined()).isZero();
    assertThat(joined.zones()).hasSize(apart.zones().size() - 1);
  }

  @Test
  void serialises() throws Exception {
    FieldLayout layout =
        FieldLayout.of(cornAndSoybean().headland(1, true).plan(), field(FOUR_STRIPS));
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    try (ObjectOutputStream out = new ObjectOutputStream(bytes)) {
      out.writeObject(layout);
    }
    try (ObjectInputStream in =
        new ObjectInputStream(new ByteArrayInputStream(bytes.toByteArray()))) {
      FieldLayout back = (FieldLayout) in.readObject();
      assertThat(back.plan()).isEqualTo(layout.plan());
      assertThat(back.zones()).hasSameSizeAs(layout.zones());
      Geometry first = back.zones().get(0).polygon();
      assertThat(first.equalsExact(layout.zones().get(0).polygon())).isTrue();
      assertThat(back.frame().toOffset(-94.1, 43.55).x).isCloseTo(0, within(1e-9));
    }
  }

  private static List<String> picture(FieldLayout layout) {
    return layout.zones().stream()
        .map(
            zone ->
                zone.strip()
                    + " "
                    + zone.crop()
                    + " "
                    + zone.kind().word()
                    + " "
                    + zone.product()
                    + " "
                    + Math.round(zone.areaSquareMetres()))
        .toList();
  }

  private static List<Warning.Code> codes(FieldLayout layout) {
    return layout.warnings().stream().map(Warning::code).toList();
  }
}
