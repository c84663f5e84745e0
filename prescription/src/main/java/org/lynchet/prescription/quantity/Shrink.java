package org.lynchet.prescription.quantity;

import java.io.Serializable;

/**
 * What becomes of grain that is weighed at one moisture and sold at another.
 *
 * <p>Dry matter stays, water goes: a weight W1 at moisture M1 is W2 = W1 (1 - M1) / (1 - M2) at
 * moisture M2, shares of the whole weight (Mulvaney and Devkota, U. Florida AG442). What is lost in
 * handling is a share of the weight at first.
 *
 * @param moisture share of water as weighed, 0 to below 1
 * @param standard share of water as sold, 0 to below 1
 * @param handlingLoss share of the weight that is lost, 0 to below 1
 */
public record Shrink(double moisture, double standard, double handlingLoss)
    implements Serializable {

  /** The share of the weight that can be sold; above 1 where grain is drier than it is sold. */
  public double kept() {
    return (1 - moisture) / (1 - standard) - handlingLoss;
  }

  /** The share of the weight that goes. */
  public double share() {
    return 1 - kept();
  }
}
