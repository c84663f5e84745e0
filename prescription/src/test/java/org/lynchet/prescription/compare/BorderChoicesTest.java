package org.lynchet.prescription.compare;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.lynchet.prescription.plan.CompareChoices;
import org.lynchet.prescription.plan.Plan;
import org.lynchet.prescription.plan.PlannedStrip;
import org.lynchet.prescription.plan.PlannedStrip.Border;
import org.lynchet.prescription.plan.PlannedStrip.Sides;
import org.lynchet.prescription.zone.SamplePlans;

/** Which border rows are tried. */
class BorderChoicesTest {

  @Test
  void noneAndUpToThePlansOnBothSidesOrOne() {
    assertThat(choices(SamplePlans.cornAndSoybean().plan(), 1))
        .containsExactly("-", "2 BOTH", "1 BOTH", "1 LEFT", "1 RIGHT", "2 LEFT", "2 RIGHT");
  }

  @Test
  void asManyAsAreAskedFor() {
    SamplePlans plans = SamplePlans.cornAndSoybean();
    assertThat(choices(plans.compare(new CompareChoices(List.of(), 0)).plan(), 1))
        .containsExactly("-", "2 BOTH");
    assertThat(choices(plans.compare(new CompareChoices(List.of(), 4)).plan(), 1)).hasSize(13);
  }

  /** Six rows of 12 are half of a strip: more on both sides together would overlap. */
  @Test
  void notMoreThanTheStripHas() {
    Plan plan = SamplePlans.cornAndSoybean().compare(new CompareChoices(List.of(), 12)).plan();
    assertThat(choices(plan, 1))
        .contains("6 BOTH", "12 LEFT", "12 RIGHT")
        .doesNotContain("7 BOTH")
        .doesNotHaveDuplicates();
    assertThat(choices(plan, 2)).contains("7 BOTH", "12 BOTH");
  }

  @Test
  void onlyOnSidesThatThePlanHas() {
    SamplePlans plans = SamplePlans.cornAndSoybean();
    PlannedStrip corn = plans.plan().strips().get(0);
    Border left = new Border(2, Sides.LEFT, SamplePlans.seeding("short-106", 36000));
    plans.strip(0, new PlannedStrip("corn", "corn-planter", 1, corn.centre(), left));
    assertThat(choices(plans.plan(), 1)).containsExactly("-", "2 LEFT", "1 LEFT");
  }

  @Test
  void noneWithoutABorderProduct() {
    SamplePlans plans = SamplePlans.cornAndSoybean();
    PlannedStrip corn = plans.plan().strips().get(0);
    plans.strip(0, new PlannedStrip("corn", "corn-planter", 1, corn.centre(), null));
    Plan plan = plans.compare(new CompareChoices(List.of(), 4)).plan();
    assertThat(choices(plan, 1)).containsExactly("-");
  }

  private static List<String> choices(Plan plan, int passes) {
    return new BorderChoices(plan)
        .on(List.of(passes, passes)).stream().map(BorderChoicesTest::text).toList();
  }

  private static String text(List<PlannedStrip> strips) {
    String text =
        strips.stream()
            .map(PlannedStrip::border)
            .filter(border -> border != null)
            .map(border -> border.rows() + " " + border.sides())
            .collect(Collectors.joining());
    return text.isEmpty() ? "-" : text;
  }
}
