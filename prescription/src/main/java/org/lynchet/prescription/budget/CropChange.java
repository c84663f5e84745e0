package org.lynchet.prescription.budget;

import java.io.Serializable;
import org.lynchet.prescription.quantity.GrainUnit;
import org.lynchet.prescription.quantity.Spread;

/**
 * What strips change for one crop.
 *
 * @param crop the crop
 * @param stripSquareMetres its area in strips, without headland, which strips do not change
 * @param unit the unit of grain
 * @param yieldInBlocks the unit on one of its area, in a separate block; above 0
 * @param yieldChange share by which the strips' yield differs from that
 * @param price money for one of the unit
 */
public record CropChange(
    String crop,
    double stripSquareMetres,
    GrainUnit unit,
    Spread yieldInBlocks,
    Spread yieldChange,
    Spread price)
    implements Serializable {

  /** Its area in the unit on which its yield is counted. */
  public double areas() {
    return stripSquareMetres / unit.per().squareMetres();
  }
}
