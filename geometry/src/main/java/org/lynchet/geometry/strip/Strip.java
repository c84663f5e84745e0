package org.lynchet.geometry.strip;

import java.io.Serializable;
import java.util.List;
import org.lynchet.geometry.pass.Pass;

/**
 * One strip of a field.
 *
 * @param number from 1, left to right, among the strips that have area in the field
 * @param inPattern which strip of the pattern it is, from 0
 * @param leftMetres offset of its left edge
 * @param rightMetres offset of its right edge
 * @param borderRowsLeft border rows that it has on its left side here
 * @param borderRowsRight border rows that it has on its right side here
 * @param passes its passes, left to right
 */
public record Strip(
    int number,
    int inPattern,
    double leftMetres,
    double rightMetres,
    int borderRowsLeft,
    int borderRowsRight,
    List<Pass> passes)
    implements Serializable {

  /** Copies the passes. */
  public Strip {
    passes = List.copyOf(passes);
  }
}
