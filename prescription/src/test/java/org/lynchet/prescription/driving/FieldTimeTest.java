package org.lynchet.prescription.driving;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.lynchet.prescription.zone.SamplePlans.cornAndSoybean;
import static org.lynchet.prescription.zone.SamplePlans.field;
import static org.lynchet.prescription.zone.SamplePlans.seeding;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.lynchet.prescription.fault.RejectedException;
import org.lynchet.prescription.plan.PlannedStrip;
import org.lynchet.prescription.zone.FieldLayout;
import org.lynchet.prescription.zone.SamplePlans;

/** Twelve strips of 9.144 m and 400 m, corn first; twice the turn radius is 12.192 m. */
class FieldTimeTest {
  private static final String TWELVE_STRIPS = "POLYGON ((0 0, 109.728 0, 109.728 400, 0 400, 0 0))";
  private static final double MILE = 1609.344;
  private static final double TURN = 20 / 3600.0;

  private static List<FieldTime> times(SamplePlans plans, String wkt) throws RejectedException {
    FieldLayout layout = FieldLayout.of(plans.plan(), field(wkt));
    return FieldTime.of(layout, Driving.of(layout));
  }

  private static SamplePlans machines() {
    return cornAndSoybean().sprayer(90, 10.0).combine("combine", 30);
  }

  /**
   * By hand. Strips: six passes and five turns of 18.288 m, each 20 s and 6.096 m beyond the half
   * circle. A block of 54.864 m: two passes of a 90 ft boom and a turn of 27.432 m.
   */
  @Test
  void aWideBoomTakesABlockInFewerPasses() throws RejectedException {
    FieldTime corn = times(machines(), TWELVE_STRIPS).get(2);
    assertThat(corn.machine() + " " + corn.crop()).isEqualTo("sprayer corn");
    double speed = 6.5 * MILE;
    assertThat(corn.stripHours())
        .isCloseTo(2400 / speed + 5 * (TURN + 6.096 / speed), within(1e-5));
    assertThat(corn.blockHours()).isCloseTo(800 / speed + TURN + 15.24 / speed, within(1e-5));
    assertThat(corn.moreHours()).isEqualTo(corn.stripHours() - corn.blockHours());
  }

  /**
   * By hand. A header as wide as a strip has six passes in the block too; neighbours would need
   * loops, so it jumps: 3, 2, 3, 2 and 3 passes, 118.872 m in all.
   */
  @Test
  void aCombineAsWideAsAStripOnlyTurnsOtherwise() throws RejectedException {
    FieldTime soybean = times(machines(), TWELVE_STRIPS).get(5);
    assertThat(soybean.machine() + " " + soybean.crop()).isEqualTo("combine soybean");
    double speed = 3 * MILE;
    assertThat(soybean.stripHours())
        .isCloseTo(2400 / speed + 5 * (TURN + 6.096 / speed), within(1e-5));
    assertThat(soybean.blockHours())
        .isCloseTo(2400 / speed + 5 * TURN + (118.872 - 5 * 12.192) / speed, within(1e-5));
  }

  /** Rows of the left block are shorter, yet its hours are for the area of the strips. */
  @Test
  void blocksOfAnUnevenFieldHaveTheStripsArea() throws RejectedException {
    String wedge = "POLYGON ((0 0, 109.728 0, 109.728 800, 0 200, 0 0))";
    FieldLayout layout = FieldLayout.of(machines().plan(), field(wedge));
    Driving driving = Driving.of(layout);
    for (FieldTime time : FieldTime.of(layout, driving)) {
      DrivingPlan strips =
          driving.all().stream()
              .filter(one -> one.machineName().equals(time.machine()))
              .filter(one -> one.crop().equals(time.crop()))
              .findFirst()
              .orElseThrow()
              .chosen();
      if (!time.machine().equals("sprayer")) {
        assertThat(time.blockHours() - strips.inRowHours())
            .as("turning of " + time)
            .isBetween(0.8 * 5 * TURN, 2.5 * strips.turningHours());
      }
    }
  }

  /** Where a crop stands alone, strips are the block. */
  @Test
  void oneCropIsABlockAlready() throws RejectedException {
    PlannedStrip corn =
        new PlannedStrip("corn", "corn-planter", 1, seeding("tall-108", 34000), null);
    for (FieldTime time : times(cornAndSoybean().pattern(List.of(corn, corn)), TWELVE_STRIPS)) {
      assertThat(time.moreHours()).isCloseTo(0, within(1e-9));
    }
  }
}
