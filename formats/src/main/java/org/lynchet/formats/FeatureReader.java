package org.lynchet.formats;

import java.nio.file.Path;

/** Reads one file of one format. */
public interface FeatureReader {

  /**
   * Reads the whole file.
   *
   * @throws FormatException with every fault found, if it cannot be read or is not of the format
   */
  FeatureTable read(Path file) throws FormatException;
}
