package org.lynchet.prescription.cli;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import org.lynchet.prescription.budget.BudgetJson;
import org.lynchet.prescription.budget.BudgetTable;
import org.lynchet.prescription.fault.RejectedException;
import org.lynchet.prescription.workflow.BudgetFiles;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** The command {@code budget}. */
@Command(
    name = "budget",
    mixinStandardHelpOptions = true,
    versionProvider = Version.class,
    sortOptions = false,
    usageHelpWidth = 100,
    header = "Weighs a plan's strips against separate blocks, in money.",
    description = {
      "%nLays the plan out, takes the change of each crop's yield from its light (or from the plan,"
          + " where it has budget.crops.CROP.yield-change), and adds up what strips bring and cost"
          + " more or less than blocks with the same area of each crop: a partial budget with its"
          + " range, where it breaks even, which number matters most, seed to order, and the seeding"
          + " rates that pay best by the plan's own trials. Prices, yields and costs are keys"
          + " budget.* of the plan.%n"
    },
    footerHeading = "%nExamples:%n",
    footer = {
      "  lynchet budget sandhill-east.yaml                    the tables",
      "  lynchet budget sandhill-east.yaml --json             the same for another program",
      "  lynchet budget sandhill-east.yaml --out money --png  budget.csv and a chart into a folder",
    },
    exitCodeListHeading = "%nExit codes:%n",
    exitCodeList = {
      ExitCodes.DONE,
      ExitCodes.OUR_FAULT,
      ExitCodes.USAGE,
      ExitCodes.FAULTS,
    })
final class BudgetCommand implements Callable<Integer> {
  @Spec private CommandSpec spec;

  @Parameters(paramLabel = "PLAN", description = "The plan file (YAML).")
  private Path plan;

  @Option(
      names = {"-o", "--out"},
      paramLabel = "DIR",
      description = "Write budget.csv and budget-swings.svg there. Default: write nothing.")
  private @Nullable Path out;

  @Option(
      names = "--force",
      description = "Replace these files if they are there. Default: refuse.")
  private boolean force;

  @Option(names = "--png", description = "Draw the chart as .png too.")
  private boolean png;

  @Option(names = "--json", description = "Print the budget as JSON in place of the tables.")
  private boolean json;

  @SuppressWarnings("NullAway.Init") // picocli sets the fields
  BudgetCommand() {}

  @Override
  public Integer call() throws RejectedException {
    if (out == null && (force || png)) {
      throw new ParameterException(
          spec.commandLine(), "--force and --png go with --out: name a folder.");
    }
    if (out != null) {
      CutOff.mend(out.resolve(BudgetFiles.FIRST), spec);
    }
    BudgetFiles files = BudgetFiles.prepared(plan, Optional.ofNullable(out), force, png);
    PrintWriter results = spec.commandLine().getOut();
    results.print(json ? BudgetJson.of(files.budget()) : BudgetTable.of(files.budget()));
    List<String> written = files.write();
    if (!json && !written.isEmpty()) {
      results.println("Written to " + out + ": " + String.join(", ", written));
    }
    results.flush();
    return 0;
  }
}
