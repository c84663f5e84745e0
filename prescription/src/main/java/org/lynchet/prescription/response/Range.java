package org.lynchet.prescription.response;

import java.io.Serializable;

/**
 * The lowest, the most likely and the highest value, in rising order.
 *
 * @param low the lowest
 * @param typical the most likely
 * @param high the highest
 */
public record Range(double low, double typical, double high) implements Serializable {
  static final Range NOTHING = new Range(0, 0, 0);

  Range plus(Range other) {
    return new Range(low + other.low, typical + other.typical, high + other.high);
  }

  Range times(double factor) {
    return new Range(low * factor, typical * factor, high * factor);
  }
}
