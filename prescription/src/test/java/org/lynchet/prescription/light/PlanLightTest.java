package org.lynchet.prescription.light;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Objects;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.lynchet.formats.Fault;
import org.lynchet.prescription.fault.RejectedException;
import org.lynchet.prescription.plan.PlanFile;

class PlanLightTest {
  private static final String PLAN =
      """
      field: {name: Field, boundary: field.geojson}
      guidance: {ab-line: {a: [-94.10210, 43.55120], b: [-94.09330, 43.55120]}}
      machines:
        corn-planter: {kind: planter, rows: 12, row-spacing: 30 in}
        bean-planter: {kind: planter, rows: 24, row-spacing: 15 in}
      strips:
        - crop: corn
          planted-by: corn-planter
          passes: 1
          centre: {product: tall-108, rate: 34000 seeds/ac}
          border: {rows: 2, product: short-106, rate: 36000 seeds/ac, sides: right}
        - crop: soybean
          planted-by: bean-planter
          passes: 1
          centre: {product: bean-2.4, rate: 140000 seeds/ac}
      """;

  @TempDir Path folder;

  private LightRequest request(String text) throws IOException, RejectedException {
    return PlanLight.request(PlanFile.read(Files.writeString(folder.resolve("plan.yaml"), text)));
  }

  private List<Fault> faults(String text) {
    return catchThrowableOfType(RejectedException.class, () -> request(text)).faults();
  }

  @Test
  void takesPlaceHeadingAndRowsFromThePlan() throws Exception {
    LightRequest request = request(PLAN);
    assertThat(request.latitudeDegrees()).isEqualTo(43.5512);
    assertThat(request.longitudeDegrees()).isEqualTo(-94.1021);
    assertThat(request.headingDegrees()).isCloseTo(90, within(0.01));
    assertThat(request.sampling()).isEqualTo(Sampling.QUICK);
    assertThat(request.rows()).hasSize(36);
    CanopyRow first = request.rows().get(0);
    // The AB line is the centre of 12 rows: the first is 5.5 spacings of 0.762 m left of it.
    assertThat(first.offsetMetres()).isCloseTo(-4.191, within(1e-9));
    assertThat(request.rows().get(35).offsetMetres()).isCloseTo(13.5255, within(1e-9));
    assertThat(request.rows()).extracting(CanopyRow::product).startsWith("tall-108", "tall-108");
    assertThat(request.rows().subList(10, 13))
        .extracting(CanopyRow::product)
        .containsExactly("short-106", "short-106", "bean-2.4");
  }

  @ParameterizedTest
  @CsvSource({
    "'curve: contour.csv', guidance.curve",
    "'ab-line: {file: taskdata.zip}', guidance.ab-line.file"
  })
  void aLineInAFileIsRefused(String line, String key) {
    List<Fault> faults = faults(PLAN.replaceFirst("ab-line: \\{[^}]*}", line));
    assertThat(faults).hasSize(1);
    assertThat(faults.get(0).where()).endsWith(key);
  }

  @Test
  void defaultsAreThoseOfTheFile() throws Exception {
    CanopyTraits corn = Objects.requireNonNull(request(PLAN).rows().get(0).canopy());
    assertThat(corn.heightMetres()).isEqualTo(2.18);
    assertThat(corn.planting()).isEqualTo(LocalDate.of(2025, 5, 1));
    // 131 days: 30 of May, 30 of June, 31, 31, and 9 of September.
    assertThat(corn.maturity()).isEqualTo(LocalDate.of(2025, 9, 9));
    assertThat(request(PLAN).clearness().get(6)).isEqualTo(0.77);
  }

  @Test
  void theSouthIsHalfAYearOn() throws Exception {
    LightRequest south = request(PLAN.replace("43.55120", "-33.55120") + "date: 2027-04-20\n");
    CanopyTraits corn = Objects.requireNonNull(south.rows().get(0).canopy());
    assertThat(corn.planting()).isEqualTo(LocalDate.of(2027, 11, 1));
    assertThat(south.clearness().get(0)).isEqualTo(0.77);
  }

  @Test
  void keysOfTheProductComeBeforeThoseOfTheCrop() throws Exception {
    LightRequest request =
        request(
            PLAN
                + "forecast:\n"
                + "  step: 15 min\n"
                + "  canopies:\n"
                + "    corn: {height: 2.5 m, planting: 2027-05-10}\n"
                + "    short-106: {height: 67 in}\n");
    CanopyTraits tall = Objects.requireNonNull(request.rows().get(0).canopy());
    CanopyTraits small = Objects.requireNonNull(request.rows().get(11).canopy());
    assertThat(tall.heightMetres()).isEqualTo(2.5);
    assertThat(small.heightMetres()).isCloseTo(1.7018, within(1e-12));
    assertThat(small.planting()).isEqualTo(tall.planting()).isEqualTo("2027-05-10");
    assertThat(request.sampling().minutes()).isEqualTo(15);
    assertThat(request.sampling().days()).isEqualTo(1);
  }

  /** A day is taken as the share of the season that is over by then. */
  @Test
  void leafCurvesOfThePlanComeBeforeDefaults() throws Exception {
    LightRequest request =
        request(
            PLAN
                + "forecast:\n"
                + "  canopies:\n"
                + "    corn: {planting: 2027-05-01, maturity: 2027-08-09, full-leaf: 70 %}\n"
                + "    short-106: {half-leaf: 2027-06-20, leaf-at-maturity: 20 %}\n");
    CanopyTraits tall = Objects.requireNonNull(request.rows().get(0).canopy());
    CanopyTraits small = Objects.requireNonNull(request.rows().get(11).canopy());
    assertThat(tall.fullLeaf()).isEqualTo(0.7);
    assertThat(tall.halfLeaf()).isEqualTo(0.43);
    assertThat(small.fullLeaf()).isEqualTo(0.7);
    assertThat(small.halfLeaf()).isEqualTo(0.5); // 50 of 100 days
    assertThat(small.leafAtMaturity()).isEqualTo(0.2);
    assertThat(small.declineFrom()).isEqualTo(tall.declineFrom()).isEqualTo(0.8);
  }

  /** Corn whose leaves come later shades the soybean beside it less, and the more so in June. */
  @Test
  void laterLeavesOfCornGiveSoybeanLight() throws Exception {
    String later = "forecast: {canopies: {corn: {half-leaf: 55 %, full-leaf: 70 %}}}\n";
    LightResult usual = SeasonLight.of(request(PLAN));
    LightResult late = SeasonLight.of(request(PLAN + later));
    RowLight beside = usual.rows().get(12);
    RowLight besideLate = late.rows().get(12);
    assertThat(beside.row().crop()).isEqualTo("soybean");
    assertThat(besideLate.relativeIncident()).isGreaterThan(beside.relativeIncident() + 0.005);
    assertThat(besideLate.relativeAbsorbed()).isGreaterThan(beside.relativeAbsorbed());
  }

  @Test
  void aLeafCurveOutOfOrderIsAFault() {
    String text =
        PLAN
            + "forecast:\n"
            + "  canopies:\n"
            + "    corn: {half-leaf: 60 %}\n"
            + "    soybean: {decline-from: 2026-01-01}\n";
    assertThat(faults(text))
        .extracting(Fault::what)
        .containsExactly(
            "the leaf area of corn comes and goes out of order: half-leaf at 60.0 % of the season,"
                + " full-leaf at 58.0 %, decline-from at 80.0 %",
            "the leaf area of soybean comes and goes out of order: half-leaf at 45.0 % of the"
                + " season, full-leaf at 62.0 %, decline-from at 181.5 %");
    assertThat(faults(text)).extracting(Fault::where).first().asString().contains(":18:11 ");
  }

  @Test
  void allFaultsAtOnce() {
    String text =
        PLAN.replace("43.55120", "70.512345678").replace("crop: soybean", "crop: sorghum")
            + "forecast:\n"
            + "  canopies:\n"
            + "    corn: {maturity: 2020-09-01}\n"
            + "    wheat: {height: 1 m}\n";
    assertThat(faults(text))
        .extracting(Fault::what)
        .containsExactly(
            "the plan has no crop or product 'wheat'",
            "the field lies at latitude 70.5123, where the sun may not set or not rise",
            "the season of corn ends on 2020-09-01, before it starts on 2025-05-01",
            "nothing is known of the canopy of sorghum");
    assertThat(faults(text)).extracting(Fault::next).last().asString().contains("height, leaf");
    assertThat(faults(text))
        .extracting(fault -> fault.where().replaceFirst(".*plan.yaml", ""))
        .containsExactly(
            ":19:12 forecast.canopies.wheat",
            ":2:21 guidance.ab-line",
            ":18:11 forecast.canopies.corn",
            ":18:5 forecast.canopies");
  }
}
