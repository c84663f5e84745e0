package org.lynchet.prescription.picture;

import java.text.DecimalFormat;
import java.text.DecimalFormatSymbols;
import java.util.Locale;
import org.lynchet.prescription.quantity.SeedingRate;

/** Writes a seeding rate with thousands apart and without needless decimals. */
final class RateText {

  private RateText() {}

  /** Such as {@code 34,000 seeds/ac}, {@code 8.25 seeds/m2}, or {@code not planted}. */
  static String of(SeedingRate rate) {
    if (rate.seeds() == 0) {
      return "not planted";
    }
    DecimalFormat format =
        new DecimalFormat("#,##0.###", DecimalFormatSymbols.getInstance(Locale.ROOT));
    return format.format(rate.seeds()) + " " + rate.unit();
  }
}
