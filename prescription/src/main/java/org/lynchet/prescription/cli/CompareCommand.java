package org.lynchet.prescription.cli;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import org.lynchet.prescription.compare.Comparison;
import org.lynchet.prescription.compare.ComparisonJson;
import org.lynchet.prescription.compare.ComparisonTable;
import org.lynchet.prescription.compare.PlanComparison;
import org.lynchet.prescription.fault.RejectedException;
import org.lynchet.prescription.intake.FieldIntake;
import org.lynchet.prescription.plan.Plan;
import org.lynchet.prescription.plan.PlanFile;
import org.lynchet.prescription.workflow.ReportFile;
import org.lynchet.prescription.zone.FieldData;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** The command {@code compare}. */
@Command(
    name = "compare",
    mixinStandardHelpOptions = true,
    versionProvider = Version.class,
    sortOptions = false,
    usageHelpWidth = 100,
    header = "Compares strip widths, row directions and border rows with separate blocks.",
    description = {
      "%nTries every width that fits the machines on the plan's heading, east-west and north-south,"
          + " with the plan's border rows, fewer and none. Forecasts light and yield of each, lays"
          + " the field out, and ranks them by the net against separate blocks or, where the plan"
          + " has no budget, by the land equivalent ratio. The keys compare.* of the plan add"
          + " headings and border rows.%n"
    },
    footerHeading = "%nExamples:%n",
    footer = {
      "  lynchet compare sandhill-east.yaml          the answer and the best candidates",
      "  lynchet compare sandhill-east.yaml --json   all of them, for another program",
      "  lynchet compare sandhill-east.yaml --report decision.html",
    },
    exitCodeListHeading = "%nExit codes:%n",
    exitCodeList = {
      ExitCodes.DONE,
      ExitCodes.OUR_FAULT,
      ExitCodes.USAGE,
      ExitCodes.FAULTS,
    })
final class CompareCommand implements Callable<Integer> {
  @Spec private CommandSpec spec;

  @Parameters(paramLabel = "PLAN", description = "The plan file (YAML).")
  private Path plan;

  @Option(names = "--json", description = "Print JSON in place of the table.")
  private boolean json;

  @Option(
      names = "--report",
      paramLabel = "FILE",
      description = "Write a page of HTML to read and print there. Default: write nothing.")
  private @Nullable Path report;

  @Option(names = "--force", description = "Replace the page if it is there. Default: refuse.")
  private boolean force;

  @SuppressWarnings("NullAway.Init") // picocli sets the fields
  CompareCommand() {}

  @Override
  public Integer call() throws RejectedException {
    Path file = report;
    if (file == null && force) {
      throw new ParameterException(spec.commandLine(), "--force goes with --report: name a file.");
    }
    Plan read = PlanFile.read(plan);
    ReportFile page = file == null ? null : ReportFile.prepared(file, force);
    FieldData field = FieldIntake.read(read);
    ProgressBar bar = ProgressBar.onTerminal(spec.commandLine().getErr());
    Comparison comparison;
    try {
      comparison = PlanComparison.of(read, field, bar::show);
    } finally {
      bar.clear();
    }
    if (page != null) {
      page.write(comparison, field);
    }
    PrintWriter results = spec.commandLine().getOut();
    results.print(json ? ComparisonJson.of(comparison) : ComparisonTable.of(comparison));
    if (page != null && !json) {
      results.println("Written to " + file);
    }
    results.flush();
    return 0;
  }
}
