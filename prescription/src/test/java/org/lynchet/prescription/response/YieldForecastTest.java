package org.lynchet.prescription.response;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.lynchet.prescription.light.CanopyRow;
import org.lynchet.prescription.light.CanopyTraits;
import org.lynchet.prescription.light.LightRequest;
import org.lynchet.prescription.light.LightResult;
import org.lynchet.prescription.light.RowLight;
import org.lynchet.prescription.light.Sampling;
import org.lynchet.prescription.quantity.Spread;

/** Invented light, so that the arithmetic of yields can be seen. */
class YieldForecastTest {
  private static final Spread WHOLE = new Spread(1, 1, 1);

  /** Slopes of 1 turn a change of light into the same change of yield. */
  private static final Response SAME = new Response(WHOLE, WHOLE);

  private static LightResult light(int rows, double[] corn, double[] soybean) {
    LocalDate day = LocalDate.of(2025, 5, 1);
    CanopyTraits canopy =
        new CanopyTraits(2, 5, 0.5, day, day.plusDays(120), 0.4, 0.6, 0.8, 0.5, 0.7);
    List<RowLight> lights = new ArrayList<>();
    for (int i = 0; i < 2 * rows; i++) {
      boolean first = i < rows;
      double[] ends = first ? corn : soybean;
      int row = i % rows + 1;
      double absorbed = 1 + (row == 1 ? ends[0] : row == rows ? ends[1] : 0);
      CanopyRow at =
          new CanopyRow(
              first ? 1 : 2, first ? "corn" : "soybean", "any", row, i * 0.762, 0.762, canopy);
      lights.add(new RowLight(at, 1, absorbed, List.of(), Collections.nCopies(24, 0.0)));
    }
    LightRequest request =
        new LightRequest(
            -94,
            44,
            90,
            lights.stream().map(RowLight::row).toList(),
            Collections.nCopies(12, 0.7),
            Sampling.QUICK);
    return new LightResult(request, lights, new LightResult.Budget(1, 1, 0));
  }

  /**
   * Border percentages of strips in Minnesota (J. Prod. Agric. 9, 1996) and at Purdue spread over n
   * rows, half the land each crop, worked out by hand: whole-strip yields and land equivalent
   * ratio.
   */
  @ParameterizedTest
  @CsvSource({
    "6,  18,    6, -34, -11, 1.0400, 0.9250, 0.9825",
    "12, 18,    6, -34, -11, 1.0200, 0.9625, 0.99125",
    "6,  27,   23, -19, -21, 1.0833, 0.9333, 1.0083",
    "12, 27,   23, -19, -21, 1.0417, 0.9667, 1.0042",
    "8,  25.8, 25.8, -26.6, -26.6, 1.0645, 0.9335, 0.999",
  })
  void rowsAddUpToStripsAndLand(
      int n, double a, double b, double c, double d, double corn, double soybean, double ratio) {
    LightResult light = light(n, new double[] {a / 100, b / 100}, new double[] {c / 100, d / 100});
    YieldForecast forecast =
        YieldForecast.of(light, new Responses(Map.of("corn", SAME, "soybean", SAME)));
    assertThat(forecast.crop("corn").relativeYield().typical()).isCloseTo(corn, within(5e-5));
    assertThat(forecast.crop("soybean").relativeYield().typical()).isCloseTo(soybean, within(5e-5));
    assertThat(forecast.landEquivalentRatio().typical()).isCloseTo(ratio, within(5e-5));
    assertThat(forecast.crop("corn").shareOfLand()).isCloseTo(0.5, within(1e-12));
  }

  @Test
  void weakAnswerToMoreLightAndStrongToLessAreTheLowest() {
    Response response = new Response(new Spread(0.2, 0.5, 0.8), WHOLE);
    Spread gain = response.relativeYield(1.4);
    assertThat(gain.low()).isCloseTo(1.08, within(1e-12));
    assertThat(gain.typical()).isCloseTo(1.2, within(1e-12));
    assertThat(gain.high()).isCloseTo(1.32, within(1e-12));
    Spread loss = response.relativeYield(0.6);
    assertThat(loss.low()).isCloseTo(0.68, within(1e-12));
    assertThat(loss.typical()).isCloseTo(0.8, within(1e-12));
    assertThat(loss.high()).isCloseTo(0.92, within(1e-12));
    assertThat(response.relativeYield(1)).isEqualTo(WHOLE);
  }

  @Test
  void droughtTakesGainsAndLeavesLosses() {
    Response dry = new Response(WHOLE, new Spread(0, 0.5, 1));
    assertThat(dry.relativeYield(1.4)).isEqualTo(new Spread(1, 1.2, 1.4));
    assertThat(dry.relativeYield(0.6)).isEqualTo(SAME.relativeYield(0.6));
    assertThat(new Response(new Spread(2, 2, 2), WHOLE).relativeYield(0.1).low()).isZero();
  }

  @Test
  void aCropNeedsAResponse() {
    LightResult light = light(2, new double[] {0, 0}, new double[] {0, 0});
    assertThatThrownBy(() -> YieldForecast.of(light, new Responses(Map.of("corn", SAME))))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("soybean");
  }
}
