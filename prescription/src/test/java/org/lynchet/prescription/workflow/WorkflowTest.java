package org.lynchet.prescription.workflow;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.lynchet.prescription.fault.RejectedException;
import org.lynchet.prescription.plan.HandoffChoices.Format;

/** Takes a plan of an invented field to prescriptions. */
class WorkflowTest {
  @TempDir Path folder;

  /** What task data cannot hold is told before anything is written, also for a dry run. */
  @Test
  void formatsThatCannotHoldThePlanAreToldWhenItIsPrepared() throws Exception {
    Files.writeString(
        folder.resolve("field.csv"),
        "lon,lat\n-94.1,43.499\n-94.096,43.499\n-94.096,43.501\n-94.1,43.501\n");
    String longName = "x".repeat(32); // ISO 11783-10: names of at most 32 characters
    Path plan =
        Files.writeString(
            folder.resolve("plan.yaml"),
            """
            field: {name: East, boundary: field.csv}
            guidance: {ab-line: {through: [-94.098, 43.5], heading: 0}}
            machines: {p: {kind: planter, rows: 12, row-spacing: 30 in}}
            strips:
              - {crop: corn, planted-by: p, passes: 1, centre: {product: %s1, rate: 34000 seeds/ac}}
              - {crop: corn, planted-by: p, passes: 1, centre: {product: %s2, rate: 34000 seeds/ac}}
            """
                .formatted(longName, longName));
    assertThat(Workflow.prepare(plan, read -> read).summary()).isNotNull();
    RejectedException rejected =
        catchThrowableOfType(
            RejectedException.class,
            () -> Workflow.prepare(plan, read -> read.withFormats(List.of(Format.ISOXML))));
    assertThat(rejected).isNotNull();
    assertThat(rejected.faults()).anySatisfy(f -> assertThat(f.what()).contains(longName));
  }
}
