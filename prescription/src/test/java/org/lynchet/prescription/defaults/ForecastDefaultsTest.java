package org.lynchet.prescription.defaults;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.time.MonthDay;
import org.junit.jupiter.api.Test;
import org.lynchet.prescription.defaults.ForecastDefaults.Sourced;
import org.lynchet.prescription.plan.PlannedBudget;

class ForecastDefaultsTest {
  private final ForecastDefaults defaults = ForecastDefaults.read();

  @Test
  void everyValueHasASource() {
    assertThat(defaults.all())
        .hasSizeGreaterThan(30)
        .allSatisfy(
            value -> {
              assertThat(value.value()).isNotBlank();
              assertThat(value.source()).isNotBlank();
            });
  }

  /**
   * Purdue 2023: 86 in and 67 in; SWAT+ plant table: k 0.65, 0.45, leaf area index 6, 3; Iowa State
   * A1-20: 80,000 kernels; Iowa State researchers, trade press: 140,000 seeds.
   */
  @Test
  void valuesAreThoseOfTheirSources() {
    assertThat(defaults.number("canopies.corn.height-metres")).isEqualTo(2.18);
    assertThat(Math.round(86 * 2.54)).isEqualTo(218);
    assertThat(defaults.number("canopies.corn.short-stature-height-metres")).isEqualTo(1.70);
    assertThat(Math.round(67 * 2.54)).isEqualTo(170);
    assertThat(defaults.number("canopies.corn.extinction")).isEqualTo(0.65);
    assertThat(defaults.number("canopies.soybean.extinction")).isEqualTo(0.45);
    assertThat(defaults.number("canopies.corn.leaf-area-index")).isEqualTo(6);
    assertThat(defaults.number("canopies.soybean.leaf-area-index")).isEqualTo(3);
    assertThat(defaults.number("seeds-per-unit.corn")).isEqualTo(80_000);
    assertThat(defaults.number("seeds-per-unit.soybean")).isEqualTo(140_000);
    assertThat(MonthDay.parse("--" + defaults.text("canopies.corn.planting")))
        .isEqualTo(MonthDay.of(5, 1));
  }

  /** Reading the file for these two would make every plan slower. */
  @Test
  void aBudgetStartsFromTheDefaultsOfTheFile() {
    assertThat(PlannedBudget.NONE.currency()).isEqualTo(defaults.text("budget.currency"));
    assertThat(PlannedBudget.NONE.sprayings()).isEqualTo((int) defaults.number("budget.sprayings"));
  }

  @Test
  void rangesHold() {
    assertThat(defaults.crops()).containsExactly("corn", "soybean");
    assertThat(defaults.numbers("clearness")).hasSize(12).allMatch(c -> c > 0 && c < 1);
    for (String crop : defaults.crops()) {
      String key = "response." + crop + ".";
      assertThat(defaults.number(key + "low"))
          .isPositive()
          .isLessThan(defaults.number(key + "typical"));
      assertThat(defaults.number(key + "typical")).isLessThan(defaults.number(key + "high"));
    }
    assertThat(defaults.all()).extracting(Sourced::key).doesNotHaveDuplicates();
    assertThat(defaults.nameOf("maize")).isEqualTo("corn");
    assertThat(defaults.nameOf("sorghum")).isEqualTo("sorghum");
    assertThat(defaults.has("canopies.sorghum.extinction")).isFalse();
    assertThatThrownBy(() -> defaults.number("canopies.sorghum.extinction"))
        .isInstanceOf(IllegalArgumentException.class);
  }
}
