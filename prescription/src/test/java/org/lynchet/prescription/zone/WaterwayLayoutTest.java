package org.lynchet.prescription.zone;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.lynchet.prescription.zone.SamplePlans.byZone;
import static org.lynchet.prescription.zone.SamplePlans.cornAndSoybean;
import static org.lynchet.prescription.zone.SamplePlans.field;
import static org.lynchet.prescription.zone.SamplePlans.fieldWithWaterways;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.lynchet.geometry.coverage.Waterway;
import org.lynchet.prescription.fault.RejectedException;
import org.lynchet.prescription.fault.Warning;
import org.lynchet.prescription.plan.PlannedStrip;
import org.lynchet.prescription.summary.Summary;

/** Holds fields with waterways against numbers worked out by hand; strips are 9.144 m wide. */
class WaterwayLayoutTest {
  /** Four strips, 36.576 m wide, 100 m long. */
  private static final String FOUR = "POLYGON ((0 0, 36.576 0, 36.576 100, 0 100, 0 0))";

  /** Aslant across all of it: 4 m high along the rows wherever they meet it. */
  private static final String SLANT = "POLYGON ((-10 30, 50 60, 50 64, -10 34, -10 30))";

  @Test
  void passesRunThroughAndAreNotPartial() throws RejectedException {
    FieldLayout dry = FieldLayout.of(cornAndSoybean().plan(), field(FOUR));
    FieldLayout wet = FieldLayout.of(cornAndSoybean().plan(), fieldWithWaterways(FOUR, SLANT));

    assertThat(wet.passes())
        .extracting(DrivenPass::line)
        .isEqualTo(dry.passes().stream().map(DrivenPass::line).toList());
    assertThat(wet.passes()).noneMatch(DrivenPass::partial);
    assertThat(wet.zones()).noneMatch(Zone::partial);
    assertThat(wet.passes())
        .allSatisfy(
            pass ->
                assertThat(pass.rowLengthsMetres())
                    .allSatisfy(row -> assertThat(row).isCloseTo(96, within(1e-6))));
  }

  /** A best placement lays the same field out along another line. */
  @Test
  void staysWhenTheAbLineMoves() throws RejectedException {
    FieldData wet = fieldWithWaterways(FOUR, SLANT);
    FieldLayout moved =
        FieldLayout.of(cornAndSoybean().plan(), wet.withFrame(SamplePlans.FRAME.movedRight(3)));
    assertThat(moved.waterways()).hasSize(1);
  }

  @Test
  void isNotPlantedAndReportedApart() throws RejectedException {
    FieldLayout layout = FieldLayout.of(cornAndSoybean().plan(), fieldWithWaterways(FOUR, SLANT));

    double way = layout.waterways().stream().mapToDouble(Waterway::areaSquareMetres).sum();
    double planted = layout.zones().stream().mapToDouble(Zone::areaSquareMetres).sum();
    assertThat(layout.waterways()).hasSize(1);
    assertThat(way).isCloseTo(36.576 * 4, within(1e-6));
    assertThat(planted + way)
        .isCloseTo(layout.areaSquareMetres(), within(1e-9 * layout.areaSquareMetres()));
    assertThat(Summary.of(layout).waterwaySquareMetres()).isEqualTo(way);
    assertThat(Summary.of(layout).crops())
        .extracting(crop -> crop.crop())
        .containsExactly("corn", "soybean");
  }

  @Test
  void liesOverHeadlandAndManagementZones() throws RejectedException {
    SamplePlans plans = cornAndSoybean().headland(1, true).zones(null);
    plans.strip(
        0,
        new PlannedStrip(
            "corn", "corn-planter", 1, byZone("tall-108", Map.of("low", 1.0, "high", 2.0)), null));
    FieldLayout layout =
        FieldLayout.of(
            plans.plan(),
            fieldWithWaterways(
                FOUR,
                SLANT,
                "low",
                "POLYGON ((-10 -10, 50 -10, 50 49, -10 49, -10 -10))",
                "high",
                "POLYGON ((-10 49, 50 49, 50 110, -10 110, -10 49))"));
    assertThat(layout.waterways())
        .singleElement()
        .satisfies(way -> assertThat(way.areaSquareMetres()).isCloseTo(146.304, within(1e-6)));
    assertThat(layout.zones()).extracting(Zone::managementZone).containsOnly("low", "high");
    assertThat(layout.headlandPasses()).hasSize(1);
  }

  /** Strips are laid out as if waterways were planted. */
  @Test
  void aStripThatIsAllWaterwayStillHasBorderRowsBesideIt() throws RejectedException {
    String strip = "POLYGON ((9.144 -5, 18.288 -5, 18.288 105, 9.144 105, 9.144 -5))";
    FieldLayout layout = FieldLayout.of(cornAndSoybean().plan(), fieldWithWaterways(FOUR, strip));
    assertThat(layout.passes()).hasSize(4);
    assertThat(layout.passes().get(1).rowsInField()).isZero();
    assertThat(layout.passes().get(0).borderRowsRight()).isEqualTo(2);
    assertThat(layout.waterways()).hasSize(1);
  }

  @Test
  void coveringTheWholeFieldIsAFault() {
    String all = "POLYGON ((-5 -5, 50 -5, 50 105, -5 105, -5 -5))";
    assertThatThrownBy(() -> FieldLayout.of(cornAndSoybean().plan(), fieldWithWaterways(FOUR, all)))
        .isInstanceOfSatisfying(
            RejectedException.class,
            rejected ->
                assertThat(rejected.faults().get(0).what())
                    .isEqualTo("waterways cover the whole field"));
  }

  @Test
  void headlandPassesAreNumberedFromTheInnermost() throws RejectedException {
    FieldLayout around =
        FieldLayout.of(
            cornAndSoybean().headland(2, true).plan(),
            field("POLYGON ((0 0, 100 0, 100 200, 0 200, 0 0))"));
    assertThat(around.headlandPasses()).extracting(HeadlandPass::number).containsExactly(1, 2);
    assertThat(around.headlandPasses().get(0).distanceMetres()).isCloseTo(13.716, within(1e-9));
    assertThat(around.headlandPasses().get(1).distanceMetres()).isCloseTo(4.572, within(1e-9));
    assertThat(around.headlandPasses())
        .allMatch(pass -> pass.machine().equals("corn-planter") && pass.crop().equals("corn"))
        .allMatch(pass -> pass.line().getNumGeometries() == 1);
  }

  @Test
  void headlandAtTheEnds() throws RejectedException {
    FieldLayout ends =
        FieldLayout.of(
            cornAndSoybean().headlandAtEnds(1, 30).plan(),
            field("POLYGON ((0 0, 36.576 0, 36.576 100, 0 100, 0 0))"));
    double headland =
        ends.zones().stream()
            .filter(zone -> zone.kind() == Zone.Kind.HEADLAND)
            .mapToDouble(Zone::areaSquareMetres)
            .sum();
    assertThat(headland).isCloseTo(2 * 9.144 * 36.576, within(1e-3));
    assertThat(ends.passes()).hasSize(4).noneMatch(DrivenPass::partial);
    assertThat(ends.headlandPasses())
        .singleElement()
        .satisfies(pass -> assertThat(pass.line().getNumGeometries()).isEqualTo(2));
    assertThat(ends.warnings()).extracting(Warning::code).isEqualTo(List.of());
  }
}
