package org.lynchet.formats.kml;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.lynchet.formats.FeatureReader;
import org.lynchet.formats.FeatureTable;
import org.lynchet.formats.LayeredFormat;

/** Opens the reader and the writer of KML. */
public final class Kml {
  /** What there is to know of the format. */
  public static final LayeredFormat FORMAT = new KmlFormat();

  private Kml() {}

  /**
   * Writes tables as folders of one document, each with a schema of its columns.
   *
   * <p>A placemark is named after its first four values; areas are filled by their first value.
   *
   * @param tables in longitude and latitude, with different names
   * @param file where to; its folder exists
   * @throws IOException if the file system refuses
   * @throws IllegalArgumentException if a table is not in longitude and latitude
   */
  public static void write(List<FeatureTable> tables, Path file) throws IOException {
    Files.write(file, new KmlEncoder(tables).encode());
  }

  /**
   * Reads the placemarks of a folder, or of a whole .kml or .kmz.
   *
   * <p>The columns are those of the schema if all placemarks have the same one; else {@code name}
   * and the names of the values, all texts.
   *
   * @param folder the folder's name; empty for all placemarks
   */
  public static FeatureReader reader(String folder) {
    return new KmlReader(folder);
  }
}
