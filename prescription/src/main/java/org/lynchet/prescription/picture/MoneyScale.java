package org.lynchet.prescription.picture;

import java.util.ArrayList;
import java.util.List;

/**
 * Places amounts of money across a width of the page.
 *
 * @param least the amount at the left end
 * @param most the amount at the right end, above it
 * @param left left end in points
 * @param right right end in points
 */
record MoneyScale(double least, double most, double left, double right) {
  private static final int MOST_TICKS = 8;
  private static final double[] STEPS = {1, 2, 5, 10};

  double x(double amount) {
    return left + (amount - least) / (most - least) * (right - left);
  }

  /** Round amounts on the scale: 1, 2 or 5 times a power of ten apart, 0 among them if it is on. */
  List<Double> ticks() {
    double step = step();
    List<Double> ticks = new ArrayList<>();
    for (double i = Math.ceil(least / step); i * step <= most; i++) {
      ticks.add(i * step + 0.0);
    }
    return ticks;
  }

  private double step() {
    double narrowest = (most - least) / MOST_TICKS;
    double power = Math.pow(10, Math.floor(Math.log10(narrowest)));
    for (double step : STEPS) {
      if (step * power >= narrowest) {
        return step * power;
      }
    }
    return 10 * power;
  }
}
