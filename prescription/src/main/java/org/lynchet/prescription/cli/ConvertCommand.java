package org.lynchet.prescription.cli;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import org.lynchet.prescription.convert.Conversion;
import org.lynchet.prescription.fault.PrintableText;
import org.lynchet.prescription.fault.RejectedException;
import org.lynchet.prescription.fault.Warning;
import org.lynchet.prescription.handoff.HandoffException;
import org.lynchet.prescription.plan.HandoffChoices.Format;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** The command {@code convert}. */
@Command(
    name = "convert",
    resourceBundle = "org.lynchet.prescription.cli.FormatWords",
    mixinStandardHelpOptions = true,
    versionProvider = Version.class,
    sortOptions = false,
    usageHelpWidth = 100,
    header = "Takes boundaries and zones from one file format to another.",
    description = {
      "%nThe new file is read back and compared before it is put in place. Coordinates come out in"
          + " WGS 84 longitude and latitude. As isoxml, areas with columns rate and rate_unit (and crop"
          + " and product) become the treatment zones of one field of ISO 11783-10 task data, a task"
          + " for each crop; areas without become fields. Of task data, #PFD1 is a field's boundary,"
          + " #TSK1 the zones of a task, and without either come the zones of all tasks, or the"
          + " boundary if it has none. What a format has no place for is told.%n"
    },
    footerHeading = "%nExamples:%n",
    footer = {
      "  lynchet convert taskdata.zip#PFD1 --to geojson field.geojson",
      "  lynchet convert farm.kmz --to shapefile farm.shp",
      "  lynchet convert field.gpkg#boundary --to isoxml field.zip",
      "  lynchet convert planting/corn.shp --to isoxml corn.zip",
    },
    exitCodeListHeading = "%nExit codes:%n",
    exitCodeList = {
      ExitCodes.DONE,
      ExitCodes.OUR_FAULT,
      ExitCodes.USAGE,
      ExitCodes.FAULTS,
    })
final class ConvertCommand implements Callable<Integer> {
  @Spec private CommandSpec spec;

  @Parameters(
      index = "0",
      paramLabel = "IN",
      description = "The file: ${bundle:formats.read}; a part of it behind #.")
  private String in;

  @Parameters(
      index = "1",
      paramLabel = "OUT",
      description = "The new file: ${bundle:formats.written}, as the format is.")
  private Path out;

  @Option(
      names = "--to",
      required = true,
      paramLabel = "FORMAT",
      description = "One of ${COMPLETION-CANDIDATES}.")
  private Format format;

  @Option(names = "--force", description = "Replace the file if it is there. Default: refuse.")
  private boolean force;

  @Option(
      names = {"-q", "--quiet"},
      description = "Print nothing but faults.")
  private boolean quiet;

  @SuppressWarnings("NullAway.Init") // picocli sets the fields
  ConvertCommand() {}

  @Override
  public Integer call() throws RejectedException, HandoffException {
    CutOff.mend(out, spec);
    List<Warning> warnings = new ArrayList<>();
    int taken = Conversion.convert(in, format, out, force, warnings);
    if (!quiet) {
      warnings.forEach(
          w -> spec.commandLine().getErr().println("Warning: " + PrintableText.oneLine(w.text())));
      spec.commandLine().getErr().flush();
      PrintWriter results = spec.commandLine().getOut();
      results.println("Written to " + out + " and read back: " + taken + " features.");
      results.flush();
    }
    return 0;
  }
}
