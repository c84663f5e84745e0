package org.lynchet.prescription.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.ObjectInputStream;
import java.io.ObjectOutputStream;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.lynchet.formats.isoxml.TaskSet.Version;
import org.lynchet.prescription.fault.RejectedException;
import org.lynchet.prescription.machine.Combine;
import org.lynchet.prescription.machine.Handling;
import org.lynchet.prescription.machine.Planter;
import org.lynchet.prescription.machine.Planter.Hoppers;
import org.lynchet.prescription.machine.Sprayer;
import org.lynchet.prescription.machine.Toolbar;
import org.lynchet.prescription.plan.ForecastChoices.PlannedCanopy;
import org.lynchet.prescription.plan.HandoffChoices.Format;
import org.lynchet.prescription.plan.PlacementChoices.Kind;
import org.lynchet.prescription.plan.PlannedField.ManagementZoneMap;
import org.lynchet.prescription.plan.PlannedGuidance.AbLineIs;
import org.lynchet.prescription.plan.PlannedGuidance.AlongCurve;
import org.lynchet.prescription.plan.PlannedGuidance.Position;
import org.lynchet.prescription.plan.PlannedGuidance.ThroughPoint;
import org.lynchet.prescription.plan.PlannedGuidance.ThroughTwoPoints;
import org.lynchet.prescription.plan.PlannedSetback.Neighbour;
import org.lynchet.prescription.plan.PlannedSetback.Side;
import org.lynchet.prescription.plan.PlannedStrip.Sides;
import org.lynchet.prescription.plan.SeedingTrials.Curve;
import org.lynchet.prescription.plan.SeedingTrials.TrialPlot;
import org.lynchet.prescription.quantity.Area;
import org.lynchet.prescription.quantity.AreaUnit;
import org.lynchet.prescription.quantity.GrainUnit;
import org.lynchet.prescription.quantity.GrainYield;
import org.lynchet.prescription.quantity.Length;
import org.lynchet.prescription.quantity.LengthUnit;
import org.lynchet.prescription.quantity.SeedingRate;
import org.lynchet.prescription.quantity.Shrink;
import org.lynchet.prescription.quantity.Spread;
import org.lynchet.prescription.quantity.Time;
import org.lynchet.prescription.quantity.TimeUnit;

/**
 * Holds what is read against what is written. SI values: inch, foot and acre of NIST Handbook 44,
 * appendix C (from memory), worked out by hand.
 */
class PlanFileTest {
  @TempDir Path folder;

  @Test
  void fieldAndGuidance() throws Exception {
    Plan plan = PlanTexts.read(folder, PlanTexts.FULL);
    assertThat(plan.file()).isEqualTo(folder.resolve("plan.yaml").toString());
    assertThat(plan.date()).isEqualTo(LocalDate.of(2027, 4, 20));
    assertThat(plan.field().name()).isEqualTo("Sandhill East");
    assertThat(plan.field().boundary()).isEqualTo("sandhill-east.geojson");
    assertThat(plan.field().managementZones())
        .isEqualTo(new ManagementZoneMap("soils.geojson", "zone", "low"));
    assertThat(plan.field().minimumPiece().squareMetres()).isCloseTo(40.468564224, within(1e-12));
    assertThat(plan.field().repair()).isTrue();
    assertThat(plan.field().waterways()).isEqualTo("waterways.geojson");
    assertThat(plan.field().entrance()).isEqualTo(new Position(-94.2, 43.6));
    assertThat(plan.guidance())
        .isEqualTo(
            new PlannedGuidance(
                new ThroughTwoPoints(
                    new Position(-94.1021, 43.5512), new Position(-94.0933, 43.5513)),
                AbLineIs.STRIP_EDGE,
                new PlacementChoices(
                    Kind.BEST,
                    List.of(350.0, 355.0, 0.0, 5.0, 10.0),
                    new PlacementWeights(
                        2,
                        0,
                        0.25,
                        1.5,
                        new Area(0.02, AreaUnit.ACRE),
                        new Area(20, AreaUnit.SQUARE_METRE)),
                    Map.of("corn", 0.4, "soybean", 0.6))));
  }

  /** Headings come out as they would be written, whatever sums of binary fractions come to. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "{from: 0, to: 0.4, step: 0.1}  | 0.0 0.1 0.2 0.3 0.4",
        "{from: 90, to: 90, step: 180}  | 90.0",
        "{from: 359, to: 0.99, step: 1} | 359.0 0.0",
        "{from: 10, to: 9, step: 180}   | 10.0 190.0",
        "[3, 1.25]                      | 3.0 1.25"
      })
  void headings(String written, String read) throws Exception {
    String plan = PlanTexts.FULL.replace("{from: 350, to: 10.5, step: 5}", written);
    assertThat(PlanTexts.read(folder, plan).guidance().placement().headingsDegrees())
        .extracting(String::valueOf)
        .containsExactly(read.split(" ", -1));
  }

  @Test
  void machines() throws Exception {
    Plan plan = PlanTexts.read(folder, PlanTexts.FULL);
    assertThat(plan.machines().keySet())
        .containsExactly("corn-planter", "bean-planter", "sprayer", "combine", "cultivator");
    assertThat(plan.machines().get("corn-planter"))
        .isInstanceOfSatisfying(
            Planter.class,
            corn -> {
              assertThat(corn.rowSpacing().metres()).isEqualTo(0.762);
              assertThat(corn.workingWidthMetres()).isEqualTo(9.144);
              assertThat(corn.hoppers()).isEqualTo(Hoppers.ROW_UNIT);
              assertThat(corn.rateLimits())
                  .isEqualTo(
                      new Planter.RateLimits(
                          new SeedingRate(20_000, AreaUnit.ACRE),
                          new SeedingRate(45_000, AreaUnit.ACRE)));
              Handling handling = corn.handling();
              assertThat(handling.speed().metresPerHour()).isEqualTo(8000);
              assertThat(handling.efficiency()).isEqualTo(0.7);
              assertThat(handling.turnTime().hours()).isCloseTo(1.0 / 120, within(1e-15));
              assertThat(handling.turnRadius().metres()).isEqualTo(7);
              assertThat(handling.told())
                  .containsExactly("speed", "efficiency", "turn-time", "turn-radius");
            });
    assertThat(plan.machines().get("bean-planter"))
        .isInstanceOfSatisfying(
            Planter.class,
            bean -> {
              assertThat(bean.workingWidthMetres()).isEqualTo(9.144);
              assertThat(bean.hoppers()).isEqualTo(Hoppers.CENTRAL);
              assertThat(bean.rateLimits()).isNull();
              assertThat(bean.handling()).isEqualTo(Handling.PLANTER);
            });
    assertThat(plan.machines().get("sprayer"))
        .isInstanceOfSatisfying(
            Sprayer.class,
            sprayer -> {
              assertThat(sprayer.workingWidthMetres()).isEqualTo(27.432);
              assertThat(sprayer.section()).isNotNull().matches(s -> s.metres() == 3.048);
              assertThat(sprayer.crops()).containsExactly("corn", "soybean");
              assertThat(sprayer.wheels())
                  .isNotNull()
                  .matches(w -> w.trackWidth().metres() == 3.048);
            });
    assertThat(plan.machines().get("combine"))
        .isInstanceOfSatisfying(
            Combine.class,
            combine -> {
              assertThat(combine.workingWidthMetres()).isEqualTo(9.144);
              assertThat(combine.wheels()).isNotNull().matches(w -> w.tyreWidth().metres() == 0.8);
            });
    assertThat(plan.machines().get("cultivator"))
        .isInstanceOfSatisfying(
            Toolbar.class, bar -> assertThat(bar.workingWidthMetres()).isEqualTo(9.144));
  }

  @Test
  void headlandAndStrips() throws Exception {
    Plan plan = PlanTexts.read(folder, PlanTexts.FULL);
    assertThat(plan.headland())
        .isEqualTo(
            new PlannedHeadland(
                2,
                "corn-planter",
                false,
                "corn",
                everywhere("tall-108", 32_000, "headland.rate"),
                40.0));
    assertThat(plan.strips()).hasSize(2);
    PlannedStrip corn = plan.strips().get(0);
    assertThat(corn.passes()).isEqualTo(1);
    assertThat(corn.centre()).isEqualTo(everywhere("tall-108", 34_000, "strips[0].centre.rate"));
    assertThat(corn.border())
        .isNotNull()
        .satisfies(
            border -> {
              assertThat(border.rows()).isEqualTo(2);
              assertThat(border.sides()).isEqualTo(Sides.LEFT);
              assertThat(border.seeding().key()).isEqualTo("strips[0].border.rate");
              // 90,000 seeds on 10,000 m2.
              assertThat(border.seeding().findRate(null).orElseThrow().perSquareMetre())
                  .isEqualTo(9);
            });
    Seeding bean = plan.strips().get(1).centre();
    assertThat(bean.everywhere()).isNull();
    assertThat(bean.byManagementZone().keySet()).containsExactly("low", "high");
    assertThat(bean.findRate("low")).contains(new SeedingRate(0, AreaUnit.ACRE));
    assertThat(bean.findRate("high")).contains(new SeedingRate(37.5, AreaUnit.SQUARE_METRE));
    assertThat(bean.findRate("sand")).isEmpty();
  }

  @Test
  void setback() throws Exception {
    PlannedSetback setback = PlanTexts.read(folder, PlanTexts.FULL).setback();
    assertThat(setback.sides().keySet())
        .containsExactly(Side.NORTH, Side.EAST, Side.SOUTH, Side.WEST);
    assertThat(setback.sides()).containsEntry(Side.NORTH, new Length(30, LengthUnit.FOOT));
    assertThat(setback.neighbours())
        .containsExactly(
            Map.entry("creek", new Neighbour("creek.shp", new Length(50, LengthUnit.FOOT))),
            Map.entry("school", new Neighbour("school.geojson", null)));
    assertThat(PlanTexts.read(folder, PlanTexts.SHORT).setback()).isEqualTo(PlannedSetback.NONE);
  }

  @Test
  void productsHandoffAndFit() throws Exception {
    Plan plan = PlanTexts.read(folder, PlanTexts.FULL);
    assertThat(plan.products())
        .containsOnly(
            Map.entry("tall-108", new Product("tall-108", "corn", 80_000, 0.95, 0.9, 0.03)),
            Map.entry("short-106", new Product("short-106", "corn", null, null, 0)));
    assertThat(plan.handoff())
        .isEqualTo(
            new HandoffChoices(
                true,
                List.of(Format.GEOJSON, Format.SHAPEFILE),
                new TaskDataChoices(Version.V3_3, "Someone", "Hill"),
                true,
                new TerminalLimits(500, 900, 20),
                new Length(2, LengthUnit.CENTIMETRE)));
    assertThat(plan.fit().maxStripWidth().metres()).isEqualTo(24.384);
    assertThat(plan.fit().tolerance().metres()).isEqualTo(0.0254);
  }

  @Test
  void forecast() throws Exception {
    ForecastChoices forecast = PlanTexts.read(folder, PlanTexts.FULL).forecast();
    assertThat(forecast.season()).isEqualTo(ForecastChoices.Season.DRY);
    assertThat(forecast.clearness()).hasSize(12).startsWith(0.605).endsWith(0.72);
    assertThat(forecast.step()).isEqualTo(new Time(10, TimeUnit.MINUTE));
    assertThat(forecast.canopies().keySet()).containsExactly("tall-108", "short-106");
    assertThat(forecast.canopies().get("tall-108"))
        .isEqualTo(
            new PlannedCanopy(
                new Length(2.5, LengthUnit.METRE),
                5.5,
                0.6,
                LocalDate.of(2027, 5, 4),
                LocalDate.of(2027, 9, 12),
                new LeafCurve(
                    new SeasonTime.Day(LocalDate.of(2027, 6, 30)),
                    new SeasonTime.Share(0.6),
                    new SeasonTime.Share(0.825),
                    0.4)));
    assertThat(forecast.responses()).containsOnly(Map.entry("soybean", new Spread(0.1, 0.3, 0.5)));
  }

  @Test
  void budget() throws Exception {
    PlannedBudget budget = PlanTexts.read(folder, PlanTexts.FULL).budget();
    assertThat(budget)
        .isEqualTo(
            new PlannedBudget(
                "EUR",
                Map.of(
                    "corn",
                    new CropMarket(
                        GrainUnit.TONNE,
                        new Spread(150, 170, 210),
                        new Spread(9, 11, 13.5),
                        new Spread(-0.03, 0.045, 0.11),
                        new GrainDelivered(
                            new Spread(9, 11, 13.5), GrainUnit.TONNE, new Shrink(0.15, 0.15, 0))),
                    "soybean",
                    new CropMarket(
                        GrainUnit.BUSHEL, Spread.exactly(10.5), Spread.exactly(52.5), null)),
                Map.of("tall-108", 281.0),
                new Spread(120, 155, 190),
                4,
                List.of(
                    new ExtraCost("scouting", 2.5, AreaUnit.ACRE),
                    new ExtraCost("a marker", 99, null)),
                Map.of(
                    "tall-108",
                    new SeedingTrials(
                        Curve.PARABOLA,
                        List.of(plot(25000, 9.9), plot(30000, 11.2), plot(35000, 11.7))),
                    "short-106",
                    new SeedingTrials(
                        Curve.TESTED_RATES, List.of(plot(26000, 10), plot(28000, 10.5))))));
    assertThat(budget.crops().keySet()).containsExactly("corn", "soybean");
  }

  /** Plots alone are a parabola, and so are plots without a word of their curve. */
  @Test
  void trialsAreAParabolaUnlessTheySayOtherwise() throws Exception {
    String plots =
        "[{rate: 2 seeds/m2, yield: 9 t/ha}, {rate: 3 seeds/m2, yield: 10 t/ha},"
            + " {rate: 4 seeds/m2, yield: 8 t/ha}]";
    PlannedBudget bare = trials(plots);
    assertThat(bare.seedingTrials().get("tall-108"))
        .extracting(SeedingTrials::curve)
        .isEqualTo(Curve.PARABOLA);
    assertThat(trials("{plots: " + plots + "}")).isEqualTo(bare);
    assertThat(trials("{curve: parabola, plots: " + plots + "}")).isEqualTo(bare);
    assertThat(trials("{curve: exponential, plots: " + plots + "}")).isNotEqualTo(bare);
  }

  private PlannedBudget trials(String ofProduct) throws Exception {
    String text = PlanTexts.SHORT + "budget: {seeding-trials: {tall-108: " + ofProduct + "}}\n";
    return PlanTexts.read(folder, text).budget();
  }

  private static TrialPlot plot(double seeds, double tonnes) {
    return new TrialPlot(
        new SeedingRate(seeds, AreaUnit.ACRE), new GrainYield(tonnes, GrainUnit.TONNE));
  }

  @Test
  void compare() throws Exception {
    assertThat(PlanTexts.read(folder, PlanTexts.FULL).compare())
        .isEqualTo(new CompareChoices(List.of(37.5, 50.0), 3));
  }

  @Test
  void defaults() throws Exception {
    Plan plan = PlanTexts.read(folder, PlanTexts.SHORT);
    assertThat(plan.date()).isNull();
    assertThat(plan.field().managementZones()).isNull();
    assertThat(plan.field().minimumPiece()).isEqualTo(new Area(10, AreaUnit.SQUARE_METRE));
    assertThat(plan.field().repair()).isFalse();
    assertThat(plan.guidance())
        .isEqualTo(
            new PlannedGuidance(
                new ThroughPoint(new Position(-94.1, 43.5), 92.5), AbLineIs.PASS_CENTRE));
    assertThat(plan.headland()).isNull();
    assertThat(plan.strips().get(0).border()).isNull();
    assertThat(plan.products()).isEmpty();
    assertThat(plan.handoff())
        .isEqualTo(new HandoffChoices(false, List.of(Format.SHAPEFILE, Format.GEOJSON)));
    assertThat(plan.fit()).isEqualTo(FitChoices.DEFAULT);
    assertThat(plan.forecast()).isEqualTo(ForecastChoices.DEFAULT);
    assertThat(plan.compare()).isEqualTo(CompareChoices.DEFAULT);
  }

  @Test
  void curves() throws Exception {
    assertThat(PlanTexts.read(folder, PlanTexts.CURVED).guidance().line())
        .isEqualTo(new AlongCurve("lines.csv", 2));
    String alone = PlanTexts.CURVED.replace("{file: lines.csv, line: 2}", "contour.shp");
    assertThat(PlanTexts.read(folder, alone).guidance().line())
        .isEqualTo(new AlongCurve("contour.shp", null));
  }

  /** RFC 3629, section 6, lets text begin with the signature EF BB BF; some editors write it. */
  @Test
  void aSignatureOfUtf8IsNoPartOfThePlan() throws Exception {
    assertThat(PlanTexts.read(folder, "\uFEFF" + PlanTexts.FULL))
        .isEqualTo(PlanTexts.read(folder, PlanTexts.FULL));
  }

  @Test
  void linesMayEndLikeOnWindows() throws Exception {
    assertThat(PlanTexts.read(folder, PlanTexts.FULL.replace("\n", "\r\n")))
        .isEqualTo(PlanTexts.read(folder, PlanTexts.FULL));
  }

  @Test
  void survivesSerialisation() throws Exception {
    for (String text : List.of(PlanTexts.FULL, PlanTexts.SHORT)) {
      Plan plan = PlanTexts.read(folder, text);
      assertThat(copy(plan)).isEqualTo(plan).hasSameHashCodeAs(plan);
      assertThat(copy(plan).machines().keySet())
          .containsExactlyElementsOf(plan.machines().keySet());
    }
  }

  private static Plan copy(Plan plan) throws IOException, ClassNotFoundException {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    try (ObjectOutputStream out = new ObjectOutputStream(bytes)) {
      out.writeObject(plan);
    }
    try (ObjectInputStream in =
        new ObjectInputStream(new ByteArrayInputStream(bytes.toByteArray()))) {
      return (Plan) in.readObject();
    }
  }

  private static Seeding everywhere(String product, double perAcre, String key) {
    return new Seeding(product, new SeedingRate(perAcre, AreaUnit.ACRE), Map.of(), key);
  }

  @Test
  void theExceptionNamesTheFirstFault() {
    assertThatThrownBy(() -> PlanTexts.read(folder, "field: 3\n"))
        .isInstanceOf(RejectedException.class)
        .hasMessageContaining("plan.yaml:1:1: the key 'guidance' is missing");
  }
}
