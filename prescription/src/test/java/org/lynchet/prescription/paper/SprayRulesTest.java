package org.lynchet.prescription.paper;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.lynchet.prescription.quantity.AreaUnit;

/** The federal rule is in feet; who works in metres reads metres, and the rule's own words. */
class SprayRulesTest {
  @Test
  void withAcresTheRulesAreAsTheyAre() {
    assertThat(String.join("\n", SprayRules.statements(AreaUnit.ACRE)))
        .contains("100 ft all around", "25 ft all around", "12 in above", "under 10 mph")
        .doesNotContain(" m (");
  }

  /** 100 ft are 30.48 m, 25 ft 7.62 m, 12 in 30.48 cm, 10 mph 16.09 km/h: on the safe side. */
  @Test
  void withHectaresMetricLengthsComeFirst() {
    String all = String.join("\n", SprayRules.statements(AreaUnit.HECTARE));
    assertThat(all)
        .contains("30.5 m (100 ft) all around", "7.7 m (25 ft) all around")
        .contains("more than 30 cm (12 in) above", "under 16 km/h (10 mph)");
    assertThat(all.replaceAll("\\([^)]*\\)", "")).doesNotContainPattern("\\d (ft|in|mph)\\b");
  }
}
