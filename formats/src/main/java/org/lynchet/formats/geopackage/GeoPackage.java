package org.lynchet.formats.geopackage;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.SQLException;
import java.time.LocalDate;
import java.util.List;
import org.lynchet.formats.FeatureReader;
import org.lynchet.formats.FeatureTable;
import org.lynchet.formats.LayeredFormat;

/** Opens the reader and the writer of GeoPackage. */
public final class GeoPackage {
  /** What there is to know of the format. */
  public static final LayeredFormat FORMAT = new GeoPackageFormat();

  private GeoPackage() {}

  /**
   * Writes tables as layers of one file, each with its R-tree; the same bytes for the same tables.
   *
   * @param tables in longitude and latitude, with different names
   * @param date what the file says of its last change
   * @param file where to; its folder exists; a file that is there is replaced
   * @throws IOException if the file system refuses, or SQLite cannot be loaded
   * @throws IllegalArgumentException if a table does not fit the format
   */
  public static void write(List<FeatureTable> tables, LocalDate date, Path file)
      throws IOException {
    Files.deleteIfExists(file);
    try (Database database = Database.create(file)) {
      new LayerWriter(database, date).write(tables);
    } catch (SQLException e) {
      throw new IOException(
          Database.isFull(e) ? "No space left on device" : file + ": " + e.getMessage(), e);
    }
  }

  /**
   * Reads one layer.
   *
   * @param layer the layer's name; empty for the only one
   */
  public static FeatureReader reader(String layer) {
    return new GeoPackageReader(layer);
  }
}
