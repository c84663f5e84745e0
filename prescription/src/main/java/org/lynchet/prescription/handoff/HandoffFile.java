package org.lynchet.prescription.handoff;

import java.io.IOException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Collection;
import java.util.EnumSet;
import java.util.List;
import java.util.Objects;
import java.util.Set;
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

  /** The formats of planting and spraying files: one table in one file. */
  private static final Set<Format> ONE_TABLE = EnumSet.of(Format.SHAPEFILE, Format.GEOJSON);

  /** Those of some formats that hold one table in one file. */
  static List<Format> ofOneTable(Collection<Format> formats) {
    return formats.stream().filter(ONE_TABLE::contains).toList();
  }

  /** Writes the table, and the folders above it. */
  void write(Path folder, @Nullable LocalDate date) throws IOException {
    Path file = folder.resolve(path);
    Draft.makeBelow(folder, file.resolveSibling(""));
    TableFormat.writer(format, Objects.requireNonNullElse(date, FeatureWriter.NO_DATE))
        .write(table, file);
  }

  /** Reads the file again; the differences from what it must say, with its name. */
  List<String> differences(Path folder) {
    return TableFormat.differences(format, table, folder.resolve(path)).stream()
        .map(difference -> path + ": " + difference)
        .toList();
  }
}
