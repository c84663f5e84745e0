package org.lynchet.formats;

import java.io.IOException;
import java.nio.file.Path;
import java.time.LocalDate;

/** Writes one table to one file, the same bytes for the same table. */
public interface FeatureWriter {
  /** What a file says of its date where none is given: the same whenever it is written. */
  LocalDate NO_DATE = LocalDate.of(2000, 1, 1);

  /**
   * Writes the table and, beside the file, whatever other files the format wants.
   *
   * @param table in longitude and latitude
   * @param file where to; its folder exists
   * @throws IOException if the file system refuses
   * @throws IllegalArgumentException if the table does not fit the format: a fault of the caller
   */
  void write(FeatureTable table, Path file) throws IOException;
}
