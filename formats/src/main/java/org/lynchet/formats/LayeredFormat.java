package org.lynchet.formats;

import java.io.IOException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;

/** A format of files that hold several tables, as layers. */
public interface LayeredFormat extends FileFormat {

  /**
   * Writes tables as layers of one file, the same bytes for the same tables.
   *
   * @param tables in longitude and latitude, with different names
   * @param date what the file says of its date, where its format has one
   * @param file where to; its folder exists
   * @throws IOException if the file system refuses
   * @throws IllegalArgumentException if a table does not fit the format
   */
  void write(List<FeatureTable> tables, LocalDate date, Path file) throws IOException;

  /**
   * Whom such a file is for, and what it is called, to end a sentence: "for a GIS (GeoPackage)".
   */
  String use();

  @Override
  default boolean hasParts() {
    return true;
  }

  @Override
  default FeatureWriter writer(LocalDate date) {
    return (table, file) -> write(List.of(table), date, file);
  }
}
