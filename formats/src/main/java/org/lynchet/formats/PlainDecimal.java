package org.lynchet.formats;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.regex.Pattern;

/** Prints numbers as plain decimals, no exponent, no zeros at the end, -0 as 0; and reads them. */
public final class PlainDecimal {
  private static final int DECIMALS = 9;
  private static final long SCALE = 1_000_000_000L;

  /** Below this a double times the scale is a whole number that a double holds exactly. */
  private static final double LIMIT = 4_000_000;

  /** Digits with a point or without, with an exponent or without; no infinity, no NaN. */
  private static final Pattern NUMBER =
      Pattern.compile("[+-]?(?:[0-9]++(?:\\.[0-9]*+)?|\\.[0-9]++)(?:[eE][+-]?[0-9]++)?");

  /** Longer than any double that is printed: 4.9e-324 has 326 characters. */
  private static final int LONGEST = 400;

  private PlainDecimal() {}

  /**
   * The number that a text is, also with an exponent; -0 as 0. NaN if the text is no number, or one
   * beyond all doubles.
   */
  public static double parse(String text) {
    if (text.length() > LONGEST || !NUMBER.matcher(text).matches()) {
      return Double.NaN;
    }
    double value = Double.parseDouble(text);
    return Double.isFinite(value) ? value + 0.0 : Double.NaN;
  }

  /**
   * The shortest decimal that reads back as the same double.
   *
   * @throws IllegalArgumentException if it is infinite or no number
   */
  public static String of(double value) {
    requireFinite(value);
    long whole = (long) value;
    if (whole == value && Math.abs(whole) < SCALE) {
      return Long.toString(whole);
    }
    return plain(BigDecimal.valueOf(value));
  }

  /**
   * A coordinate, rounded half away from zero to nine decimals.
   *
   * @throws IllegalArgumentException if it is infinite or no number
   */
  public static String rounded(double value) {
    requireFinite(value);
    if (Math.abs(value) >= LIMIT) {
      return plain(BigDecimal.valueOf(value).setScale(DECIMALS, RoundingMode.HALF_UP));
    }
    long scaled = Math.round(Math.abs(value) * SCALE);
    StringBuilder text = new StringBuilder(16);
    if (value < 0 && scaled != 0) {
      text.append('-');
    }
    text.append(scaled / SCALE);
    appendFraction(text, scaled % SCALE);
    return text.toString();
  }

  private static void appendFraction(StringBuilder text, long billionths) {
    if (billionths == 0) {
      return;
    }
    text.append('.');
    long rest = billionths;
    for (long unit = SCALE / 10; rest != 0; unit /= 10) {
      text.append((char) ('0' + rest / unit));
      rest %= unit;
    }
  }

  private static String plain(BigDecimal value) {
    return value.signum() == 0 ? "0" : value.stripTrailingZeros().toPlainString();
  }

  private static void requireFinite(double value) {
    if (!Double.isFinite(value)) {
      throw new IllegalArgumentException("no number: " + value);
    }
  }
}
