package org.lynchet.prescription.budget;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;
import static org.assertj.core.api.Assertions.within;
import static org.lynchet.prescription.zone.SamplePlans.cornAndSoybean;
import static org.lynchet.prescription.zone.SamplePlans.field;
import static org.lynchet.prescription.zone.SamplePlans.seeding;

import java.math.BigDecimal;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import org.junit.jupiter.api.Test;
import org.lynchet.formats.Fault;
import org.lynchet.prescription.driving.FieldTime;
import org.lynchet.prescription.fault.Faults;
import org.lynchet.prescription.fault.RejectedException;
import org.lynchet.prescription.plan.CropMarket;
import org.lynchet.prescription.plan.PlannedBudget;
import org.lynchet.prescription.plan.PlannedStrip;
import org.lynchet.prescription.plan.PlannedStrip.Border;
import org.lynchet.prescription.plan.PlannedStrip.Sides;
import org.lynchet.prescription.plan.Seeding;
import org.lynchet.prescription.quantity.AreaUnit;
import org.lynchet.prescription.quantity.GrainUnit;
import org.lynchet.prescription.quantity.SeedingRate;
import org.lynchet.prescription.quantity.Spread;
import org.lynchet.prescription.response.PlanForecast;
import org.lynchet.prescription.summary.Summary;
import org.lynchet.prescription.zone.CurvedFields;
import org.lynchet.prescription.zone.FieldData;
import org.lynchet.prescription.zone.FieldLayout;
import org.lynchet.prescription.zone.SamplePlans;

/**
 * Twelve strips of 9.144 m and 400 m, corn first, with two border rows on each side that stands
 * beside soybean: 22 rows of 0.762 m.
 */
class FieldBudgetTest {
  private static final String TWELVE_STRIPS = "POLYGON ((0 0, 109.728 0, 109.728 400, 0 400, 0 0))";
  private static final double ACRE = AreaUnit.ACRE.squareMetres();
  private static final double CORN_ACRES = 6 * 9.144 * 400 / ACRE;
  private static final double BORDER_ACRES = 22 * 0.762 * 400 / ACRE;

  private static FieldBudget budget(SamplePlans plans, FieldData field) throws RejectedException {
    FieldLayout layout = FieldLayout.of(plans.plan(), field);
    return FieldBudget.of(layout, Summary.of(layout));
  }

  private static List<Fault> faults(SamplePlans plans, FieldData field) {
    return catchThrowableOfType(RejectedException.class, () -> budget(plans, field)).faults();
  }

  private static SamplePlans plans(PlannedBudget money) {
    return cornAndSoybean().sprayer(90, 10.0).combine("combine", 30).budget(money);
  }

  /** By hand: areas times numbers of the plan. */
  @Test
  void weighsTheWholeField() throws RejectedException {
    FieldBudget budget = budget(plans(SampleMoney.whole()), field(TWELVE_STRIPS));
    BudgetFacts facts = budget.strips().facts();
    assertThat(facts.fieldSquareMetres()).isCloseTo(109.728 * 400, within(0.05));
    assertThat(facts.crops().get(0).areas()).isCloseTo(CORN_ACRES, within(1e-5));
    assertThat(facts.moreSeed())
        .isCloseTo(BORDER_ACRES * (36_000 * 300 - 34_000 * 260) / 80_000, within(1e-3));
    double sprayer = budget.times().get(2).moreHours() + budget.times().get(3).moreHours();
    double all = budget.times().stream().mapToDouble(FieldTime::moreHours).sum();
    assertThat(facts.moreHours()).isCloseTo(all + sprayer, within(1e-12));
    assertThat(facts.extraCosts())
        .containsExactly(
            BudgetLine.of("scouting", 2 * 2 * CORN_ACRES), BudgetLine.of("a marker", 99));
    assertThat(budget.strips().net().typical())
        .isCloseTo(
            CORN_ACRES * 186 * 0.05 * 4
                - CORN_ACRES * 53 * 0.06 * 10.5
                - facts.moreSeed()
                - facts.moreHours() * 150
                - 4 * CORN_ACRES
                - 99,
            within(0.02));
    assertThat(budget.changes().forecast()).isEmpty();
  }

  /** The light of the plan's rows tells what the plan does not; its own number stays. */
  @Test
  void lightTellsTheChangesThatThePlanDoesNot() throws RejectedException {
    Spread own = new Spread(-0.1, -0.06, -0.02);
    SamplePlans plans =
        plans(
            SampleMoney.money(
                SampleMoney.markets(null, own), SampleMoney.whole().seedPrices(), Map.of()));
    YieldChanges changes = budget(plans, field(TWELVE_STRIPS)).changes();
    Spread light = PlanForecast.of(plans.plan()).yields().crop("corn").relativeYield();
    Spread corn = Objects.requireNonNull(changes.byCrop().get("corn"));
    // Twelve strips have 22 sides inside the field, strips without end 24, two blocks 2.
    assertThat(corn.typical())
        .isCloseTo((light.typical() - 1) * 20 / 24, within(2e-3))
        .isPositive();
    assertThat(corn.low()).isCloseTo((light.low() - 1) * 20 / 24, within(2e-3));
    assertThat(changes.byCrop()).containsEntry("soybean", own);
    assertThat(changes.forecast()).containsExactly("corn");
  }

  /**
   * Iowa State Ag Decision Maker A1-20: 80,000 kernels at 280, 30,000 on an acre are 105.00. Iowa
   * State in the trade press, 2012: 140,000 soybean seeds at 50, 160,000 to 170,000 on an acre are
   * 57 to 61, exactly 57.14 and 60.71.
   */
  @Test
  void seedOfAnAcreToTheCent() throws RejectedException {
    SamplePlans plans =
        plans(SampleMoney.money(Map.of(), Map.of("tall-108", 280.0, "bean-2.4", 50.0), Map.of()));
    FieldLayout layout = FieldLayout.of(plans.plan(), field(TWELVE_STRIPS));
    SeedPrices prices = new SeedPrices(plans.plan(), Summary.of(layout), new Faults());
    assertThat(prices.cost("tall-108", 30_000)).isCloseTo(105.00, within(0.005));
    assertThat(prices.cost("bean-2.4", 160_000)).isCloseTo(57.14, within(0.005));
    assertThat(prices.cost("bean-2.4", 170_000)).isCloseTo(60.71, within(0.005));
  }

  /**
   * The plan's rows run north, those of the layout, as after a placement, east. East-west rows cost
   * soybean less than north-south rows: order of the J. Prod. Agric. 9:101 (1996) trials,
   * Minnesota.
   */
  @Test
  void lightGoesByTheHeadingOfTheLayout() throws RejectedException {
    SamplePlans plans =
        plans(
            SampleMoney.money(
                SampleMoney.markets(null, null), SampleMoney.whole().seedPrices(), Map.of()));
    FieldData north = field(TWELVE_STRIPS);
    FieldData east = north.withFrame(SamplePlans.FRAME.turned(-Math.PI / 2));
    FieldLayout layout = FieldLayout.of(plans.plan(), east);
    assertThat(layout.frame().headingDegrees() % 180).isCloseTo(90, within(1e-6));
    Map<String, Spread> ofEast = YieldChanges.of(layout).byCrop();
    Map<String, Spread> ofNorth = YieldChanges.of(FieldLayout.of(plans.plan(), north)).byCrop();
    assertThat(Objects.requireNonNull(ofEast.get("soybean")).typical())
        .isGreaterThan(Objects.requireNonNull(ofNorth.get("soybean")).typical() + 0.005);
  }

  @Test
  void everyNumberThatIsMissingIsToldAtOnce() {
    SamplePlans plans =
        plans(
            SampleMoney.money(
                Map.of("corn", SampleMoney.markets(Spread.exactly(0), null).get("corn")),
                Map.of(),
                Map.of()));
    assertThat(faults(plans, field(TWELVE_STRIPS)))
        .extracting(Fault::what)
        .containsExactly(
            "nothing is known of what soybean brings",
            "nothing is known of what seed of short-106 costs",
            "nothing is known of what seed of tall-108 costs");
  }

  /** Seed that blocks get as well costs nothing more, whatever its price. */
  /** What to add is in the unit of the other crops, else in that of the rates. */
  @Test
  void whatToAddIsInThePlansUnits() {
    PlannedBudget none = SampleMoney.money(Map.of(), Map.of(), Map.of());
    assertThat(faults(plans(none), field(TWELVE_STRIPS)))
        .extracting(Fault::next)
        .contains(
            "add budget.crops.corn: {price: 4.20 /bu, yield: 186 bu/ac}, with your numbers",
            "add budget.crops.soybean: {price: 10.60 /bu, yield: 56 bu/ac}, with your numbers");
    CropMarket tonnes =
        new CropMarket(GrainUnit.TONNE, Spread.exactly(165), Spread.exactly(11.7), null);
    PlannedBudget corn = SampleMoney.money(Map.of("corn", tonnes), Map.of(), Map.of());
    assertThat(faults(plans(corn), field(TWELVE_STRIPS)))
        .extracting(Fault::next)
        .contains("add budget.crops.soybean: {price: 390 /t, yield: 3.8 t/ha}, with your numbers");
    Seeding perHectare =
        new Seeding("tall-108", new SeedingRate(82000, AreaUnit.HECTARE), Map.of(), "strips");
    SamplePlans metric =
        plans(none).strip(0, new PlannedStrip("maize", "corn-planter", 1, perHectare, null));
    assertThat(faults(metric, field(TWELVE_STRIPS)))
        .extracting(Fault::next)
        .contains("add budget.crops.maize: {price: 165 /t, yield: 11.7 t/ha}, with your numbers");
  }

  @Test
  void withoutBorderRowsNoPriceOfSeedIsNeeded() throws RejectedException {
    PlannedStrip corn =
        new PlannedStrip("corn", "corn-planter", 1, seeding("tall-108", 34000), null);
    SamplePlans plans =
        cornAndSoybean()
            .strip(0, corn)
            .budget(
                SampleMoney.money(
                    SampleMoney.markets(Spread.exactly(0.1), Spread.exactly(-0.1)),
                    Map.of(),
                    Map.of()));
    assertThat(budget(plans, field(TWELVE_STRIPS)).strips().facts().moreSeed()).isZero();
  }

  @Test
  void alongACurveThePlanMustTellTheChanges() throws RejectedException {
    FieldData curved = CurvedFields.ring(null);
    SamplePlans silent =
        plans(
            SampleMoney.money(
                SampleMoney.markets(null, Spread.exactly(-0.1)),
                SampleMoney.whole().seedPrices(),
                Map.of()));
    assertThat(faults(silent, curved))
        .singleElement()
        .satisfies(
            fault -> {
              assertThat(fault.what()).contains("no one heading").contains("yield of corn");
              assertThat(fault.next()).contains("add yield-change");
            });
    assertThat(budget(plans(SampleMoney.whole()), curved).strips().items()).isNotEmpty();
  }

  /**
   * Strips with twice as many inner as border rows on 20 acres: 20 x 4/6 x 34,000 = 453,333 seeds
   * are 6 units of 80,000 and 20 x 2/6 x 40,000 = 266,667 are 4, ten together; one product for both
   * needs 720,000, nine units exactly. By hand; a unit of 80,000 kernels: Iowa State Ag Decision
   * Maker A1-20.
   */
  @Test
  void borderAndCentreAreOrderedApart() throws RejectedException {
    double length = 20 * ACRE / 91.44;
    FieldData twentyAcres =
        field(
            String.format(
                Locale.ROOT, "POLYGON ((0 0, 192.024 0, 192.024 %1$.9f, 0 %1$.9f, 0 0))", length));
    List<SeedCost> apart = budget(twenty("short-106"), twentyAcres).seed();
    SeedCost border = apart.get(1);
    SeedCost centre = apart.get(2);
    assertThat(border.order().product()).isEqualTo("short-106");
    assertThat(border.borderSeeds()).isCloseTo(266_667, within(1.0));
    assertThat(border.order().units()).isEqualTo(4);
    assertThat(border.cost()).isEqualTo(new BigDecimal("1200.00"));
    assertThat(centre.centreSeeds()).isCloseTo(453_333, within(1.0));
    assertThat(centre.borderSeeds()).isZero();
    assertThat(centre.order().units()).isEqualTo(6);
    assertThat(centre.cost()).isEqualTo(new BigDecimal("1560.00"));

    SeedCost one = budget(twenty("tall-108"), twentyAcres).seed().get(1);
    assertThat(one.borderSeeds()).isCloseTo(266_667, within(1.0));
    assertThat(one.centreSeeds()).isCloseTo(453_333, within(1.0));
    assertThat(one.order().units()).isEqualTo(9);
  }

  private static SamplePlans twenty(String borderProduct) {
    Border border = new Border(2, Sides.BOTH, seeding(borderProduct, 40_000));
    return cornAndSoybean()
        .pattern(
            List.of(
                new PlannedStrip("soybean", "bean-planter", 1, seeding("bean-2.4", 140_000), null),
                new PlannedStrip("corn", "corn-planter", 1, seeding("tall-108", 34_000), border)))
        .budget(SampleMoney.whole());
  }

  /**
   * Yield = 100 + 0.0064 x - 1e-7 x^2 by hand at three rates; seed at 260 for 80,000 is 0.00325, at
   * 4.00 a bushel the last seed must bring 0.0008125 bu: (0.0064 - 0.0008125) / 2e-7 = 27,937.5.
   */
  @Test
  void theRateThatPaysBest() throws RejectedException {
    PlannedBudget money =
        SampleMoney.withTrials(
            SampleMoney.plot(20_000, 188),
            SampleMoney.plot(30_000, 202),
            SampleMoney.plot(25_000, 197.5));
    RateAdvice advice = budget(plans(money), field(TWELVE_STRIPS)).rates().get(0);
    assertThat(advice.economic().typical()).isCloseTo(27_937.5, within(1e-3));
    assertThat(advice.response().agronomicOptimum()).isCloseTo(32_000, within(1e-3));
    assertThat(advice.economic().low()).isLessThan(advice.economic().typical());
    assertThat(advice.isOutsideTrials()).isFalse();
    assertThat(advice.planned()).extracting(rate -> rate.seeds()).containsExactly(34_000.0);
  }

  @Test
  void trialsWhoseYieldsOnlyRiseAreAFault() {
    PlannedBudget money =
        SampleMoney.withTrials(
            SampleMoney.plot(20_000, 180),
            SampleMoney.plot(25_000, 190),
            SampleMoney.plot(30_000, 210));
    assertThat(faults(plans(money), field(TWELVE_STRIPS)))
        .singleElement()
        .satisfies(fault -> assertThat(fault.what()).contains("no highest yield"));
  }
}
