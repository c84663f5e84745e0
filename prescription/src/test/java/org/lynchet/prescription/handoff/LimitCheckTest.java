package org.lynchet.prescription.handoff;

import static org.assertj.core.api.Assertions.assertThat;
import static org.lynchet.prescription.zone.SamplePlans.cornAndSoybean;
import static org.lynchet.prescription.zone.SamplePlans.field;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.lynchet.prescription.fault.Warning;
import org.lynchet.prescription.plan.TerminalLimits;
import org.lynchet.prescription.zone.FieldLayout;

class LimitCheckTest {
  /** Four strips each: corn has 4 centres, 7 borders (none at the field's edge), 1 headland. */
  private static final String FIELD = "POLYGON ((0 0, 73.152 0, 73.152 400, 0 400, 0 0))";

  private static List<Warning> warnings(TerminalLimits limits) throws Exception {
    return LimitCheck.warnings(
        FieldLayout.of(cornAndSoybean().limits(limits).plan(), field(FIELD)));
  }

  @Test
  void withoutLimitsNothingIsSaid() throws Exception {
    assertThat(warnings(TerminalLimits.NONE)).isEmpty();
  }

  @Test
  void aFileAtItsLimitIsFine() throws Exception {
    assertThat(warnings(new TerminalLimits(11, 9, 2))).isEmpty();
  }

  @Test
  void eachLimitHasItsWarningWithBothNumbers() throws Exception {
    assertThat(warnings(new TerminalLimits(10, null, null)))
        .singleElement()
        .satisfies(
            warning -> {
              assertThat(warning.code()).isEqualTo(Warning.Code.TERMINAL_LIMIT);
              assertThat(warning.text())
                  .contains("corn: the planting file has 11 polygons, the terminal takes 10");
            });
    assertThat(warnings(new TerminalLimits(null, 3, null)))
        .hasSize(2)
        .allMatch(warning -> warning.text().contains("handoff.simplify"));
    assertThat(warnings(new TerminalLimits(null, null, 1)))
        .singleElement()
        .extracting(Warning::text)
        .asString()
        .contains("2 different rates");
  }
}
