package org.lynchet.prescription.driving;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.lynchet.prescription.zone.SamplePlans.cornAndSoybean;
import static org.lynchet.prescription.zone.SamplePlans.field;
import static org.lynchet.prescription.zone.SamplePlans.seeding;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.lynchet.prescription.fault.RejectedException;
import org.lynchet.prescription.plan.Plan;
import org.lynchet.prescription.plan.PlannedStrip;
import org.lynchet.prescription.quantity.AreaUnit;
import org.lynchet.prescription.zone.CurvedFields;
import org.lynchet.prescription.zone.FieldLayout;
import org.lynchet.prescription.zone.SamplePlans;

class FieldMachinesTest {
  private static final String TEN_STRIPS = "POLYGON ((0 0, 91.44 0, 91.44 400, 0 400, 0 0))";

  private static List<FieldDriving> driven(SamplePlans plans, String wkt) throws RejectedException {
    return Driving.of(FieldLayout.of(plans.plan(), field(wkt))).others();
  }

  private static double acresPerHour(CropDriving one) {
    return one.capacitySquareMetresPerHour() / AreaUnit.ACRE.squareMetres();
  }

  @Test
  void sprayerAndCombineDriveEachCropByItself() throws RejectedException {
    List<FieldDriving> driven =
        driven(cornAndSoybean().sprayer(90, 10.0).combine("combine", 30), TEN_STRIPS);

    assertThat(driven)
        .extracting(one -> one.machineName() + " in " + one.crop())
        .containsExactly(
            "sprayer in corn", "sprayer in soybean", "combine in corn", "combine in soybean");
    for (FieldDriving one : driven) {
      assertThat(one.chosen().trips()).hasSize(5);
      assertThat(one.chosen().inRowMetres()).isCloseTo(5 * 400, within(1e-2));
      assertThat(one.chosen().turns())
          .allSatisfy(turn -> assertThat(turn.widthMetres()).isCloseTo(18.288, within(1e-6)));
      assertThat(one.workedSquareMetres()).isCloseTo(5 * 9.144 * 400, within(1e-2));
    }
    // Feet times miles an hour times efficiency by 8.25: U. Kentucky AEN-73, 1991.
    assertThat(acresPerHour(driven.get(0))).isCloseTo(30 * 6.5 * 0.65 / 8.25, within(1e-9));
    assertThat(acresPerHour(driven.get(2))).isCloseTo(30 * 3 * 0.65 / 8.25, within(1e-9));
  }

  /**
   * Strips of 60 ft, a header of 30 ft: two passes a strip, 30 ft apart, then 90 ft to the next.
   */
  @Test
  void aCombineTakesAWideStripInSeveralPasses() throws RejectedException {
    SamplePlans plans =
        cornAndSoybean()
            .strip(0, new PlannedStrip("corn", "corn-planter", 2, seeding("a", 34000), null))
            .strip(1, new PlannedStrip("soybean", "bean-planter", 2, seeding("b", 1e5), null))
            .combine("combine", 30);
    String wide = "POLYGON ((0 0, 73.152 0, 73.152 400, 0 400, 0 0))";
    FieldDriving corn = driven(plans, wide).get(0);

    assertThat(corn.chosen().trips())
        .extracting(trip -> Math.round(trip.pass().centreMetres() / 0.3048))
        .containsExactlyInAnyOrder(15L, 45L, 135L, 165L);
    assertThat(corn.widthMetres()).isCloseTo(9.144, within(1e-9));
    assertThat(corn.chosen().inRowMetres()).isCloseTo(4 * 400, within(1e-2));
  }

  /** A header of 60 ft over two planter passes runs as long as the longer of them. */
  @Test
  void aWideHeaderRunsAsLongAsAnyPlanterPassUnderIt() throws RejectedException {
    SamplePlans plans =
        cornAndSoybean()
            .strip(0, new PlannedStrip("corn", "corn-planter", 2, seeding("a", 34000), null))
            .combine("combine", 60, "corn");
    String step = "POLYGON ((0 0, 18.288 0, 18.288 400, 9.144 400, 9.144 300, 0 300, 0 0))";
    List<FieldDriving> driven = driven(plans, step);

    assertThat(driven).hasSize(1);
    assertThat(driven.get(0).chosen().trips()).hasSize(1);
    assertThat(driven.get(0).chosen().inRowMetres()).isCloseTo(400, within(1e-2));
    assertThat(driven.get(0).chosen().turns()).isEmpty();
  }

  /** A gap is driven across, as with planters. */
  @Test
  void aHoleIsAGap() throws RejectedException {
    String hole =
        "POLYGON ((0 0, 91.44 0, 91.44 400, 0 400, 0 0), "
            + "(17 100, 17 150, 29 150, 29 100, 17 100))";
    for (FieldDriving corn :
        driven(cornAndSoybean().sprayer(30, 10.0).combine("combine", 30, "corn"), hole)) {
      if (corn.crop().equals("corn")) {
        assertThat(corn.chosen().gapMetres()).isCloseTo(50, within(1e-2));
        assertThat(corn.chosen().inRowMetres()).isCloseTo(5 * 400 - 50, within(1e-2));
      }
    }
  }

  @Test
  void eachCropIsHarvestedByTheFirstCombineOfIt() throws RejectedException {
    List<FieldDriving> driven =
        driven(
            cornAndSoybean()
                .combine("corn-head", 30, "corn")
                .combine("grain-head", 30)
                .combine("spare", 30),
            TEN_STRIPS);

    assertThat(driven)
        .extracting(one -> one.machineName() + " in " + one.crop())
        .containsExactly("corn-head in corn", "grain-head in soybean");
  }

  /**
   * A section of 40 ft reaches over soybean from a corn strip of 30 ft, and fits one of 60 ft: the
   * sprayer is not driven over strips on which it may open nothing.
   */
  @Test
  void aStripThatMayNotBeSprayedIsNotDriven() throws RejectedException {
    List<FieldDriving> none = driven(cornAndSoybean().sprayer(80, 40.0), TEN_STRIPS);
    assertThat(none).isEmpty();

    SamplePlans plans =
        cornAndSoybean()
            .sprayer(120, 60.0)
            .pattern(
                List.of(
                    new PlannedStrip("corn", "corn-planter", 2, seeding("a", 34000), null),
                    new PlannedStrip("soybean", "bean-planter", 1, seeding("b", 1e5), null),
                    new PlannedStrip("corn", "corn-planter", 1, seeding("a", 34000), null),
                    new PlannedStrip("soybean", "bean-planter", 1, seeding("b", 1e5), null)));
    String oneOfEach = "POLYGON ((0 0, 45.72 0, 45.72 400, 0 400, 0 0))";
    FieldLayout layout = FieldLayout.of(plans.plan(), field(oneOfEach));
    Driving driving = Driving.of(layout);
    assertThat(driving.others()).hasSize(1);
    FieldDriving corn = driving.others().get(0);
    assertThat(corn.chosen().trips()).hasSize(1);
    assertThat(corn.widthMetres()).isCloseTo(18.288, within(1e-6));
    assertThat(corn.workedSquareMetres()).isCloseTo(18.288 * 400, within(1e-2));
    // One pass of 120 ft takes the block of 90 ft; 60 ft of it are what is sprayed in strips.
    FieldTime time = FieldTime.of(layout, driving).get(2);
    assertThat(time.machine()).isEqualTo("sprayer");
    assertThat(time.blockHours()).isCloseTo(time.stripHours() * 2 / 3, within(1e-6));
  }

  /** Along a curve a pass is as long as the circle on which the machine's middle is driven. */
  @Test
  void alongACurvePassesAreAsLongAsTheirCircles() throws RejectedException {
    Plan plan = cornAndSoybean().sprayer(90, 10.0).combine("combine", 30).plan();
    List<CropDriving> driven = Driving.of(FieldLayout.of(plan, CurvedFields.ring(null))).all();
    assertThat(driven).hasSize(6);
    for (CropDriving one : driven) {
      double circles =
          one.chosen().trips().stream()
              .mapToDouble(trip -> CurvedFields.RADIUS + trip.pass().centreMetres())
              .map(radius -> 2 * CurvedFields.HALF_ANGLE * radius)
              .sum();
      assertThat(one.chosen().inRowMetres()).as(one.machineName()).isCloseTo(circles, within(0.1));
      assertThat(one.chosen().gapMetres()).isCloseTo(0, within(1e-6));
    }
  }
}
