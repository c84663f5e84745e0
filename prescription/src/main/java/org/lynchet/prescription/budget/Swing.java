package org.lynchet.prescription.budget;

import java.io.Serializable;
import org.lynchet.prescription.quantity.Spread;

/**
 * What one uncertain number alone does to the net, all others typical.
 *
 * @param input the number
 * @param value its values
 * @param netAtLow change of net at its low value
 * @param netAtHigh change of net at its high value
 */
public record Swing(BudgetInput input, Spread value, double netAtLow, double netAtHigh)
    implements Serializable {

  /** How far apart the two are. */
  public double width() {
    return Math.abs(netAtHigh - netAtLow);
  }
}
