package org.lynchet.prescription.handoff;

import java.io.IOException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Collection;
import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import org.lynchet.formats.FeatureTable;
import org.lynchet.formats.FeatureWriter;
import org.lynchet.prescription.draft.Draft;
import org.lynchet.prescription.plan.HandoffChoices.Format;

/**
 * One table in one format at its place in the output folder.
 *
 * @param path the path below the folder, with slashes
 * @param format the format
 * @param table what it must say
 */
record HandoffFile(String path, Format format, FeatureTable table) {

  /**
   * Those of some formats that hold one table in one file: those of planting and spraying files.
   */
  static List<Format> ofOneTable(Collection<Format> formats) {
    return formats.stream().filter(format -> !format.file().hasParts()).toList();
  }

  /** Writes the table, and the folders above it. */
  void write(Path folder, @Nullable LocalDate date) throws IOException {
    Path file = folder.resolve(path);
    Draft.makeBelow(folder, file.resolveSibling(""));
    format
        .file()
        .writer(Objects.requireNonNullElse(date, FeatureWriter.NO_DATE))
        .write(table, file);
  }

  /** Reads the file again; the differences from what it must say, with its name. */
  List<String> differences(Path folder) {
    return TableCheck.differences(format.file(), table, folder.resolve(path)).stream()
        .map(difference -> path + ": " + difference)
        .toList();
  }
}
