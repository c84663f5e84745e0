package org.lynchet.prescription.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.PrintWriter;
import java.io.StringWriter;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.lynchet.formats.Fault;
import org.lynchet.prescription.fault.RejectedException;
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

  /** Whatever wrote a file wrote its names too: they must not steer the terminal. */
  @Test
  void nothingInAFaultSteersTheTerminal() {
    StringWriter told = new StringWriter();
    CommandLine commandLine = Lynchet.commandLine().setErr(new PrintWriter(told));
    String esc = "\u001B[2J\nFault: none";
    new FaultReport()
        .handleExecutionException(
            new RejectedException(List.of(new Fault(esc, esc, esc, esc))),
            commandLine,
            commandLine.parseArgs());
    assertThat(told.toString().lines()).hasSize(5);
    assertThat(told.toString()).doesNotContain("\u001B[2J").contains("\\u001B[2J Fault: none");
  }

  /** The shell hands over names of files as they are. */
  @Test
  void nothingInAWrongCommandLineSteersTheTerminal() {
    StringWriter told = new StringWriter();
    int code =
        Lynchet.commandLine()
            .setErr(new PrintWriter(told))
            .execute("plan", "a.yaml", "b\u001B[2J.yaml");
    assertThat(code).isEqualTo(2);
    assertThat(told.toString()).doesNotContain("\u001B[2J").contains("b\\u001B[2J.yaml");
  }
}
