package org.lynchet.prescription.taskdata;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.lynchet.prescription.zone.SamplePlans.cornAndSoybean;
import static org.lynchet.prescription.zone.SamplePlans.field;

import java.math.BigDecimal;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.locationtech.jts.geom.Coordinate;
import org.lynchet.formats.isoxml.TaskSet;
import org.lynchet.formats.isoxml.TaskSet.Kind;
import org.lynchet.formats.isoxml.TaskSet.Task;
import org.lynchet.geometry.guidance.Curve;
import org.lynchet.geometry.guidance.OffsetFrame;
import org.lynchet.prescription.fault.RejectedException;
import org.lynchet.prescription.fault.Warning;
import org.lynchet.prescription.plan.Plan;
import org.lynchet.prescription.plan.PlannedStrip;
import org.lynchet.prescription.quantity.AreaUnit;
import org.lynchet.prescription.quantity.SeedingRate;
import org.lynchet.prescription.spraying.SprayPass;
import org.lynchet.prescription.zone.CurvedFields;
import org.lynchet.prescription.zone.DrivenPass;
import org.lynchet.prescription.zone.FieldData;
import org.lynchet.prescription.zone.FieldLayout;
import org.lynchet.prescription.zone.SamplePlans;
import org.lynchet.prescription.zone.Zone;

/** Makes task data of invented fields. */
class TaskSetMakerTest {
  private static final String FIELD =
      "POLYGON ((0 0, 60 -10, 80 200, 10 220, 0 0), (20 40, 30 80, 40 40, 20 40))";

  /** A tenth of a millionth of a degree. */
  private static final BigDecimal TENTH = new BigDecimal("1e-7");

  private static FieldLayout layout(SamplePlans plans) throws Exception {
    return FieldLayout.of(plans.plan(), field(FIELD));
  }

  /**
   * ISO 11783-11, DDI 11: 0.001 on a square metre. 34000 seeds/ac by hand: 34000 / 4046.8564224 =
   * 8.401583..., so 8402 is sent, 8.402 x 4046.8564224 = 34001.687...
   */
  @ParameterizedTest
  @CsvSource({
    "34000, ACRE, 8402, 34001.6877",
    "140000, ACRE, 34595, 140000.9979",
    "84000, HECTARE, 8400, 84000",
    "370000, HECTARE, 37000, 370000",
    "84005, HECTARE, 8401, 84010",
    "0, ACRE, 0, 0",
  })
  void ratesAreSentInWholeSteps(double seeds, AreaUnit per, int raw, double sent) {
    SentRate rate = SentRate.of(new SeedingRate(seeds, per));
    assertThat(rate.raw()).isEqualTo(raw);
    assertThat(rate.rate(per).seeds()).isCloseTo(sent, within(0.001));
  }

  @Test
  void eachCropHasATaskWithOneZoneForEachProductAndRate() throws Exception {
    FieldLayout layout = layout(cornAndSoybean().headland(1, true));
    TaskSet set = TaskSetMaker.of(layout);
    assertThat(set.tasks()).extracting(Task::name).allMatch(n -> n.matches("(corn|soybean) .*"));
    for (Task task : set.tasks()) {
      String crop = task.name().split(" ", 2)[0];
      long settings =
          layout.zones().stream()
              .filter(z -> z.crop().equals(crop))
              .map(z -> z.product() + z.rate())
              .distinct()
              .count();
      assertThat(task.zones()).hasSize(1 + (int) settings);
      assertThat(task.zones())
          .extracting(TaskSet.Zone::code)
          .isEqualTo(IntStream.rangeClosed(0, (int) settings).boxed().toList());
      assertThat(task.zones().get(0).values().get(0).value()).isZero();
      assertThat(task.lostZone()).isZero();
      assertThat(task.outsideZone()).isZero();
      int polygons = task.zones().stream().mapToInt(z -> z.area().getNumGeometries()).sum();
      assertThat(polygons)
          .isEqualTo((int) layout.zones().stream().map(Zone::crop).filter(crop::equals).count());
    }
  }

  @Test
  void offZonesAreDrawnOnlyIfAskedFor() throws Exception {
    TaskSet without = TaskSetMaker.of(layout(cornAndSoybean()));
    assertThat(without.tasks().get(0).zones().get(0).area().isEmpty()).isTrue();
    TaskSet with = TaskSetMaker.of(layout(cornAndSoybean().offZones()));
    assertThat(with.tasks().get(0).zones().get(0).area().isEmpty()).isFalse();
  }

  /** A rate is shown as sent x scale: 8402 x 4.0468564224 = 34001.69 seeds/ac. */
  @Test
  void ratesAreShownInThePlansUnit() throws Exception {
    TaskSet set = TaskSetMaker.of(layout(cornAndSoybean()));
    assertThat(set.presentations()).hasSize(1);
    assertThat(set.presentations().get(0).scale()).isEqualTo(new BigDecimal("4.0468564224"));
    assertThat(set.presentations().get(0).unit()).isEqualTo("seeds/ac");
  }

  @Test
  void guidanceIsTheAbLineAndAnAbLineForEachPass() throws Exception {
    FieldLayout layout = layout(cornAndSoybean());
    var lines = TaskSetMaker.of(layout).partFields().get(0).lines();
    assertThat(lines.get(0).kind()).isEqualTo(Kind.A_PLUS);
    assertThat(lines.get(0).headingDegrees()).isEqualTo(new BigDecimal("0"));
    assertThat(lines).hasSize(1 + layout.passes().size());
    assertThat(lines.subList(1, lines.size()))
        .allSatisfy(
            line -> {
              assertThat(line.kind()).isEqualTo(Kind.AB);
              assertThat(line.points()).hasSize(2);
              // The AB line runs north: A is south of B.
              assertThat(line.points().get(0).y).isLessThan(line.points().get(1).y);
              assertThat(line.spacingMillimetres()).isEqualTo(9144);
            });
  }

  /** The AB line is told where it was placed: a terminal that steers by it plants other strips. */
  @ParameterizedTest
  @EnumSource
  void aPlacedAbLineIsToldWhereItWasPlaced(TaskSet.Version version) throws Exception {
    OffsetFrame placed = SamplePlans.FRAME.movedRight(3).turned(Math.PI / 2);
    FieldData at = field(FIELD).withFrame(placed);
    FieldLayout layout = FieldLayout.of(cornAndSoybean().taskData(version).plan(), at);
    TaskSet.Line line = TaskSetMaker.of(layout).partFields().get(0).lines().get(0);
    Coordinate a = line.points().get(0);
    // 9 decimals of a degree are 0.1 mm.
    assertThat(placed.toOffset(a.x, a.y).distance(new Coordinate(0, 0))).isLessThan(1e-4);
    if (version == TaskSet.Version.V4_3) {
      // True north turns by 3 m x tan(latitude) / R = 2.56e-5 degrees on the way.
      assertThat(line.headingDegrees()).isCloseTo(new BigDecimal("90.0000256"), within(TENTH));
    } else {
      Coordinate b = line.points().get(1);
      assertThat(placed.toOffset(b.x, b.y).distance(new Coordinate(0, 500))).isLessThan(1e-4);
    }
  }

  /** ISO 11783-10: guidance pattern type 3 is a curve, of reference A, guidance points and B. */
  @ParameterizedTest
  @EnumSource
  void alongACurveGuidanceIsTheCurveAndACurveForEachPass(TaskSet.Version version) throws Exception {
    Plan plan = cornAndSoybean().taskData(version).plan();
    FieldLayout layout = FieldLayout.of(plan, CurvedFields.ring(null));
    var lines = TaskSetMaker.of(layout).partFields().get(0).lines();
    assertThat(lines).hasSize(1 + layout.passes().size()).allMatch(l -> l.kind() == Kind.CURVE);
    assertThat(lines.get(0).name()).isEqualTo("curve");
    assertThat(lines.get(0).points()).hasSameSizeAs(((Curve) layout.guidance()).points());
    for (DrivenPass pass : layout.passes()) {
      String name = "(.* )?pass " + pass.pass().number();
      List<Coordinate> sent =
          lines.stream().filter(l -> l.name().matches(name)).findFirst().orElseThrow().points();
      Coordinate[] drawn = pass.line().getCoordinates();
      // South to north, from where the pass begins to where it ends: 9 decimals, each rounded once
      assertThat(sent.get(0).distance(drawn[0])).isLessThan(3e-9);
      assertThat(sent.get(sent.size() - 1).distance(drawn[drawn.length - 1])).isLessThan(3e-9);
    }
  }

  /** Strips of 30 ft: of the 9 sections of 10 ft, 3 are open, the middle ones. */
  @ParameterizedTest
  @EnumSource
  void sprayPassesAreLinesOfTheirSprayerAndCrop(TaskSet.Version version) throws Exception {
    FieldLayout layout = layout(cornAndSoybean().taskData(version).sprayer(90, 10.0));
    var lines = TaskSetMaker.of(layout).partFields().get(0).lines();
    assertThat(layout.spraying().passes()).hasSizeGreaterThan(4);
    assertThat(lines).hasSize(1 + layout.passes().size() + layout.spraying().passes().size());
    if (version == TaskSet.Version.V4_3) {
      assertThat(lines.stream().map(TaskSet.Line::group).distinct())
          .containsExactly(
              "AB line", "corn-planter", "bean-planter", "sprayer corn", "sprayer soybean");
    }
    for (SprayPass pass : layout.spraying().passes()) {
      TaskSet.Line line = sprayLine(lines, pass);
      assertThat(line.name()).endsWith("spray " + pass.number() + " open 4-6");
      assertThat(line.kind()).isEqualTo(Kind.AB);
      assertThat(line.spacingMillimetres()).isEqualTo(9144);
      Coordinate[] drawn = pass.line().getCoordinates();
      // The AB line runs north; 9 decimals, each rounded once.
      assertThat(line.points()).hasSize(2);
      assertThat(line.points().get(0).y).isLessThan(line.points().get(1).y);
      assertThat(line.points().get(0).distance(drawn[0])).isLessThan(3e-9);
      assertThat(line.points().get(1).distance(drawn[drawn.length - 1])).isLessThan(3e-9);
    }
  }

  @ParameterizedTest
  @EnumSource
  void alongACurveSprayPassesAreCurves(TaskSet.Version version) throws Exception {
    Plan plan = cornAndSoybean().taskData(version).sprayer(90, 10.0).plan();
    FieldLayout layout = FieldLayout.of(plan, CurvedFields.ring(null));
    var lines = TaskSetMaker.of(layout).partFields().get(0).lines();
    assertThat(layout.spraying().passes()).isNotEmpty();
    for (SprayPass pass : layout.spraying().passes()) {
      TaskSet.Line line = sprayLine(lines, pass);
      assertThat(line.kind()).isEqualTo(Kind.CURVE);
      Coordinate[] drawn = pass.line().getCoordinates();
      assertThat(line.points().get(0).distance(drawn[0])).isLessThan(3e-9);
      assertThat(line.points().get(line.points().size() - 1).distance(drawn[drawn.length - 1]))
          .isLessThan(3e-9);
    }
  }

  private static TaskSet.Line sprayLine(List<TaskSet.Line> lines, SprayPass pass) {
    String group = pass.machine() + " " + pass.crop();
    String named = group + " .*spray " + pass.number() + " .*";
    return lines.stream()
        .filter(line -> (line.group() + " " + line.name()).strip().matches(named))
        .findFirst()
        .orElseThrow();
  }

  /** A boom of one piece is open as a whole; one wider than the strip must stay shut. */
  @Test
  void aBoomWithoutSectionsIsOpenOrShut() throws Exception {
    var open =
        TaskSetMaker.of(layout(cornAndSoybean().sprayer(30, null))).partFields().get(0).lines();
    assertThat(open)
        .filteredOn(line -> line.name().startsWith("spray "))
        .isNotEmpty()
        .allMatch(line -> line.name().endsWith(" open 1") && line.spacingMillimetres() == 9144);
    var shut =
        TaskSetMaker.of(layout(cornAndSoybean().sprayer(90, null))).partFields().get(0).lines();
    assertThat(shut)
        .filteredOn(line -> line.name().startsWith("spray "))
        .isNotEmpty()
        .allMatch(line -> line.name().endsWith(" all shut") && line.spacingMillimetres() == 0);
  }

  /** ISO 11783-10, D.24 and D.25: designators have at most 32 characters. */
  @ParameterizedTest
  @EnumSource
  void linesOfMachinesWithLongNamesCanBeToldApart(TaskSet.Version version) throws Exception {
    String planter = "the planter with the blue toolbar ";
    SamplePlans plans = cornAndSoybean().taskData(version).sprayer(90, 10.0);
    plans
        .strip(0, new PlannedStrip("corn", planter + "1", 1, SamplePlans.seeding("tall", 9), null))
        .strip(1, new PlannedStrip("soy", planter + "2", 1, SamplePlans.seeding("bean", 9), null))
        .rename("corn-planter", planter + "1")
        .rename("bean-planter", planter + "2");
    var lines = TaskSetMaker.of(layout(plans)).partFields().get(0).lines();
    assertThat(lines).allMatch(line -> line.name().length() <= 32 && line.group().length() <= 32);
    assertThat(lines.stream().map(line -> line.group() + "/" + line.name()))
        .doesNotHaveDuplicates();
    if (version == TaskSet.Version.V4_3) {
      assertThat(lines.stream().map(TaskSet.Line::group).distinct()).hasSize(5);
    }
  }

  private static SamplePlans growing(String corn, String soybean) {
    return cornAndSoybean()
        .strip(
            0, new PlannedStrip("corn", "corn-planter", 1, SamplePlans.seeding(corn, 34000), null))
        .strip(
            1,
            new PlannedStrip("soybean", "bean-planter", 1, SamplePlans.seeding(soybean, 9), null));
  }

  /** ISO 11783-10, D.36: the designator of a product has at most 32 characters. */
  @Test
  void namesThatComeOutTheSameAreAFault() throws Exception {
    FieldLayout layout = layout(growing("p".repeat(32) + "1", "p".repeat(32) + "2"));
    assertThatThrownBy(() -> TaskSetMaker.of(layout))
        .isInstanceOf(RejectedException.class)
        .hasMessageContaining("have the same name in task data");
  }

  @Test
  void aNameThatIsCutIsToldOfOnce() throws Exception {
    FieldLayout layout = layout(growing("p".repeat(33), "bean"));
    assertThat(TaskSetMaker.of(layout).products()).hasSize(2);
    assertThat(SentNames.warnings(layout))
        .singleElement()
        .satisfies(warning -> assertThat(warning.code()).isEqualTo(Warning.Code.NAME_CUT));
    assertThat(SentNames.warnings(layout(cornAndSoybean()))).isEmpty();
  }

  @Test
  void theTableSaysWhatIsMeantAndWhatIsSent() throws Exception {
    assertThat(RateTable.of(layout(cornAndSoybean())))
        .contains("34000 seeds/ac   sent as 34001.69 (DDI 000B value 8402)");
  }
}
