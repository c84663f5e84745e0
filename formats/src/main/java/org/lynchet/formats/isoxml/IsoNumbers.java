package org.lynchet.formats.isoxml;

import java.math.BigDecimal;
import org.lynchet.formats.XmlElement;

/** Reads numbers of attributes; whether they are right is for {@link TaskDataCheck} to say. */
final class IsoNumbers {
  private IsoNumbers() {}

  /** A whole number of at most 18 digits; another value where there is none. */
  static long whole(XmlElement element, String attribute, long other) {
    String text = element.attribute(attribute);
    return text.matches("[+-]?[0-9]{1,18}") ? Long.parseLong(text) : other;
  }

  /** A decimal; another value where there is none. */
  static BigDecimal decimal(XmlElement element, String attribute, BigDecimal other) {
    String text = element.attribute(attribute);
    return text.matches("[+-]?[0-9]{1,18}(\\.[0-9]{0,20})?") ? new BigDecimal(text) : other;
  }

  /** Four hexadecimal digits as a number; -1 where there are none. */
  static int ddi(XmlElement element) {
    String text = element.attribute("A");
    return text.matches("[0-9A-Fa-f]{4}") ? Integer.parseInt(text, 16) : -1;
  }
}
