package org.lynchet.prescription.cli;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import org.lynchet.prescription.fault.PrintableText;
import org.lynchet.prescription.fault.RejectedException;
import org.lynchet.prescription.handoff.HandoffException;
import org.lynchet.prescription.summary.WrittenFile;
import org.lynchet.prescription.workflow.ApplicatorHandoff;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** The command {@code handoff}. */
@Command(
    name = "handoff",
    mixinStandardHelpOptions = true,
    versionProvider = Version.class,
    sortOptions = false,
    usageHelpWidth = 100,
    header = "Writes what others need of a plan: a custom applicator's folder.",
    description = {
      "%nFor the applicator: spray strips and lines with open sections as shapefile and GeoJSON, areas,"
          + " a map on one page, a record to fill in, and what holds for spraying between crops. No"
          + " product and no rate: they are the applicator's. Setbacks of the plan are kept.%n"
    },
    footerHeading = "%nExamples:%n",
    footer = {
      "  lynchet handoff sandhill-east.yaml --to applicator              a .zip beside the plan",
      "  lynchet handoff sandhill-east.yaml --to applicator --out spray  a folder",
    },
    exitCodeListHeading = "%nExit codes:%n",
    exitCodeList = {
      ExitCodes.DONE,
      ExitCodes.OUR_FAULT,
      ExitCodes.USAGE,
      ExitCodes.FAULTS,
    })
final class HandoffCommand implements Callable<Integer> {
  @Spec private CommandSpec spec;

  /** Who may get a part of a plan. */
  enum Receiver {
    APPLICATOR;

    /** The word in small letters. */
    @Override
    public String toString() {
      return name().toLowerCase(Locale.ROOT);
    }
  }

  @Parameters(paramLabel = "PLAN", description = "The plan file (YAML).")
  private Path plan;

  @Option(names = "--to", required = true, paramLabel = "WHO", description = "applicator.")
  private Receiver receiver;

  @Option(
      names = {"-o", "--out"},
      paramLabel = "OUT",
      description =
          "A file that ends with .zip, or a folder. Default: PLAN-applicator.zip beside the plan.")
  private @Nullable Path out;

  @Option(
      names = "--force",
      description = "Replace the file, or the folder if an earlier run wrote it. Default: refuse.")
  private boolean force;

  @Option(
      names = {"-q", "--quiet"},
      description = "Print nothing but faults.")
  private boolean quiet;

  @SuppressWarnings("NullAway.Init") // picocli sets the fields
  HandoffCommand() {}

  @Override
  public Integer call() throws RejectedException, HandoffException {
    Path target = out == null ? besidePlan() : out;
    CutOff.mend(target, spec);
    ApplicatorHandoff handoff = ApplicatorHandoff.prepare(plan, target, force);
    List<WrittenFile> files = handoff.write(target);
    if (!quiet) {
      print(handoff, files, target);
    }
    return 0;
  }

  private void print(ApplicatorHandoff handoff, List<WrittenFile> files, Path target) {
    PrintWriter errors = spec.commandLine().getErr();
    handoff
        .warnings()
        .forEach(
            w -> errors.println("Warning " + w.code() + ": " + PrintableText.oneLine(w.text())));
    errors.flush();
    PrintWriter results = spec.commandLine().getOut();
    for (String crop : handoff.layout().spraying().crops()) {
      results.println(
          String.format(
              Locale.ROOT,
              "%s: %.2f %s to spray, %.2f %s set aside",
              crop,
              handoff.spray().sprayedSquareMetres(crop) / handoff.unit().squareMetres(),
              handoff.unit().symbol(),
              handoff.spray().setAsideSquareMetres(crop) / handoff.unit().squareMetres(),
              handoff.unit().symbol()));
    }
    results.println("Written to " + target + " and read back: " + files.size() + " files.");
    results.flush();
  }

  private Path besidePlan() {
    return PlanCommand.besidePlan(plan, "-" + receiver + ".zip");
  }
}
