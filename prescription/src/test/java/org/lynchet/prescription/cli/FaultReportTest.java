package org.lynchet.prescription.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.PrintWriter;
import java.io.StringWriter;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.lynchet.prescription.handoff.HandoffException;
import picocli.CommandLine;

/** Tells what ended a command. */
class FaultReportTest {
  @Test
  void eachDifferenceIsToldOnce() {
    StringWriter told = new StringWriter();
    CommandLine commandLine = Lynchet.commandLine().setErr(new PrintWriter(told));
    int code =
        new FaultReport()
            .handleExecutionException(
                new HandoffException(List.of("corn.shp: 3 features", "corn.shp: other columns")),
                commandLine,
                commandLine.parseArgs());
    assertThat(code).isEqualTo(1);
    assertThat(told.toString().split("\\R", -1))
        .containsExactly(
            "What was written does not read back as meant:",
            "  corn.shp: 3 features",
            "  corn.shp: other columns",
            "Nothing was kept. Please report this with the plan and its files.",
            "");
  }
}
