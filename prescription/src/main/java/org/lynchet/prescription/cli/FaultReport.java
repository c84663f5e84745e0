package org.lynchet.prescription.cli;

import java.io.PrintWriter;
import java.util.List;
import org.lynchet.formats.Fault;
import org.lynchet.prescription.fault.PrintableText;
import org.lynchet.prescription.fault.RejectedException;
import org.lynchet.prescription.handoff.HandoffException;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import picocli.CommandLine;
import picocli.CommandLine.Help.Ansi;
import picocli.CommandLine.IExecutionExceptionHandler;
import picocli.CommandLine.ParseResult;

/** Tells on standard error what ended a command, and chooses its exit code. */
final class FaultReport implements IExecutionExceptionHandler {
  private static final Logger LOG = LoggerFactory.getLogger(FaultReport.class);
  private static final int OUR_FAULT = 1;
  private static final int FAULTS_IN_DATA = 3;

  @Override
  public int handleExecutionException(
      Exception ended, CommandLine commandLine, ParseResult parsed) {
    PrintWriter err = commandLine.getErr();
    int code = OUR_FAULT;
    if (ended instanceof RejectedException rejected) {
      report(rejected.faults(), err, commandLine.getColorScheme().ansi());
      code = FAULTS_IN_DATA;
    } else if (ended instanceof HandoffException handoff) {
      err.println("What was written does not read back as meant:");
      handoff
          .differences()
          .forEach(difference -> err.println("  " + PrintableText.oneLine(difference)));
      err.println("Nothing was kept. Please report this with the plan and its files.");
    } else {
      LOG.error(
          "This is a fault of the program. Please report it with the plan and its files.", ended);
    }
    err.flush();
    return code;
  }

  private static void report(List<Fault> faults, PrintWriter err, Ansi ansi) {
    for (Fault fault : faults) {
      err.println(ansi.string("@|bold,red Fault:|@ ") + PrintableText.oneLine(fault.what()));
      err.println("  where:   " + PrintableText.oneLine(fault.where()));
      err.println("  allowed: " + PrintableText.oneLine(fault.allowed()));
      err.println("  next:    " + PrintableText.oneLine(fault.next()));
    }
    err.println(
        faults.size() == 1
            ? "1 fault; nothing was written."
            : faults.size() + " faults; nothing was written.");
  }
}
