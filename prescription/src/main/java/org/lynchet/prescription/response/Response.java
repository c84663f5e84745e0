package org.lynchet.prescription.response;

import java.io.Serializable;
import org.lynchet.prescription.quantity.Spread;

/**
 * How the yield of a crop answers to light.
 *
 * @param slope change of yield for a change of light, as shares of each, 0 or more
 * @param gainKept what the season leaves of a gain, 0 or more; losses stay whole
 */
public record Response(Spread slope, Spread gainKept) implements Serializable {

  /**
   * The relative yield of a row.
   *
   * @param relativeAbsorbed its absorbed light, relative to a wide block
   */
  public Spread relativeYield(double relativeAbsorbed) {
    double change = relativeAbsorbed - 1;
    if (change >= 0) {
      return new Spread(
          1 + change * slope.low() * gainKept.low(),
          1 + change * slope.typical() * gainKept.typical(),
          1 + change * slope.high() * gainKept.high());
    }
    return new Spread(
        Math.max(0, 1 + change * slope.high()),
        Math.max(0, 1 + change * slope.typical()),
        Math.max(0, 1 + change * slope.low()));
  }
}
