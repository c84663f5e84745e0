package org.lynchet.formats.isoxml;

import java.math.BigDecimal;
import java.util.Locale;
import org.lynchet.formats.Excerpt;
import org.lynchet.formats.PlainDecimal;

/** Writes values the way that the standard's schema wants them, and shows those of others. */
final class IsoText {
  /** The longest name, in characters. */
  static final int LONGEST = 32;

  /** How many characters of a value a fault shows. */
  private static final int SHOWN = 40;

  private IsoText() {}

  /** A value as a fault shows it. */
  static String shown(String value) {
    return Excerpt.of(value, SHOWN);
  }

  /** A name, cut to 32 characters, no surrogate pair cut in two. */
  static String name(String name) {
    return name.length() <= LONGEST ? name : Excerpt.start(name, LONGEST).stripTrailing();
  }

  /** Degrees with at most nine decimals and no exponent. */
  static String degrees(double degrees) {
    return PlainDecimal.rounded(degrees);
  }

  /** A decimal with no exponent. */
  static String decimal(BigDecimal decimal) {
    return decimal.toPlainString();
  }

  /** A DDI as four hexadecimal digits. */
  static String ddi(int ddi) {
    return String.format(Locale.ROOT, "%04X", ddi);
  }
}
