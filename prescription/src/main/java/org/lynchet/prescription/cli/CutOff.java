package org.lynchet.prescription.cli;

import java.io.PrintWriter;
import java.nio.file.Path;
import org.lynchet.prescription.draft.CutOffRun;
import org.lynchet.prescription.fault.PrintableText;
import org.lynchet.prescription.fault.RejectedException;
import picocli.CommandLine.Model.CommandSpec;

/** Before a command looks at its target, mends what a run that was cut off has left there. */
final class CutOff {
  private CutOff() {}

  /** Mends it and tells on standard error what was put back. */
  static void mend(Path target, CommandSpec spec) throws RejectedException {
    PrintWriter errors = spec.commandLine().getErr();
    CutOffRun.mend(target).forEach(told -> errors.println(PrintableText.oneLine(told)));
    errors.flush();
  }
}
