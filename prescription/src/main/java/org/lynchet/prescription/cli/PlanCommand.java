package org.lynchet.prescription.cli;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import org.lynchet.prescription.fault.RejectedException;
import org.lynchet.prescription.handoff.HandoffException;
import org.lynchet.prescription.plan.HandoffChoices.Format;
import org.lynchet.prescription.plan.Plan;
import org.lynchet.prescription.summary.Summary;
import org.lynchet.prescription.summary.SummaryJson;
import org.lynchet.prescription.summary.SummaryTable;
import org.lynchet.prescription.summary.WrittenFile;
import org.lynchet.prescription.workflow.Workflow;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** The command {@code plan}. */
@Command(
    name = "plan",
    mixinStandardHelpOptions = true,
    versionProvider = Version.class,
    sortOptions = false,
    usageHelpWidth = 100,
    header = "Lays a plan out on its field and writes prescriptions, guidance lines and a map.",
    description = {
      "%nReads the plan and the files that it names, lays the strips out, writes everything into a"
          + " folder, reads it back and compares it before it says done. Lengths in a plan are in in,"
          + " ft, m, cm or mm; areas in ac, ha or m2; rates in seeds/ac, seeds/ha or seeds/m2.%n"
    },
    footerHeading = "%nExamples:%n",
    footer = {
      "  lynchet plan sandhill-east.yaml                    into the folder sandhill-east beside it",
      "  lynchet plan sandhill-east.yaml --dry-run          the totals only",
      "  lynchet plan sandhill-east.yaml --out usb --force  replace what an earlier run wrote there",
      "  lynchet plan sandhill-east.yaml --format isoxml,kml     for a terminal and a phone",
      "  lynchet plan sandhill-east.yaml --papers           with sheets for the cab and the seed, as PDF",
      "  lynchet plan sandhill-east.yaml --json --dry-run   the totals for another program",
    },
    exitCodeListHeading = "%nExit codes:%n",
    exitCodeList = {
      ExitCodes.DONE,
      ExitCodes.OUR_FAULT,
      ExitCodes.USAGE,
      ExitCodes.FAULTS,
    })
final class PlanCommand implements Callable<Integer> {
  @Spec private CommandSpec spec;

  @Parameters(paramLabel = "PLAN", description = "The plan file (YAML).")
  private Path plan;

  @Option(
      names = {"-o", "--out"},
      paramLabel = "DIR",
      description = "The output folder. Default: a folder named after the plan, beside it.")
  private @Nullable Path out;

  @Option(
      names = "--force",
      description = "Replace the output folder if an earlier run wrote it. Default: refuse.")
  private boolean force;

  @Option(
      names = "--format",
      paramLabel = "FORMAT",
      split = ",",
      description = "Write these in place of the plan's handoff.formats: ${COMPLETION-CANDIDATES}.")
  private List<Format> formats = List.of();

  @Option(names = "--dry-run", description = "Check and lay out, write nothing.")
  private boolean dryRun;

  @Option(names = "--png", description = "Draw the map as map.png too.")
  private boolean png;

  @Option(
      names = "--papers",
      description = "Write cab-sheet.pdf and seed-sheet.pdf too. Default: as handoff.papers says.")
  private boolean papers;

  @Option(names = "--json", description = "Print summary.json in place of the table.")
  private boolean json;

  @Option(
      names = {"-q", "--quiet"},
      description = "Print nothing but faults.")
  private boolean quiet;

  @SuppressWarnings("NullAway.Init") // picocli sets the fields
  PlanCommand() {}

  @Override
  public Integer call() throws RejectedException, HandoffException {
    Path folder = out == null ? besidePlan(plan) : out;
    if (dryRun) {
      print(Workflow.prepare(plan, this::changed).summary(), List.of(), null);
      return 0;
    }
    CutOff.mend(folder, spec);
    Workflow.Prepared prepared = Workflow.prepareFor(folder, force, plan, this::changed);
    List<WrittenFile> files = Workflow.write(prepared, folder, png);
    print(prepared.summary(), files, folder);
    return 0;
  }

  private Plan changed(Plan read) {
    Plan inFormats =
        formats.isEmpty() ? read : read.withFormats(formats.stream().distinct().toList());
    return papers ? inFormats.withPapers() : inFormats;
  }

  private void print(Summary summary, List<WrittenFile> files, @Nullable Path folder) {
    if (quiet) {
      return;
    }
    PrintWriter results = spec.commandLine().getOut();
    if (json) {
      results.print(SummaryJson.of(summary, files));
    } else {
      results.print(SummaryTable.of(summary));
      results.print(
          folder == null
              ? "\nNothing written (dry run).\n"
              : "\nWritten to " + folder + " and read back: " + (files.size() + 1) + " files.\n");
    }
    results.flush();
  }

  private static Path besidePlan(Path plan) {
    Path name = plan.getFileName();
    boolean bare = name == null || name.toString().lastIndexOf('.') <= 0;
    return besidePlan(plan, bare ? "-out" : "");
  }

  /** A place beside a plan, its name that of the plan without its ending, and something more. */
  static Path besidePlan(Path plan, String more) {
    Path name = plan.getFileName();
    String file = name == null ? "plan" : name.toString();
    int dot = file.lastIndexOf('.');
    return plan.resolveSibling((dot > 0 ? file.substring(0, dot) : file) + more);
  }
}
