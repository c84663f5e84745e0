package org.lynchet.prescription.convert;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.lynchet.formats.FeatureTable;
import org.lynchet.formats.TableLimits;
import org.lynchet.prescription.draft.Draft;
import org.lynchet.prescription.draft.Refusal;
import org.lynchet.prescription.fault.Faults;
import org.lynchet.prescription.fault.RejectedException;
import org.lynchet.prescription.fault.Warning;
import org.lynchet.prescription.handoff.HandoffException;
import org.lynchet.prescription.intake.InputTable;
import org.lynchet.prescription.plan.HandoffChoices.Format;

/** Takes a file of features from one format to another. */
public final class Conversion {
  private Conversion() {}

  /**
   * Reads a file, writes it in another format beside its place, reads that back, compares, and
   * moves it into place.
   *
   * <p>As task data, a table of areas with rates becomes a field with treatment zones; of any other
   * table, every feature with an area becomes a field.
   *
   * @param in the file, with the part of it that is meant as in a plan
   * @param out the new file; its name ends as files of its format do, .zip for task data
   * @param force whether files that are there may be replaced
   * @param warnings takes what deserves a second look
   * @return how many features were taken over
   * @throws RejectedException with every fault of the file, or if the place is taken
   * @throws HandoffException if what was written does not read back as meant; nothing is left
   */
  public static int convert(
      String in, Format format, Path out, boolean force, List<Warning> warnings)
      throws RejectedException, HandoffException {
    Faults faults = new Faults();
    checkName(out, format, faults);
    checkPlace(out, force, faults);
    Optional<FeatureTable> read = Optional.empty();
    try {
      read = Optional.of(InputTable.read(in, warnings));
    } catch (RejectedException rejected) {
      faults.addAll(rejected);
    }
    faults.throwIfAny();
    Converted converted = fitted(read.orElseThrow(), format, in, warnings, faults);
    faults.throwIfAny();
    write(converted, out, force);
    return converted.count();
  }

  /** Names of files that belong together differ only in their endings, in small letters. */
  private static void checkName(Path out, Format format, Faults faults) {
    String ending = format.file().ending();
    String name = String.valueOf(out.getFileName());
    boolean ends = name.toLowerCase(Locale.ROOT).endsWith(ending);
    if (!ends || (format.file().endings().size() > 1 && !name.endsWith(ending))) {
      faults.add(
          "the name does not end as files of this format do",
          out.toString(),
          "a name that ends in " + ending + (ends ? ", in small letters" : ""),
          "name it so");
    }
  }

  private static void checkPlace(Path out, boolean force, Faults faults) {
    Path folder = out.toAbsolutePath().normalize().getParent();
    if (folder != null && Files.isDirectory(folder)) {
      Draft.checkPlace(out, force, faults);
    } else {
      faults.add(
          "cannot write: there is no such folder",
          String.valueOf(folder),
          "a folder that is there",
          "make it, or choose another place");
    }
  }

  /** What the table is in the format; faults are added for what it cannot hold. */
  private static Converted fitted(
      FeatureTable table, Format format, String in, List<Warning> warnings, Faults faults)
      throws RejectedException {
    if (format == Format.ISOXML) {
      return ConvertedTaskData.of(table, in, warnings, faults);
    }
    TableLimits limits = format.file().limits();
    FeatureTable fitted =
        limits.fixedWidth() == null
            ? FittedTable.ofAnyWidth(table)
            : FittedTable.ofFixedWidth(table, limits.fixedWidth(), format, warnings);
    FormatLimits.check(limits, fitted, in, faults);
    return new ConvertedTable(fitted, format.file());
  }

  private static void write(Converted converted, Path out, boolean force)
      throws RejectedException, HandoffException {
    try (Draft draft = Draft.beside(out)) {
      Path file = draft.folder().resolve(out.getFileName());
      converted.write(file);
      List<String> differences = converted.differences(file);
      if (!differences.isEmpty()) {
        throw new HandoffException(differences.stream().map(d -> out + ": " + d).toList());
      }
      Faults faults = new Faults();
      for (Path written : draft.files()) {
        Draft.checkPlace(out.resolveSibling(written.getFileName()), force, faults);
      }
      faults.throwIfAny();
      draft.moveFilesIntoPlace();
    } catch (IOException e) {
      throw new RejectedException(List.of(Refusal.of(out, e)));
    }
  }
}
