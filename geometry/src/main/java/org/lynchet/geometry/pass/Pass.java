package org.lynchet.geometry.pass;

import java.io.Serializable;

/**
 * One pass of a planter.
 *
 * @param number its place among all passes of the field, from 1, left to right
 * @param leftMetres offset of the left edge of its swath, half a row spacing left of row 1
 * @param rows rows, numbered from 1, left to right
 * @param rowSpacingMetres distance of neighbouring rows
 */
public record Pass(int number, double leftMetres, int rows, double rowSpacingMetres)
    implements Serializable {
  /** A piece that ends this near to an edge, in metres, reaches it: steering is not that exact. */
  public static final double REACHES_METRES = 0.01;

  /** Offset of the right edge of its swath. */
  public double rightMetres() {
    return leftMetres + rows * rowSpacingMetres;
  }

  /** Offset of its centreline: what is driven. */
  public double centreMetres() {
    return leftMetres + rows * rowSpacingMetres / 2;
  }

  /** Offset of a row, 1 to {@link #rows}. */
  public double rowMetres(int row) {
    return leftMetres + (row - 0.5) * rowSpacingMetres;
  }

  /** Whether what lies between two offsets reaches both edges of its swath. */
  public boolean isFilledBy(double minOffsetMetres, double maxOffsetMetres) {
    return minOffsetMetres <= leftMetres + REACHES_METRES
        && maxOffsetMetres >= rightMetres() - REACHES_METRES;
  }
}
