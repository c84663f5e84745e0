package org.lynchet.prescription.intake;

import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import org.lynchet.formats.FeatureReader;
import org.lynchet.formats.FeatureTable;
import org.lynchet.formats.FormatException;
import org.lynchet.formats.crs.LonLat;
import org.lynchet.formats.crs.LonLatTable;
import org.lynchet.formats.csv.VertexCsv;
import org.lynchet.formats.isoxml.TaskData;
import org.lynchet.prescription.fault.Faults;
import org.lynchet.prescription.fault.Warning;
import org.lynchet.prescription.plan.HandoffChoices.Format;

/** Reads files by their ending, and takes them to longitude and latitude. */
final class InputTables {
  private static final String CSV = ".csv";

  private final NamedBy namedBy;
  private final Faults faults;
  private final List<Warning> warnings;

  InputTables(NamedBy namedBy, Faults faults, List<Warning> warnings) {
    this.namedBy = namedBy;
    this.faults = faults;
    this.warnings = warnings;
  }

  /** The table of a file, in longitude and latitude; empty if there were faults. */
  Optional<FeatureTable> read(String name, String key) {
    return read(name, key, VertexCsv.reader(), TaskData::boundaryReader);
  }

  /** The same for a file of zones: of task data, its treatment zones. */
  Optional<FeatureTable> readZones(String name, String key) {
    return read(name, key, VertexCsv.reader(), TaskData::tableReader);
  }

  /** The same for a file of lines. */
  Optional<FeatureTable> readLines(String name, String key) {
    return read(name, key, VertexCsv.lineReader(), TaskDataCurve::new);
  }

  private Optional<FeatureTable> read(
      String name, String key, FeatureReader csv, Function<String, FeatureReader> taskData) {
    NamedPart named = NamedPart.of(name);
    Optional<Path> file = find(named.file(), key);
    if (file.isEmpty()) {
      return Optional.empty();
    }
    try {
      Optional<FeatureReader> reader = reader(named, file.get(), csv, taskData);
      if (reader.isEmpty()) {
        faults.add(
            "a file of this kind cannot be read: " + name,
            namedBy.place(key),
            endings(),
            "save it as one of these");
        return Optional.empty();
      }
      LonLatTable lonLat = LonLat.of(reader.get().read(file.get()), name);
      for (String note : lonLat.notes()) {
        warnings.add(
            new Warning(
                Warning.Code.COORDINATE_SYSTEM, name + ": " + note + " Check where the map lies."));
      }
      return Optional.of(lonLat.table());
    } catch (FormatException e) {
      faults.addAll(e);
      return Optional.empty();
    }
  }

  /** The reader of a file by its ending; of a .zip, by what is in it. */
  private static Optional<FeatureReader> reader(
      NamedPart named, Path file, FeatureReader csv, Function<String, FeatureReader> taskData)
      throws FormatException {
    String ending = named.ending();
    if (ending.equals(CSV)) {
      return Optional.of(csv);
    }
    if (isTaskData(ending, file)) {
      return Optional.of(taskData.apply(named.part()));
    }
    for (Format format : Format.values()) {
      if (format != Format.ISOXML && format.file().readEndings().contains(ending)) {
        return Optional.of(format.file().reader(named.part()));
      }
    }
    return Optional.empty();
  }

  private static boolean isTaskData(String ending, Path file) throws FormatException {
    return ending.equals(".zip")
        ? TaskData.isIn(file)
        : TaskData.FORMAT.readEndings().contains(ending);
  }

  /** How the names of files end that can be read, as a list in words. */
  static String endings() {
    Set<String> plain = new LinkedHashSet<>();
    for (Format format : Format.values()) {
      plain.addAll(format.file().readEndings());
    }
    TaskData.FORMAT.readEndings().forEach(plain::remove);
    plain.add(CSV);
    return String.join(", ", plain)
        + ", .zip (of a shapefile or of task data) or .xml (of task data)";
  }

  /** The place of a file, if there is such a file; else a fault is added. */
  Optional<Path> find(String name, String key) {
    try {
      Path folder = namedBy.folder();
      Path file = folder == null ? Path.of(name) : folder.resolve(name);
      if (Files.isRegularFile(file)) {
        return Optional.of(file);
      }
      faults.add(
          (Files.exists(file) ? "not a file: " : "no such file: ") + name,
          namedBy.place(key),
          namedBy.allowed(),
          "check the name and where the file lies; looked for " + file);
    } catch (InvalidPathException e) {
      faults.add(
          "not a file name: " + name, namedBy.place(key), namedBy.allowed(), "check the name");
    }
    return Optional.empty();
  }
}
