package org.lynchet.prescription.cli;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import org.lynchet.prescription.fault.RejectedException;
import org.lynchet.prescription.light.LightJson;
import org.lynchet.prescription.plan.PlanFile;
import org.lynchet.prescription.response.PlanForecast;
import org.lynchet.prescription.workflow.LightFiles;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** The command {@code light}. */
@Command(
    name = "light",
    mixinStandardHelpOptions = true,
    versionProvider = Version.class,
    sortOptions = false,
    usageHelpWidth = 100,
    header = "Forecasts the light and the yield of every row of a plan's pattern over a season.",
    description = {
      "%nFollows the sun and the sky's light through the canopies of one period of the pattern, row by"
          + " row, and tells what each row receives and absorbs relative to the same product in a wide"
          + " block, what yield may come of it, and what a short-stature product on the border would"
          + " change. The keys forecast.* of the plan replace the defaults.%n"
    },
    footerHeading = "%nExamples:%n",
    footer = {
      "  lynchet light sandhill-east.yaml                     the tables",
      "  lynchet light sandhill-east.yaml --json              the light of rows for another program",
      "  lynchet light sandhill-east.yaml --out light --png   light.csv and charts into a folder",
      "  lynchet light sandhill-east.yaml --out light --dates 2027-06-21,2027-08-20",
    },
    exitCodeListHeading = "%nExit codes:%n",
    exitCodeList = {
      ExitCodes.DONE,
      ExitCodes.OUR_FAULT,
      ExitCodes.USAGE,
      ExitCodes.FAULTS,
    })
final class LightCommand implements Callable<Integer> {
  @Spec private CommandSpec spec;

  @Parameters(paramLabel = "PLAN", description = "The plan file (YAML).")
  private Path plan;

  @Option(
      names = {"-o", "--out"},
      paramLabel = "DIR",
      description =
          "Write light.csv, light-rows.svg and light-shade.svg there. Default: write nothing.")
  private @Nullable Path out;

  @Option(
      names = "--force",
      description = "Replace these files if they are there. Default: refuse.")
  private boolean force;

  @Option(names = "--png", description = "Draw the charts as .png too.")
  private boolean png;

  @Option(
      names = "--dates",
      split = ",",
      converter = DateOption.class,
      paramLabel = "DATE",
      description =
          "Up to three days of the shade picture, year-month-day. Default: at 40, 60 and 80 %% of the"
              + " season.")
  private List<LocalDate> dates = List.of();

  @Option(names = "--json", description = "Print the light of rows as JSON in place of the tables.")
  private boolean json;

  @SuppressWarnings("NullAway.Init") // picocli sets the fields
  LightCommand() {}

  @Override
  public Integer call() throws RejectedException {
    if (out == null && (force || png || !dates.isEmpty())) {
      throw new ParameterException(
          spec.commandLine(), "--force, --png and --dates go with --out: name a folder.");
    }
    PlanForecast forecast = PlanForecast.of(PlanFile.read(plan));
    Path folder = out;
    if (folder != null) {
      CutOff.mend(folder.resolve(LightFiles.FIRST), spec);
    }
    LightFiles files =
        folder == null ? null : LightFiles.prepared(forecast, folder, force, png, dates);
    PrintWriter results = spec.commandLine().getOut();
    results.print(json ? LightJson.of(forecast.light()) : forecast.table());
    if (files != null) {
      List<String> written = files.write();
      if (!json) {
        results.println("Written to " + folder + ": " + String.join(", ", written));
      }
    }
    results.flush();
    return 0;
  }
}
