package org.lynchet.prescription.zone;

import java.io.Serializable;
import java.util.List;
import org.locationtech.jts.geom.Geometry;
import org.lynchet.geometry.pass.Pass;

/**
 * One pass of a planter on the field.
 *
 * @param pass its swath and rows
 * @param machine the planter's name
 * @param crop the crop
 * @param strip number of the strip
 * @param partial whether it is narrower than its machine over the whole length of some piece
 * @param rowsInField how many of its rows have any length in the field
 * @param rowLengthMetres length of its rows together
 * @param line its centreline, longitude (x) and latitude (y) in degrees: a line for each stretch in
 *     which any of its swath is in the field
 * @param inPattern which strip of the plan's pattern it belongs to, from 0
 * @param borderRowsLeft how many of its rows, from the left, are border rows of the left side
 * @param borderRowsRight how many of its rows, from the right, are border rows of the right side
 * @param rowLengthsMetres length in the field of each row, left to right; 0 for none
 */
public record DrivenPass(
    Pass pass,
    String machine,
    String crop,
    int strip,
    boolean partial,
    int rowsInField,
    double rowLengthMetres,
    Geometry line,
    int inPattern,
    int borderRowsLeft,
    int borderRowsRight,
    List<Double> rowLengthsMetres)
    implements Serializable {

  /** Copies the list. */
  public DrivenPass {
    rowLengthsMetres = List.copyOf(rowLengthsMetres);
  }

  /** Whether a row, 1 to the pass's rows, is a border row. */
  public boolean isBorder(int row) {
    return row <= borderRowsLeft || row > pass.rows() - borderRowsRight;
  }
}
