package org.lynchet.prescription.cli;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.concurrent.Callable;
import org.lynchet.prescription.fault.RejectedException;
import org.lynchet.prescription.handoff.FolderCheck;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** The command {@code check}. */
@Command(
    name = "check",
    mixinStandardHelpOptions = true,
    versionProvider = Version.class,
    sortOptions = false,
    usageHelpWidth = 100,
    header = "Checks a folder that plan has written, after it has travelled.",
    description = {
      "%nEvery file must be there, byte for byte; the zones must cover the field without gap or"
          + " overlap; the planting files must say what plan.geojson says.%n"
    },
    footerHeading = "%nExample:%n",
    footer = "  lynchet check /media/usb/sandhill-east",
    exitCodeListHeading = "%nExit codes:%n",
    exitCodeList = {
      "0:all is as it was written",
      ExitCodes.OUR_FAULT,
      ExitCodes.USAGE,
      "3:something is damaged, missing or strange",
    })
final class CheckCommand implements Callable<Integer> {
  @Spec private CommandSpec spec;

  @Parameters(paramLabel = "DIR", description = "The output folder.")
  private Path folder;

  @Option(
      names = {"-q", "--quiet"},
      description = "Print nothing but faults.")
  private boolean quiet;

  @SuppressWarnings("NullAway.Init") // picocli sets the fields
  CheckCommand() {}

  @Override
  public Integer call() throws RejectedException {
    CutOff.mend(folder, spec);
    int files = FolderCheck.check(folder);
    if (!quiet) {
      PrintWriter results = spec.commandLine().getOut();
      results.println(folder + ": " + files + " files are as they were written.");
      results.flush();
    }
    return 0;
  }
}
