package org.lynchet.formats.isoxml;

import java.math.BigDecimal;
import java.util.regex.Pattern;
import org.lynchet.formats.XmlElement;

/** Reads numbers of attributes; whether they are right is for {@link TaskDataCheck} to say. */
final class IsoNumbers {
  private static final Pattern WHOLE = Pattern.compile("[+-]?[0-9]{1,18}");
  private static final Pattern DECIMAL = Pattern.compile("[+-]?[0-9]{1,18}(\\.[0-9]{0,20})?");
  private static final Pattern DDI = Pattern.compile("[0-9A-Fa-f]{4}");

  private IsoNumbers() {}

  /** Whether a text is a whole number of at most 18 digits. */
  static boolean isWhole(String text) {
    return WHOLE.matcher(text).matches();
  }

  /** Whether a text is four hexadecimal digits. */
  static boolean isDdi(String text) {
    return DDI.matcher(text).matches();
  }

  /** A whole number of at most 18 digits; another value where there is none. */
  static long whole(XmlElement element, String attribute, long other) {
    String text = element.attribute(attribute);
    return isWhole(text) ? Long.parseLong(text) : other;
  }

  /** A decimal; another value where there is none. */
  static BigDecimal decimal(XmlElement element, String attribute, BigDecimal other) {
    String text = element.attribute(attribute);
    return DECIMAL.matcher(text).matches() ? new BigDecimal(text) : other;
  }

  /** Four hexadecimal digits as a number; -1 where there are none. */
  static int ddi(XmlElement element) {
    String text = element.attribute("A");
    return isDdi(text) ? Integer.parseInt(text, 16) : -1;
  }
}
