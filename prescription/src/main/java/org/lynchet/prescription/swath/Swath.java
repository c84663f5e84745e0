package org.lynchet.prescription.swath;

import java.io.Serializable;
import org.lynchet.prescription.quantity.Length;

/**
 * One pass of a machine on a strip; places are measured from the strip's left edge, rightwards.
 *
 * @param scale what places are counted in: so many in 0.1 mm
 * @param left left edge of what it covers
 * @param right right edge of what it covers
 * @param centre the middle of the machine: what is driven
 * @param firstOpen its first open section, from 1 at the left; 0 for a machine without sections
 * @param openSections sections open, side by side; 0 for a machine without sections
 * @param shutOverOther sections that reach over another crop though shut
 */
public record Swath(
    long scale,
    long left,
    long right,
    long centre,
    int firstOpen,
    int openSections,
    int shutOverOther)
    implements Serializable {

  /** Left edge of what it covers, in metres from the strip's left edge. */
  public double leftMetres() {
    return left / (scale * Length.TENTHS_IN_A_METRE);
  }

  /** Right edge of what it covers, in metres from the strip's left edge. */
  public double rightMetres() {
    return right / (scale * Length.TENTHS_IN_A_METRE);
  }

  /** The middle of the machine, in metres from the strip's left edge. */
  public double centreMetres() {
    return centre / (scale * Length.TENTHS_IN_A_METRE);
  }

  /** Whether it covers a place, the edges included. */
  public boolean covers(long place) {
    return left <= place && place <= right;
  }
}
