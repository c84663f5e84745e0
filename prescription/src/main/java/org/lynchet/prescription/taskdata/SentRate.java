package org.lynchet.prescription.taskdata;

import java.math.BigDecimal;
import java.math.RoundingMode;
import org.lynchet.prescription.quantity.AreaUnit;
import org.lynchet.prescription.quantity.SeedingRate;

/**
 * A seeding rate as task data can carry it: DDI 11 of ISO 11783-11, setpoint count per area, in
 * steps of 0.001 on a square metre.
 *
 * @param raw the number that is sent
 */
record SentRate(int raw) {
  /** DDI 11, setpoint count per area application rate. */
  static final int DDI = 11;

  /** Steps in one seed on a square metre. */
  private static final int STEPS = 1000;

  /**
   * The nearest rate that can be sent, halves up.
   *
   * @param meant at most 2147483 seeds/m2, raw 2147483647; a plan has at most 10000
   * @throws ArithmeticException if it is more
   */
  static SentRate of(SeedingRate meant) {
    return new SentRate(
        BigDecimal.valueOf(meant.perSquareMetre() * STEPS)
            .setScale(0, RoundingMode.HALF_UP)
            .intValueExact());
  }

  /** The rate that the machine is told. */
  SeedingRate rate(AreaUnit per) {
    return new SeedingRate((double) raw / STEPS * per.squareMetres(), per);
  }
}
