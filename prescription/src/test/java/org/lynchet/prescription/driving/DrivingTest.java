package org.lynchet.prescription.driving;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.lynchet.prescription.zone.SamplePlans.cornAndSoybean;
import static org.lynchet.prescription.zone.SamplePlans.field;
import static org.lynchet.prescription.zone.SamplePlans.seeding;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.util.Collections;
import java.util.List;
import java.util.Objects;
import org.junit.jupiter.api.Test;
import org.lynchet.prescription.driving.LoadingChart.Misplanted;
import org.lynchet.prescription.driving.LoadingChart.Serves;
import org.lynchet.prescription.fault.RejectedException;
import org.lynchet.prescription.plan.PlannedStrip;
import org.lynchet.prescription.plan.PlannedStrip.Border;
import org.lynchet.prescription.plan.PlannedStrip.Sides;
import org.lynchet.prescription.quantity.AreaUnit;
import org.lynchet.prescription.summary.Summary;
import org.lynchet.prescription.summary.SummaryJson;
import org.lynchet.prescription.zone.FieldLayout;
import org.lynchet.prescription.zone.SamplePlans;

/**
 * Ten strips of 9.144 m and 400 m, corn first: corn has borders of two rows, the first on one side.
 */
class DrivingTest {
  private static final String TEN_STRIPS = "POLYGON ((0 0, 91.44 0, 91.44 400, 0 400, 0 0))";

  private static PlannedStrip corn(int passes, Sides sides) {
    return new PlannedStrip(
        "corn",
        "corn-planter",
        passes,
        seeding("tall-108", 34000),
        new Border(2, sides, seeding("short-106", 36000)));
  }

  private static FieldLayout layout(SamplePlans plans, String wkt) throws RejectedException {
    return FieldLayout.of(plans.plan(), field(wkt));
  }

  private static Loading loading(PlanterDriving driving) {
    return Objects.requireNonNull(driving.loading());
  }

  @Test
  void plantersSkipTheOtherCropsStrips() throws RejectedException {
    Driving driving = Driving.of(layout(cornAndSoybean(), TEN_STRIPS));
    assertThat(driving.planters()).extracting(PlanterDriving::crop).contains("corn", "soybean");
    PlanterDriving corn = driving.planters().get(0);
    assertThat(corn.chosen().trips())
        .extracting(trip -> trip.pass().number())
        .containsExactly(1, 3, 5, 7, 9);
    assertThat(corn.chosen().turns())
        .allSatisfy(turn -> assertThat(turn.widthMetres()).isCloseTo(18.288, within(1e-6)));
    assertThat(corn.chosen().inRowMetres()).isCloseTo(5 * 400, within(1e-2));
    assertThat(corn.plantedSquareMetres()).isCloseTo(5 * 9.144 * 400, within(1e-2));
    // 30 ft, 5 mph, 65 %: 30 x 5 x 0.65 / 8.25 = 11.818 ac/h (U. Kentucky AEN-73).
    assertThat(corn.capacitySquareMetresPerHour() / AreaUnit.ACRE.squareMetres())
        .isCloseTo(11.818, within(5e-4));
  }

  @Test
  void theFirstStripHasNoBorderOnTheFieldsSide() throws RejectedException {
    Loading loading = loading(Driving.of(layout(cornAndSoybean(), TEN_STRIPS)).planters().get(0));
    assertThat(loading.chosen().chart().products())
        .containsExactly(
            "short-106",
            "short-106",
            "tall-108",
            "tall-108",
            "tall-108",
            "tall-108",
            "tall-108",
            "tall-108",
            "tall-108",
            "tall-108",
            "short-106",
            "short-106");
    assertThat(loading.chosen().chart().serves()).isEqualTo(Serves.MOST_PASSES);
    assertThat(loading.chosen().chart().exceptions()).hasSize(1);
    Misplanted rows = loading.chosen().chart().exceptions().get(0);
    assertThat(rows.pass()).isEqualTo(1);
    assertThat(rows.units()).containsExactly(1, 2);
    assertThat(rows.wanted()).isEqualTo("tall-108");
    assertThat(rows.rowMetres()).isCloseTo(800, within(1e-2));
  }

  @Test
  void theHeadlandTakesOneProductFromAllUnits() throws RejectedException {
    FieldLayout layout = layout(cornAndSoybean().headland(1, true), TEN_STRIPS);
    Driving driving = Driving.of(layout);
    Loading loading = loading(driving.planters().get(0));
    assertThat(loading.headlandProduct()).isEqualTo("tall-108");
    assertThat(Loading.unitsUnlike("tall-108", loading.chosen().chart()))
        .containsExactly(1, 2, 11, 12);
    assertThat(DrivingText.of(driving, AreaUnit.ACRE))
        .contains("HEADLAND: it takes tall-108 from every row unit")
        .contains("row units 1-2, 11-12");
    assertThat(loading(driving.planters().get(1)).headlandProduct()).isNull();
  }

  @Test
  void oneSidedBordersOnOnePassAdviseAnotherWay() throws RejectedException {
    FieldLayout layout = layout(cornAndSoybean().strip(0, corn(1, Sides.RIGHT)), TEN_STRIPS);
    Driving driving = Driving.of(layout);
    Loading loading = loading(driving.planters().get(0));
    assertThat(loading.chosen().chart().serves()).isEqualTo(Serves.TOO_FEW_PASSES);
    assertThat(loading.advice())
        .contains(
            "drive in another order: " + PassOrder.ONE_WAY.words(),
            "plant border rows on both sides of the strip");
    assertThat(loading.findUsable().orElseThrow().chart().products())
        .isEqualTo(
            List.of(
                "tall-108",
                "tall-108",
                "tall-108",
                "tall-108",
                "tall-108",
                "tall-108",
                "tall-108",
                "tall-108",
                "tall-108",
                "tall-108",
                "short-106",
                "short-106"));
    assertThat(DrivingText.of(driving, AreaUnit.ACRE))
        .contains("NO LOADING SERVES THIS ORDER", "+1 +3 +5 +7 +9");
  }

  @Test
  void threePassesAdviseTwo() throws RejectedException {
    String wide = "POLYGON ((0 0, 365.76 0, 365.76 400, 0 400, 0 0))";
    FieldLayout layout = layout(cornAndSoybean().strip(0, corn(3, Sides.BOTH)), wide);
    LoadingAdvice advice =
        new LoadingAdvice(PassOrder.IN_SEQUENCE, 12, List.of(layout.plan().strips().get(0)));
    assertThat(advice.of(List.of())).containsExactly("plant strips of 2 passes, an even number");
  }

  /** A gap is not in the row, and is driven across. */
  @Test
  void aHoleIsAGap() throws RejectedException {
    String hole =
        "POLYGON ((0 0, 91.44 0, 91.44 400, 0 400, 0 0), "
            + "(17 100, 17 150, 29 150, 29 100, 17 100))";
    DrivingPlan corn = Driving.of(layout(cornAndSoybean(), hole)).planters().get(0).chosen();
    assertThat(corn.gapMetres()).isCloseTo(50, within(1e-2));
    assertThat(corn.inRowMetres()).isCloseTo(5 * 400 - 50, within(1e-2));
  }

  @Test
  void jsonSaysTheSame() throws Exception {
    FieldLayout layout = layout(cornAndSoybean().headland(1, true), TEN_STRIPS);
    Summary summary = Summary.of(layout);
    JsonNode json = new ObjectMapper().readTree(SummaryJson.of(summary, Collections.emptyList()));
    JsonNode corn = json.get("driving").get(0);
    PlanterDriving expected = summary.driving().planters().get(0);
    assertThat(corn.get("machine").asText()).isEqualTo("corn-planter");
    assertThat(corn.get("in_row_m").asDouble())
        .isCloseTo(expected.chosen().inRowMetres(), within(1e-4));
    assertThat(corn.get("passes")).hasSameSizeAs(expected.chosen().trips());
    assertThat(corn.get("passes").get(1).get("direction").asText()).isEqualTo("against");
    double share = corn.get("in_row_h").asDouble() / corn.get("driving_h").asDouble();
    assertThat(corn.get("share_in_row").asDouble()).isCloseTo(share, within(2e-3));
    JsonNode loading = json.get("loading").get(0);
    assertThat(loading.get("row_units")).hasSize(12);
    assertThat(loading.get("row_units").get(0).asText()).isEqualTo("short-106");
    assertThat(loading.get("row_units_to_change_for_headland")).hasSize(4);
  }

  /** Common practice is in miles an hour and feet: 5 mph are 8.05 km/h, 20 ft are 6.10 m. */
  @Test
  void aMetricPlanReadsNoFeetAndMiles() throws RejectedException {
    Driving driving = Driving.of(layout(cornAndSoybean().headland(1, true), TEN_STRIPS));
    assertThat(DrivingText.of(driving, AreaUnit.ACRE)).contains("5 mph", "turn radius 20 ft");
    assertThat(DrivingText.of(driving, AreaUnit.HECTARE))
        .contains("8 km/h", "turn radius 6.1 m")
        .doesNotContainPattern(" (mph|ft|mi)\\b");
  }

  @Test
  void textAndTableFitAHundredColumns() throws RejectedException {
    Driving driving = Driving.of(layout(cornAndSoybean().headland(1, true), TEN_STRIPS));
    for (AreaUnit area : List.of(AreaUnit.ACRE, AreaUnit.HECTARE)) {
      assertThat(DrivingText.of(driving, area).lines()).allMatch(line -> line.length() <= 100);
      assertThat(DrivingTable.of(driving, area).lines()).allMatch(line -> line.length() <= 100);
    }
  }
}
