package org.lynchet.prescription.cli;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.concurrent.Callable;
import org.lynchet.prescription.fault.RejectedException;
import org.lynchet.prescription.fit.Fit;
import org.lynchet.prescription.fit.FitJson;
import org.lynchet.prescription.fit.FitRequest;
import org.lynchet.prescription.fit.FitTable;
import org.lynchet.prescription.fit.PlanFit;
import org.lynchet.prescription.fit.StripFit;
import org.lynchet.prescription.plan.PlanFile;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** The command {@code fit}. */
@Command(
    name = "fit",
    mixinStandardHelpOptions = true,
    versionProvider = Version.class,
    sortOptions = false,
    usageHelpWidth = 100,
    header = "Tells which strip widths suit the machines of a plan.",
    description = {
      "%nTries whole numbers of planter passes up to fit.max-strip-width (default 120 ft) for each"
          + " crop of the pattern and works out what every other machine does on them. A candidate"
          + " fits if no machine is off by more than fit.tolerance (default 2 in) a pass.%n"
    },
    footerHeading = "%nExamples:%n",
    footer = {
      "  lynchet fit sandhill-east.yaml          ranked, best first, with the reasons",
      "  lynchet fit sandhill-east.yaml --json   all of them, for another program",
    },
    exitCodeListHeading = "%nExit codes:%n",
    exitCodeList = {
      "0:done, also if nothing fits",
      ExitCodes.OUR_FAULT,
      ExitCodes.USAGE,
      "3:faults in the plan",
    })
final class FitCommand implements Callable<Integer> {
  @Spec private CommandSpec spec;

  @Parameters(paramLabel = "PLAN", description = "The plan file (YAML).")
  private Path plan;

  @Option(names = "--json", description = "Print JSON in place of the table.")
  private boolean json;

  @SuppressWarnings("NullAway.Init") // picocli sets the fields
  FitCommand() {}

  @Override
  public Integer call() throws RejectedException {
    FitRequest request = PlanFit.request(PlanFile.read(plan));
    Fit fit = StripFit.search(request);
    PrintWriter results = spec.commandLine().getOut();
    results.print(json ? FitJson.of(fit) : FitTable.of(request, fit));
    results.flush();
    return 0;
  }
}
