package org.lynchet.prescription.placement;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Map;
import java.util.Random;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.lynchet.geometry.guidance.OffsetFrame;
import org.lynchet.geometry.strip.StripPattern;
import org.lynchet.prescription.plan.PlacementChoices;
import org.lynchet.prescription.plan.PlacementChoices.Kind;
import org.lynchet.prescription.plan.PlacementWeights;
import org.lynchet.prescription.plan.Plan;
import org.lynchet.prescription.plan.PlannedStrip;
import org.lynchet.prescription.zone.FieldData;
import org.lynchet.prescription.zone.PlanPattern;
import org.lynchet.prescription.zone.SamplePlans;

/** Placements that are read off a swept field lose what they lose when they are laid out. */
class PlacementReaderTest {
  private static final PlacementChoices MORE_CORN =
      new PlacementChoices(
          Kind.BEST,
          List.of(),
          PlacementWeights.DEFAULT,
          Map.of("corn", 0.55, "soybean", 0.3, "wheat", 0.15));

  /** Fields in metres; all invented. */
  @ParameterizedTest(name = "{0}")
  @CsvSource(
      delimiter = '|',
      textBlock =
"""
rectangle          | POLYGON((-20 0, 150 0, 150 300, -20 300, -20 0))
L                  | POLYGON((0 0, 200 0, 200 90, 80 90, 80 250, 0 250, 0 0))
slanting L         | POLYGON((0 0, 200 40, 190 130, 95 105, 70 270, -15 250, 0 0))
hole               | POLYGON((0 0, 220 10, 210 240, -9 210, 0 0), (60 60, 90 120, 140 110, 130 50, 60 60))
two holes, one wide| POLYGON((0 0, 220 0, 220 240, 0 240, 0 0), (20 100, 20 110, 200 112, 200 98, 20 100), (50 150, 50 190, 90 150, 50 150))
U                  | POLYGON((0 0, 180 0, 170 200, 130 210, 125 60, 40 50, 45 190, 0 200, 0 0))
two parts          | MULTIPOLYGON(((0 0, 90 0, 60 200, 0 200, 0 0)), ((130 20, 250 0, 250 150, 140 160, 130 20)))
two parts far apart| MULTIPOLYGON(((0 0, 40 0, 40 200, 0 200, 0 0)), ((300 0, 360 0, 350 150, 300 160, 300 0)))
parts that touch   | MULTIPOLYGON(((0 0, 90 0, 60 100, 0 0)), ((60 100, 200 90, 200 200, 60 100)))
triangle           | POLYGON((0 0, 260 40, 90 230, 0 0))
""")
  void termsAreThoseOfTheFieldLaidOut(String name, String wkt) {
    Random random = new Random(name.hashCode());
    FieldData field = SamplePlans.field(wkt);
    for (Plan plan :
        List.of(
            SamplePlans.cornAndSoybean().plan(),
            SamplePlans.cornAndSoybean().headland(1, true).plan(),
            SamplePlans.cornAndSoybean()
                .strip(1, strip("soybean", "bean-planter", 2))
                .strip(strip("wheat", "bean-planter", 1))
                .strip(strip("corn", "bean-planter", 1))
                .placement(MORE_CORN)
                .plan())) {
      for (int i = 0; i < 12; i++) {
        double turn = i < 4 ? 0 : 360 * random.nextDouble() - 180;
        check(plan, field, turn, 40 * random.nextDouble() - 20, name + " " + i);
      }
      check(plan, field, 0, 0, name);
      check(plan, field, 0, -9.144 / 12, name);
    }
  }

  private static PlannedStrip strip(String crop, String planter, int passes) {
    return new PlannedStrip(crop, planter, passes, SamplePlans.seeding(crop, 140000), null);
  }

  private static void check(Plan plan, FieldData field, double turn, double shift, String as) {
    StripPattern pattern = PlanPattern.of(plan);
    InsideHeadland inside = InsideHeadland.of(plan, field);
    PlacementTerms read =
        new PlacementReader(plan, pattern, inside.swept(turn), inside.headlandSquareMetres())
            .read(pattern.shifted(shift));

    OffsetFrame frame = field.frame().turned(Math.toRadians(turn)).movedRight(shift);
    PlacementTerms laidOut = LaidOut.terms(plan, field.withFrame(frame));

    assertThat(read.pieces()).as(as).isEqualTo(laidOut.pieces());
    assertThat(read.turns()).as(as).isEqualTo(laidOut.turns());
    for (Term term : Term.values()) {
      double amount = term.amount(laidOut);
      // 1e-6 of the amount; and 1 cm2 to 10 cm2, which is what boundaries on the grid of the noding
      // cutter, 1e-6 m, come to along some hundred metres
      assertThat(term.amount(read))
          .as(as + " " + term + " turned " + turn + " shifted " + shift)
          .isCloseTo(amount, within(1e-6 * amount + 1e-3));
    }
  }
}
