package org.lynchet.prescription.defaults;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.time.MonthDay;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.lynchet.prescription.defaults.Defaults.Sourced;

class DefaultsTest {
  private final Defaults defaults = Defaults.get();

  @Test
  void everyValueHasASource() {
    assertThat(defaults.all())
        .hasSizeGreaterThan(70)
        .allSatisfy(
            value -> {
              assertThat(value.value()).isNotBlank();
              assertThat(value.source()).isNotBlank();
            });
  }

  /** Purdue 2023: 86 in and 67 in; SWAT+ plant table: k 0.65, 0.45, leaf area index 6, 3. */
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
    assertThat(MonthDay.parse("--" + defaults.text("canopies.corn.planting")))
        .isEqualTo(MonthDay.of(5, 1));
  }

  /** Iowa State: units of 80,000 kernels and of 140,000 seeds. */
  @Test
  void unitsOfSeedAreThoseOfTheirSources() {
    assertThat(defaults.whole("seeds-per-unit.corn")).isEqualTo(80_000);
    assertThat(defaults.whole("seeds-per-unit.soybean")).isEqualTo(140_000);
    assertThat(defaults.has("seeds-per-unit.sorghum")).isFalse();
    assertThatThrownBy(() -> defaults.whole("seeds-per-unit.sorghum"))
        .isInstanceOf(IllegalArgumentException.class);
  }

  @Test
  void readsNumbersListsAndTexts() throws IOException {
    assertThat(read("a: {b: {value: 1.70, source: s}, c: {value: [1, 2.50], source: t}}"))
        .containsExactly(
            Map.entry("a.b", new Sourced("a.b", "1.7", "s")),
            Map.entry("a.c", new Sourced("a.c", "1, 2.5", "t")));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "a: {value: 1}",
        "a: {value: 1, source: ''}",
        "a: {source: s}",
        "a: {b: {value: 1, source: s}, value: 2}",
        "a: {}",
        "a: 1",
        "a: {valu: 1, source: s}",
        "a: {value: 1, source: s}\na: {value: 2, source: s}",
      })
  void refusesAValueWithoutASource(String yaml) {
    assertThatThrownBy(() -> read(yaml)).isInstanceOf(IllegalArgumentException.class);
  }

  private static Map<String, Sourced> read(String yaml) throws IOException {
    return SourcedFile.read(new ByteArrayInputStream(yaml.getBytes(StandardCharsets.UTF_8)));
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
