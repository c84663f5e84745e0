package org.lynchet.prescription.compare;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.lynchet.prescription.budget.FieldBudget;
import org.lynchet.prescription.fault.RejectedException;
import org.lynchet.prescription.fit.StripWidth;
import org.lynchet.prescription.plan.CompareChoices;
import org.lynchet.prescription.plan.ForecastChoices;
import org.lynchet.prescription.plan.ForecastChoices.PlannedCanopy;
import org.lynchet.prescription.plan.ForecastChoices.Season;
import org.lynchet.prescription.plan.Plan;
import org.lynchet.prescription.plan.PlannedStrip;
import org.lynchet.prescription.quantity.Length;
import org.lynchet.prescription.quantity.LengthUnit;
import org.lynchet.prescription.quantity.Spread;
import org.lynchet.prescription.response.FieldForecast;
import org.lynchet.prescription.summary.Summary;
import org.lynchet.prescription.zone.FieldData;
import org.lynchet.prescription.zone.FieldLayout;
import org.lynchet.prescription.zone.SamplePlans;

/** Compares candidates on an invented square of 400 m. */
class PlanComparisonTest {
  private static final FieldData SQUARE =
      SamplePlans.field("POLYGON ((0 0, 400 0, 400 400, 0 400, 0 0))");

  private static final CompareChoices BARE = new CompareChoices(List.of(), 0);

  @Test
  void theSameBytesWithAnyNumberOfProcessors() throws Exception {
    Plan plan = shortBorder().widest(30).plan();
    String one = ComparisonJson.of(PlanComparison.of(plan, SQUARE, 1, Progress.NONE));
    String three = ComparisonJson.of(PlanComparison.of(plan, SQUARE, 3, Progress.NONE));
    assertThat(three).isEqualTo(one).contains("\"schemaVersion\" : 1");
  }

  /** The plan's own candidate is what light and plan say of it. */
  @Test
  void thePlansOwnCandidateAgreesWithTheOtherCommands() throws Exception {
    Plan plan = shortBorder().widest(30).plan();
    Outcome planned = PlanComparison.of(plan, SQUARE, 2, Progress.NONE).findPlanned().orElseThrow();
    assertThat(planned.light()).isEqualTo(FieldForecast.of(FieldLayout.of(plan, SQUARE)));
    Summary summary = Summary.of(FieldLayout.of(plan, SQUARE));
    assertThat(planned.facts().seed()).isEqualTo(summary.seed());
    double hours =
        summary.driving().all().stream().mapToDouble(one -> one.chosen().drivingHours()).sum();
    assertThat(planned.facts().hours()).isEqualTo(hours);
  }

  /**
   * Strips of 20 ft gained more than those of 40 ft in corn: Smith and Carter, J. Prod. Agric.
   * 11:345 (1998). Published soybean loses in strips: Crookston and Hill, Agron. J. 71:41 (1979).
   */
  @Test
  void narrowStripsGainMoreInCornAndLoseMoreInSoybean() throws Exception {
    Plan plan = SamplePlans.cornAndSoybean().widest(60).compare(BARE).plan();
    Comparison comparison = PlanComparison.of(plan, SQUARE, 2, Progress.NONE);
    for (String heading : List.of("north-south", "east-west")) {
      Outcome narrow = outcome(comparison, heading, 1);
      Outcome wide = outcome(comparison, heading, 2);
      assertThat(typicalYield(narrow, 0)).isGreaterThan(typicalYield(wide, 0));
      assertThat(typicalYield(wide, 0)).isGreaterThan(1);
      assertThat(typicalYield(narrow, 1)).isLessThan(typicalYield(wide, 1));
      assertThat(typicalYield(wide, 1)).isLessThan(1);
    }
    assertThat(comparison.measure()).isEqualTo(Measure.LAND);
    assertThat(comparison.widths()).isEqualTo(4);
  }

  /** The budget of the plan's own candidate is the one of the command budget. */
  @Test
  void withMoneyCandidatesAreRankedByNet() throws Exception {
    Plan plan = shortBorder().widest(30).budget(ComparedMoney.in("USD")).plan();
    Comparison comparison = PlanComparison.of(plan, SQUARE, 2, Progress.NONE);
    assertThat(comparison.measure()).isEqualTo(Measure.NET);
    List<Double> nets =
        comparison.ranked().stream()
            .map(one -> Measure.NET.of(one, comparison.area()).typical())
            .toList();
    for (int i = 1; i < nets.size(); i++) {
      assertThat(nets.get(i)).isLessThanOrEqualTo(nets.get(i - 1) + 0.01);
    }
    FieldLayout layout = FieldLayout.of(plan, SQUARE);
    double net =
        FieldBudget.of(layout, Summary.of(layout)).strips().netPer(comparison.area()).typical();
    Outcome planned = comparison.findPlanned().orElseThrow();
    assertThat(Measure.NET.of(planned, comparison.area()).typical()).isEqualTo(net);
    assertThat(ComparisonTable.of(comparison).lines()).allMatch(line -> line.length() <= 100);
    assertThat(ComparisonJson.of(comparison)).contains("net_per_area", "\"currency\" : \"USD\"");
  }

  @Test
  void saysPlantBlocksWhereNothingPays() throws Exception {
    Plan plan = SamplePlans.cornAndSoybean().widest(30).compare(BARE).plan();
    Comparison comparison = PlanComparison.of(plan, SQUARE, 2, Progress.NONE);
    assertThat(comparison.ranked().get(0).light().landEquivalentRatio().typical()).isLessThan(1);
    assertThat(Verdict.isBlocks(comparison)).isTrue();
    assertThat(Verdict.answer(comparison)).startsWith("Plant blocks:");
  }

  /** Where no crop shades another, strips are blocks; the quickest candidate is first. */
  @Test
  void equalCanopiesMakeNoDifference() throws Exception {
    Plan plan = withOneCanopy("corn", "tall-108", "short-106", "soybean");
    List<Integer> steps = new ArrayList<>();
    Comparison comparison = PlanComparison.of(plan, SQUARE, 2, (done, all) -> steps.add(all));
    assertThat(comparison.ranked()).hasSize(14);
    assertThat(comparison.ranked())
        .allSatisfy(
            one ->
                assertThat(one.light().landEquivalentRatio().typical()).isCloseTo(1, within(0.01)));
    assertThat(steps).hasSize(14).containsOnly(14);
  }

  @Test
  void candidatesThatLeaveACropOutAreNotRanked() throws Exception {
    FieldData narrow = SamplePlans.field("POLYGON ((0 0, 25 0, 25 400, 0 400, 0 0))");
    Plan plan = SamplePlans.cornAndSoybean().widest(90).compare(BARE).plan();
    Comparison comparison = PlanComparison.of(plan, narrow, 2, Progress.NONE);
    assertThat(comparison.withoutCrop())
        .isNotEmpty()
        .allMatch(candidate -> candidate.widths().get(0).passes() == 3);
    assertThat(comparison.ranked()).anyMatch(one -> one.candidate().widths().get(0).passes() == 1);
    assertThat(ComparisonTable.of(comparison)).contains("leave a crop without a strip");
  }

  /** In a field 65 ft wide, corn of 60 ft leaves soybean one strip: that is two blocks. */
  @Test
  void candidatesThatAreBlocksAreNotRanked() throws Exception {
    FieldData narrow = SamplePlans.field("POLYGON ((0 0, 19.812 0, 19.812 400, 0 400, 0 0))");
    Plan plan =
        SamplePlans.cornAndSoybean().widest(60).compare(new CompareChoices(List.of(0.0), 0)).plan();
    Comparison comparison = PlanComparison.of(plan, narrow, 2, Progress.NONE);
    assertThat(comparison.separateBlocks())
        .isNotEmpty()
        .anyMatch(candidate -> candidate.widths().get(0).passes() == 2);
    assertThat(comparison.ranked())
        .noneMatch(
            one ->
                one.candidate().headingWords().equals("north-south")
                    && one.candidate().widths().get(0).passes() == 2);
    assertThat(ComparisonTable.of(comparison)).contains("give no crop a second strip");
  }

  @Test
  void aFieldTooNarrowForStripsIsRefused() {
    FieldData narrow = SamplePlans.field("POLYGON ((0 0, 15 0, 15 15, 0 15, 0 0))");
    Plan plan = SamplePlans.cornAndSoybean().widest(60).compare(BARE).plan();
    assertThatThrownBy(() -> PlanComparison.of(plan, narrow, 1, Progress.NONE))
        .isInstanceOfSatisfying(
            RejectedException.class,
            rejected -> {
              assertThat(rejected.faults().get(0).what()).contains("too narrow for strips");
              assertThat(rejected.faults().get(0).next()).startsWith("plant blocks");
            });
  }

  /** A header of 25 ft goes into no strips of 30 ft; one pass is wider than strips of 20 ft. */
  @ParameterizedTest
  @CsvSource({"25, 60", "30, 20"})
  void whereNothingFitsThePlansOwnWidthsAreCompared(double header, double widest) throws Exception {
    Plan plan =
        SamplePlans.cornAndSoybean().combine("combine", header).widest(widest).compare(BARE).plan();
    Comparison comparison = PlanComparison.of(plan, SQUARE, 1, Progress.NONE);
    assertThat(comparison.widthsThatFit()).isZero();
    assertThat(comparison.ranked())
        .isNotEmpty()
        .allMatch(one -> one.candidate().widths().get(0).rows() == 12);
    assertThat(comparison.findPlanned()).isPresent();
    String table = ComparisonTable.of(comparison).replaceAll("\\s+", " ");
    assertThat(table)
        .contains("No strips up to " + Math.round(widest) + " ft (fit.max-strip-width) are whole")
        .contains("to 2 in (fit.tolerance)", "the plan's own widths are compared as they stand")
        .contains("lynchet fit shows the nearest miss");
    if (header == 25) {
      assertThat(table).contains("combine falls short of the strip in corn by 5.00 ft a pass");
    }
  }

  /** With canopies alike no heading and no border row moves anything that is shown. */
  @Test
  void whatMakesNoDifferenceIsNoDriver() throws Exception {
    Plan plan = withOneCanopy("corn", "soybean");
    Comparison comparison = PlanComparison.of(plan, SQUARE, 2, Progress.NONE);
    assertThat(comparison.drivers()).isNotEmpty();
    String drivers = String.join("\n", Verdict.drivers(comparison));
    assertThat(drivers)
        .contains("no difference on average in the digits shown")
        .doesNotContainPattern("on average ([-+.0-9]+) with .*, \\1 with");
  }

  @Test
  void aThirdCropIsShownWhole() throws Exception {
    Plan plan = threeCrops().widest(30).compare(BARE).plan();
    Comparison comparison = PlanComparison.of(plan, SQUARE, 2, Progress.NONE);
    String table = ComparisonTable.of(comparison);
    assertThat(table.lines()).allMatch(line -> line.length() <= 100);
    assertThat(table)
        .doesNotContain("..")
        .contains("12 rows corn 30 ft, 24 rows soybean 30 ft,", "12 rows sorghum 30 ft");
    assertThat(table.lines().filter(line -> line.contains("RANK")).count()).isEqualTo(1);
  }

  @Test
  void oneRowIsNotMany() throws Exception {
    Plan plan = SamplePlans.cornAndSoybean().widest(30).compare(BARE).plan();
    Comparison comparison = PlanComparison.of(plan, SQUARE, 2, Progress.NONE);
    Candidate twelve = comparison.ranked().get(0).candidate();
    StripWidth one = new StripWidth("corn", 1, 1, 0.762, 1, 1);
    Candidate single = new Candidate(List.of(one), twelve.strips(), 0, 0, false);
    assertThat(single.widthWords(LengthUnit.FOOT)).isEqualTo("1 row corn 2.5 ft");
    assertThat(twelve.widthWords(LengthUnit.FOOT)).startsWith("12 rows corn 30 ft");
  }

  @Test
  void tablesKeepToAHundredColumns() throws Exception {
    Plan plan = shortBorder().widest(30).compare(new CompareChoices(List.of(37.5), null)).plan();
    Comparison comparison = PlanComparison.of(plan, SQUARE, 2, Progress.NONE);
    String table = ComparisonTable.of(comparison);
    assertThat(table.lines()).allMatch(line -> line.length() <= 100);
    assertThat(table.replaceAll("\\s+", " "))
        .contains("What drives the ranking", "Heading: on average", "The plan has no budget");
    assertThat(comparison.ranked())
        .extracting(one -> one.candidate().headingWords())
        .contains("37.5 degrees", "east-west", "north-south");
    assertThat(comparison.ranked())
        .extracting(one -> one.candidate().borderWords())
        .contains("none", "2 rows both sides", "1 row right (south)", "1 row right (east)");
    assertThat(comparison.drivers()).extracting(Driver::name).doesNotContain("widths");
  }

  private static SamplePlans threeCrops() {
    PlannedCanopy sorghum =
        new PlannedCanopy(
            new Length(50, LengthUnit.INCH),
            4.0,
            0.5,
            LocalDate.of(2025, 5, 20),
            LocalDate.of(2025, 9, 25));
    return SamplePlans.cornAndSoybean()
        .strip(
            new PlannedStrip(
                "sorghum", "corn-planter", 1, SamplePlans.seeding("milo-7", 60000), null))
        .forecast(
            new ForecastChoices(
                Season.NORMAL,
                List.of(),
                null,
                Map.of("sorghum", sorghum),
                Map.of("sorghum", new Spread(0.3, 0.5, 0.8))));
  }

  private static SamplePlans shortBorder() {
    PlannedCanopy low =
        new PlannedCanopy(new Length(1.7, LengthUnit.METRE), null, null, null, null);
    return SamplePlans.cornAndSoybean()
        .forecast(
            new ForecastChoices(
                Season.NORMAL, List.of(), null, Map.of("short-106", low), Map.of()));
  }

  private static Outcome outcome(Comparison comparison, String heading, int passes) {
    return comparison.ranked().stream()
        .filter(one -> one.candidate().headingWords().equals(heading))
        .filter(one -> one.candidate().widths().stream().allMatch(w -> w.passes() == passes))
        .filter(one -> one.candidate().borderWords().equals("none"))
        .findFirst()
        .orElseThrow();
  }

  private static double typicalYield(Outcome outcome, int crop) {
    return outcome.light().crops().get(crop).relativeYield().typical();
  }

  /** A plan in which crops and products of some names have the same canopy. */
  private static Plan withOneCanopy(String... names) {
    PlannedCanopy same = new PlannedCanopy(new Length(1, LengthUnit.METRE), 3.0, 0.5, null, null);
    Map<String, PlannedCanopy> canopies = new LinkedHashMap<>();
    for (String name : names) {
      canopies.put(name, same);
    }
    return SamplePlans.cornAndSoybean()
        .widest(30)
        .forecast(new ForecastChoices(Season.NORMAL, List.of(), null, canopies, Map.of()))
        .plan();
  }
}
