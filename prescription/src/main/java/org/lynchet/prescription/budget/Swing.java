package org.lynchet.prescription.budget;

import java.io.Serializable;
import java.util.Locale;
import org.lynchet.prescription.quantity.Spread;

/**
 * What one uncertain number alone does to the net, all others typical.
 *
 * @param input the number
 * @param value its values, a change as a share
 * @param unit what it is counted in, such as bu/ac, %, /bu or /h
 * @param netAtLow change of net at its low value
 * @param netAtHigh change of net at its high value
 */
public record Swing(BudgetInput input, Spread value, String unit, double netAtLow, double netAtHigh)
    implements Serializable {

  /** How far apart the two are. */
  public double width() {
    return Math.abs(netAtHigh - netAtLow);
  }

  /** The values as they are counted: those of a change in per cent. */
  public Spread counted() {
    return input.kind() == BudgetInput.Kind.YIELD_CHANGE ? value.times(100) : value;
  }

  /** One of the counted values in words, with its unit. */
  public String words(double counted) {
    String form =
        switch (input.kind()) {
          case YIELD -> "%.1f %s";
          case YIELD_CHANGE -> "%+.1f %s";
          case PRICE, HOUR -> "%.2f %s";
        };
    return String.format(Locale.ROOT, form, counted, unit);
  }
}
