package org.lynchet.formats;

import java.io.IOException;
import java.nio.file.Path;

/** Writes one table to one file, the same bytes for the same table. */
public interface FeatureWriter {

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
