package org.lynchet.formats;

import java.io.Serializable;

/**
 * One column of a table.
 *
 * @param name the name; shapefiles allow at most ten ASCII characters
 * @param kind what its values are
 * @param width characters kept for a value in formats with fixed widths
 * @param decimals digits after the point; 0 for whole numbers and for text
 */
public record Column(String name, Kind kind, int width, int decimals) implements Serializable {

  /** What the values of a column are. */
  public enum Kind {
    /** A {@link String}. */
    TEXT,
    /** A {@link Double}; formats with fixed widths round half up to the column's decimals. */
    NUMBER,
    /** A {@link Boolean}. */
    FLAG
  }

  /** A text column that keeps at most {@code width} bytes of UTF-8, 1 to 254. */
  public static Column text(String name, int width) {
    return new Column(name, Kind.TEXT, width, 0);
  }

  /** A number column N(width, decimals). */
  public static Column number(String name, int width, int decimals) {
    return new Column(name, Kind.NUMBER, width, decimals);
  }

  /** A column of yes or no. */
  public static Column flag(String name) {
    return new Column(name, Kind.FLAG, 1, 0);
  }
}
