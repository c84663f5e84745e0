package org.lynchet.prescription.plan;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.lynchet.formats.Fault;
import org.lynchet.prescription.fault.Faults;

/** Several faults are told in one run, in the order of the file, and none because of another. */
class PlanFaultOrderTest {
  @TempDir Path folder;

  @Test
  void faultsOfAllKindsAreToldTogetherInTheOrderOfTheFile() throws IOException {
    String text =
        """
        strips:
          - crop: corn
            planted-by: corn-plantr
            passes: 1
            centre: {product: tall-108, rate: 34,000 seeds/ac}
          - crop: soybean
            planted-by: bean-planter
            passes: 0
            centre: {product: tall-108, rate: {low: 120000 seeds/acre}}
            border: {rows: 13, product: bean-2.4, rate: 1 seeds/m2}
        machines:
          corn-planter: {kind: planter, rows: 12, row-spacing: 30}
          bean-planter: {kind: planter, rows: 24, row-spacing: 15 in, hoppers: central}
          bean-planter: {kind: combine}
        date: tomorrow
        field: {nmae: Sandhill East, boundary: sandhill-east.geojson}
        guidance: {ab-line: {a: [43.5, -94.1], b: [-94.1, 43.5]}}
        """;
    assertThat(PlanTexts.faults(folder, text))
        .extracting(Fault::where)
        .containsExactly(
            "plan.yaml:3:17 strips[0].planted-by",
            "plan.yaml:5:39 strips[0].centre.rate",
            "plan.yaml:5:42 strips[0].centre.000 seeds/ac",
            "plan.yaml:8:13 strips[1].passes",
            "plan.yaml:9:23 strips[1].centre.product",
            "plan.yaml:9:39 strips[1].centre.rate",
            "plan.yaml:9:45 strips[1].centre.rate.low",
            "plan.yaml:10:33 strips[1].border.product",
            "plan.yaml:12:56 machines.corn-planter.row-spacing",
            "plan.yaml:14:3 machines.bean-planter",
            "plan.yaml:15:7 date",
            "plan.yaml:16:8 field",
            "plan.yaml:16:9 field.nmae",
            "plan.yaml:17:32 guidance.ab-line.a[1]");
  }

  /** What was named wrongly elsewhere is a fault there, and not again wherever it is used. */
  @Test
  void aFaultMakesNoOthers() throws IOException {
    for (String broken :
        List.of(
            PlanTexts.FULL.replace("row-spacing: 15 in", "row-spacing: 15"),
            PlanTexts.FULL.replace("attribute: zone,", "attribute: '',"),
            PlanTexts.FULL.replaceAll("(?s)field:.*guidance:", "guidance:"),
            PlanTexts.FULL.replaceAll("(?s)machines:.*headland:", "headland:"),
            PlanTexts.FULL.replaceAll("(?s)machines:.*headland:", "machines: none\nheadland:"),
            PlanTexts.FULL.replace("crop: soybean", "crop: Soybean"))) {
      assertThat(PlanTexts.faults(folder, broken)).hasSize(1);
    }
  }

  /** The files of a field can be checked even if the rest of the plan has faults. */
  @Test
  void theFieldIsGivenIfOnlyOthersAreWrong() throws IOException {
    Path file =
        Files.writeString(folder.resolve("plan.yaml"), PlanTexts.SHORT.replace("30 in", "30"));
    Faults faults = new Faults();
    PlanReading reading = PlanFile.read(file, faults);
    assertThat(reading.plan()).isNull();
    assertThat(reading.field()).isNotNull().matches(field -> field.name().equals("Sandhill East"));
    assertThat(faults.list()).hasSize(1);
  }
}
