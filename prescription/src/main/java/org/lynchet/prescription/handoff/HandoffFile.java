package org.lynchet.prescription.handoff;

import java.io.IOException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Collection;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.lynchet.formats.Fault;
import org.lynchet.formats.FeatureReader;
import org.lynchet.formats.FeatureTable;
import org.lynchet.formats.FeatureWriter;
import org.lynchet.formats.FormatException;
import org.lynchet.formats.geojson.GeoJson;
import org.lynchet.formats.shapefile.Shapefile;
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

  /** The file name's ending for a format that holds one table. */
  static String ending(Format format) {
    return switch (format) {
      case SHAPEFILE -> ".shp";
      case GEOJSON -> ".geojson";
      default -> throw new IllegalArgumentException("not of one table: " + format);
    };
  }

  /** The reader of a format that holds one table. */
  static FeatureReader reader(Format format) {
    return switch (format) {
      case SHAPEFILE -> Shapefile.reader();
      case GEOJSON -> GeoJson.reader();
      default -> throw new IllegalArgumentException("not of one table: " + format);
    };
  }

  private FeatureWriter writer(@Nullable LocalDate date) {
    return switch (format) {
      case SHAPEFILE -> date == null ? Shapefile.writer() : Shapefile.writer(date);
      case GEOJSON -> GeoJson.writer();
      default -> throw new IllegalArgumentException("not of one table: " + format);
    };
  }

  /** Writes the table, and the folders above it. */
  void write(Path folder, @Nullable LocalDate date) throws IOException {
    Path file = folder.resolve(path);
    Draft.makeBelow(folder, file.resolveSibling(""));
    writer(date).write(table, file);
  }

  /** Reads the file again; the differences from what it must say, with its name. */
  List<String> differences(Path folder) {
    try {
      FeatureTable read = reader(format).read(folder.resolve(path));
      return ReadBack.differences(table, read, format == Format.GEOJSON).stream()
          .map(difference -> path + ": " + difference)
          .toList();
    } catch (FormatException e) {
      return e.faults().stream().map(Fault::what).map(what -> path + ": " + what).toList();
    }
  }
}
