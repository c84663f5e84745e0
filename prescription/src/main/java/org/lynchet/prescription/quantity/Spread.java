package org.lynchet.prescription.quantity;

import java.io.Serializable;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Arrays;

/**
 * A number that is not known for sure.
 *
 * @param low it is hardly less
 * @param typical the best single guess
 * @param high it is hardly more
 */
public record Spread(double low, double typical, double high) implements Serializable {

  /**
   * Refuses numbers out of order.
   *
   * @throws IllegalArgumentException unless low &le; typical &le; high
   */
  public Spread {
    if (!(low <= typical && typical <= high)) {
      throw new IllegalArgumentException(low + ", " + typical + ", " + high + " are out of order");
    }
  }

  /** The sum, each value with its like. */
  public Spread plus(Spread other) {
    return new Spread(low + other.low, typical + other.typical, high + other.high);
  }

  /** The values with something added to each. */
  public Spread plus(double amount) {
    return new Spread(low + amount, typical + amount, high + amount);
  }

  /** The product with a factor; one below 0 makes the low value of the high one. */
  public Spread times(double factor) {
    return factor < 0
        ? new Spread(high * factor, typical * factor, low * factor)
        : new Spread(low * factor, typical * factor, high * factor);
  }

  /** The product with another number that has nothing to do with this one. */
  public Spread times(Spread other) {
    double[] corners = {low * other.low, low * other.high, high * other.low, high * other.high};
    double least = Arrays.stream(corners).min().orElseThrow();
    double most = Arrays.stream(corners).max().orElseThrow();
    return new Spread(least, typical * other.typical, most);
  }

  /** The values with so many decimals, halves away from zero. */
  public Spread rounded(int decimals) {
    return new Spread(rounded(low, decimals), rounded(typical, decimals), rounded(high, decimals));
  }

  private static double rounded(double value, int decimals) {
    return BigDecimal.valueOf(value).setScale(decimals, RoundingMode.HALF_UP).doubleValue();
  }

  /** A number that is known. */
  public static Spread exactly(double value) {
    return new Spread(value, value, value);
  }
}
