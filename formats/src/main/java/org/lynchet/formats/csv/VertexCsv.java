package org.lynchet.formats.csv;

import org.lynchet.formats.FeatureReader;

/** Opens the reader of vertices in separated values. */
public final class VertexCsv {
  private VertexCsv() {}

  /**
   * Reads one area: a table without columns and with one feature, a polygon, or a multipolygon if
   * there are several parts, in longitude and latitude.
   */
  public static FeatureReader reader() {
    return new VertexCsvReader(false);
  }

  /**
   * Reads lines: a table without columns and with a feature for each part, a line through its
   * vertices in the order of the rows, in longitude and latitude.
   */
  public static FeatureReader lineReader() {
    return new VertexCsvReader(true);
  }
}
