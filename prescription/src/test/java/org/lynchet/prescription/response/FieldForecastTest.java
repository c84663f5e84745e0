package org.lynchet.prescription.response;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.lynchet.prescription.fault.RejectedException;
import org.lynchet.prescription.light.CanopyRow;
import org.lynchet.prescription.light.FieldAcross;
import org.lynchet.prescription.light.LightMemory;
import org.lynchet.prescription.light.LightRequest;
import org.lynchet.prescription.light.PlanLight;
import org.lynchet.prescription.light.RowLight;
import org.lynchet.prescription.light.SeasonLight;
import org.lynchet.prescription.plan.ForecastChoices;
import org.lynchet.prescription.plan.ForecastChoices.PlannedCanopy;
import org.lynchet.prescription.plan.ForecastChoices.Season;
import org.lynchet.prescription.plan.Plan;
import org.lynchet.prescription.plan.PlannedStrip;
import org.lynchet.prescription.quantity.Length;
import org.lynchet.prescription.quantity.LengthUnit;
import org.lynchet.prescription.zone.FieldData;
import org.lynchet.prescription.zone.FieldLayout;
import org.lynchet.prescription.zone.SamplePlans;

/** Holds the yields of a whole field against laws and against every row of it drawn. */
class FieldForecastTest {
  private static final double STRIP = 9.144;

  /** One strip of each crop is what strips are compared with, whatever the open sides give. */
  @ParameterizedTest
  @ValueSource(doubles = {10, 13.5, 18.288})
  void oneStripOfEachCropIsSeparateBlocks(double width) throws RejectedException {
    FieldForecast forecast = forecast(SamplePlans.cornAndSoybean(), 0, width);
    assertThat(forecast.isSeparateBlocks()).isTrue();
    assertThat(forecast.landEquivalentRatio().typical()).isCloseTo(1, within(1e-12));
    assertThat(forecast.crops())
        .hasSize(2)
        .allSatisfy(crop -> assertThat(crop.relativeYield().typical()).isEqualTo(1));
  }

  /**
   * Strips without end have two edges each, n strips of a field have 2 n - 2 between them, and two
   * blocks have 2: so 1 - 2 / n of what strips without end gain or lose.
   */
  @ParameterizedTest
  @CsvSource({"6, 0", "12, 0", "40, 0", "12, 90", "40, 90"})
  void edgesInsideTheFieldCount(int strips, double heading) throws RejectedException {
    SamplePlans plans = SamplePlans.cornAndSoybean();
    FieldForecast forecast = forecast(plans, heading, strips * STRIP);
    assertThat(forecast.isSeparateBlocks()).isFalse();
    YieldForecast endless =
        YieldForecast.of(
            SeasonLight.of(PlanLight.request(plans.plan()).withHeading(heading)),
            Responses.of(plans.plan()));
    for (String crop : List.of("corn", "soybean")) {
      double expected = (endless.crop(crop).relativeYield().typical() - 1) * (1 - 2.0 / strips);
      assertThat(typical(forecast, crop) - 1).as(crop).isCloseTo(expected, within(0.004));
    }
    assertThat(typical(forecast, "corn")).isGreaterThan(1);
    assertThat(typical(forecast, "soybean")).isLessThan(1);
  }

  @Test
  void moreStripsMatterMore() throws RejectedException {
    double last = 0;
    for (int strips : List.of(2, 4, 6, 10, 20)) {
      double lost =
          1 - typical(forecast(SamplePlans.cornAndSoybean(), 0, strips * STRIP), "soybean");
      assertThat(lost).isGreaterThanOrEqualTo(last);
      last = lost + 0.001;
    }
  }

  /** Few strips and rows are drawn for many: against all of them, drawn one by one. */
  @ParameterizedTest
  @CsvSource({"10, 1, 0", "11, 1, 90", "7, 3, 90"})
  void whatIsDrawnStandsForAll(int strips, int passes, double heading) throws RejectedException {
    SamplePlans plans = SamplePlans.cornAndSoybean();
    Plan plan = plans.plan();
    List<PlannedStrip> wide =
        plan.strips().stream()
            .map(one -> new PlannedStrip(one.crop(), one.plantedBy(), passes, one.centre(), null))
            .toList();
    plans.pattern(wide);
    FieldForecast forecast = forecast(plans, heading, strips * passes * STRIP);
    List<Integer> pattern = new ArrayList<>();
    for (int i = 0; i < strips; i++) {
      pattern.add(i % 2);
    }
    List<Integer> blocks = pattern.stream().sorted().toList();
    for (String crop : List.of("corn", "soybean")) {
      double expected =
          drawn(plans.plan(), pattern, heading, crop) / drawn(plans.plan(), blocks, heading, crop);
      assertThat(typical(forecast, crop)).isCloseTo(expected, within(0.0012));
    }
  }

  /** The mean yield of a crop with every row of every strip, and open ground beyond. */
  private static double drawn(Plan plan, List<Integer> order, double heading, String crop)
      throws RejectedException {
    LightRequest period = PlanLight.request(plan);
    List<CanopyRow> rows = new ArrayList<>();
    for (int place : order) {
      period.rows().stream().filter(row -> row.strip() == place + 1).forEach(rows::add);
    }
    LightRequest all = period.withRows(rows).withOpenEdges().withHeading(heading);
    Response response = Objects.requireNonNull(Responses.of(plan).byCrop().get(crop));
    return SeasonLight.of(all).rows().stream()
        .filter(row -> row.row().crop().equals(crop))
        .mapToDouble(RowLight::relativeAbsorbed)
        .map(light -> response.relativeYield(light).typical())
        .average()
        .orElseThrow();
  }

  /** Corn stands at the left side and soybean at the right one, in strips as in blocks. */
  @Test
  void equalCanopiesMakeNoDifference() throws RejectedException {
    PlannedCanopy same = new PlannedCanopy(new Length(1, LengthUnit.METRE), 3.0, 0.5, null, null);
    SamplePlans plans =
        SamplePlans.cornAndSoybean()
            .forecast(
                new ForecastChoices(
                    Season.NORMAL,
                    List.of(),
                    null,
                    Map.of("corn", same, "soybean", same, "short-106", same),
                    Map.of()));
    FieldForecast forecast = forecast(plans, 0, 8 * STRIP);
    assertThat(typical(forecast, "corn")).isCloseTo(1, within(0.003));
    assertThat(typical(forecast, "soybean")).isCloseTo(1, within(0.003));
  }

  /**
   * A headland of corn all around shades the soybean at the field's side; at the ends it does not.
   */
  @Test
  void headlandAllAroundStandsBesideTheStrips() throws RejectedException {
    FieldAcross around =
        FieldAcross.of(layout(SamplePlans.cornAndSoybean().headland(1, false), 0, 12 * STRIP))
            .orElseThrow();
    FieldAcross ends =
        FieldAcross.of(layout(SamplePlans.cornAndSoybean().headlandAtEnds(1, 30), 0, 12 * STRIP))
            .orElseThrow();
    LightRequest beside = around.strips().request();
    assertThat(beside.rows().get(0).strip()).isZero();
    assertThat(beside.rows().get(0).crop()).isEqualTo("corn");
    assertThat(around.strips().squareMetres().get(0)).isZero();
    assertThat(ends.strips().request().rows().get(0).strip()).isEqualTo(1);
    assertThat(ends.strips().squareMetres().get(0)).isPositive();
  }

  /** Rows at open ground get more light than those beside a strip as tall. */
  @Test
  void fieldEdgesAreOpen() throws RejectedException {
    FieldAcross field =
        FieldAcross.of(layout(SamplePlans.cornAndSoybean(), 0, 6 * STRIP)).orElseThrow();
    LightRequest request = field.strips().request();
    List<Double> light = new LightMemory().relativeAbsorbed(request);
    int soybean = light.size() - 1;
    assertThat(request.rows().get(soybean).crop()).isEqualTo("soybean");
    assertThat(request.rows().get(soybean + 1).canopy()).isNull();
    assertThat(light.get(soybean)).isGreaterThan(light.get(soybean - 23) + 0.1).isGreaterThan(1);
    assertThat(light.get(0)).isGreaterThan(1.1);
  }

  /** A field whose parts lie more than a strip apart has a gap in the pattern. */
  @Test
  void aFieldInPartsIsForecast() throws RejectedException {
    FieldData parts =
        SamplePlans.field(
            "MULTIPOLYGON (((0 0, 9.144 0, 9.144 400, 0 400, 0 0)),"
                + " ((18.288 0, 36.576 0, 36.576 400, 18.288 400, 18.288 0)))");
    FieldForecast forecast =
        FieldForecast.of(FieldLayout.of(SamplePlans.cornAndSoybean().plan(), parts));
    assertThat(forecast.crops()).hasSize(2);
    assertThat(forecast.isSeparateBlocks()).isFalse();
  }

  @Test
  void everyFaultAtOnce() {
    SamplePlans plans =
        SamplePlans.cornAndSoybean()
            .forecast(
                new ForecastChoices(
                    Season.NORMAL,
                    List.of(),
                    null,
                    Map.of(
                        "wheat",
                        new PlannedCanopy(new Length(1, LengthUnit.METRE), 3.0, 0.5, null, null)),
                    Map.of()));
    assertThatThrownBy(() -> forecast(plans, 0, 12 * STRIP))
        .isInstanceOfSatisfying(
            RejectedException.class,
            rejected ->
                assertThat(rejected.faults().get(0).what())
                    .isEqualTo("the plan has no crop or product 'wheat'"));
  }

  private static double typical(FieldForecast forecast, String crop) {
    return forecast.crops().stream()
        .filter(one -> one.crop().equals(crop))
        .findFirst()
        .orElseThrow()
        .relativeYield()
        .typical();
  }

  private static FieldForecast forecast(SamplePlans plans, double heading, double width)
      throws RejectedException {
    return FieldForecast.of(layout(plans, heading, width));
  }

  /** A field 400 m along the rows; drawn with rows that run north, then turned. */
  private static FieldLayout layout(SamplePlans plans, double heading, double width)
      throws RejectedException {
    String wkt =
        heading == 0
            ? String.format(Locale.ROOT, "POLYGON ((0 0, %1$f 0, %1$f 400, 0 400, 0 0))", width)
            : String.format(Locale.ROOT, "POLYGON ((0 0, 400 0, 400 -%1$f, 0 -%1$f, 0 0))", width);
    FieldData field = SamplePlans.field(wkt);
    return FieldLayout.of(
        plans.plan(), field.withFrame(SamplePlans.FRAME.turned(Math.toRadians(heading))));
  }
}
