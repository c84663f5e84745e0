package org.lynchet.prescription.report;

import java.math.BigDecimal;
import java.util.Locale;
import org.lynchet.prescription.quantity.Spread;

/** Writes numbers for a reader. */
final class NumberWords {
  private NumberWords() {}

  /** A number as short as it is, such as 67 or 1.75. */
  static String plain(double value) {
    return BigDecimal.valueOf(value).stripTrailingZeros().toPlainString();
  }

  /** Low, typical and high; one number where they are the same. */
  static String spread(Spread spread) {
    return spread.low() == spread.high()
        ? plain(spread.typical())
        : plain(spread.low()) + " / " + plain(spread.typical()) + " / " + plain(spread.high());
  }

  /** Money or a change of it, signed, with thousands apart. */
  static String signed(double value, int decimals) {
    return String.format(Locale.ROOT, "%+,." + decimals + "f", value);
  }

  /** A share as per cent, signed. */
  static String percent(double share) {
    return String.format(Locale.ROOT, "%+.1f\u00A0%%", 100 * share);
  }
}
