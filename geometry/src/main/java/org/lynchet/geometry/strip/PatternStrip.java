package org.lynchet.geometry.strip;

import java.io.Serializable;

/**
 * One strip of the pattern.
 *
 * @param crop the crop's name
 * @param passes whole passes, at least 1
 * @param rowsPerPass rows of one pass, at least 1
 * @param rowSpacingMetres distance of neighbouring rows, above 0
 * @param borderRowsLeft border rows if another crop stands on the left; 0 for none
 * @param borderRowsRight border rows if another crop stands on the right; 0 for none
 */
public record PatternStrip(
    String crop,
    int passes,
    int rowsPerPass,
    double rowSpacingMetres,
    int borderRowsLeft,
    int borderRowsRight)
    implements Serializable {

  /**
   * Checks the ranges.
   *
   * @throws IllegalArgumentException if a number is out of range or the border rows are more than
   *     the strip's rows
   */
  public PatternStrip {
    if (passes < 1
        || rowsPerPass < 1
        || !(rowSpacingMetres > 0)
        || borderRowsLeft < 0
        || borderRowsRight < 0
        || borderRowsLeft + borderRowsRight > passes * rowsPerPass) {
      throw new IllegalArgumentException("not a strip: " + passes + " x " + rowsPerPass + " rows");
    }
  }

  /** Rows of the strip. */
  public int rows() {
    return passes * rowsPerPass;
  }

  /** Width of one of its passes. */
  public double passWidthMetres() {
    return rowsPerPass * rowSpacingMetres;
  }

  /** Width of the strip. */
  public double widthMetres() {
    return rows() * rowSpacingMetres;
  }
}
