package org.lynchet.prescription.convert;

import org.jspecify.annotations.Nullable;
import org.lynchet.prescription.plan.HandoffChoices.Format;

/** Finds characters that a format does not have. */
final class BadCharacter {
  private BadCharacter() {}

  /**
   * What kind of character a text has that the format does not; null if it has them all.
   *
   * <p>XML 1.0, section 2.2: no control characters but tab and line ends. In a .dbf control
   * characters end rows for some readers. SQLite ends a text at a zero.
   */
  static @Nullable String in(String text, Format format) {
    if (text.codePoints().anyMatch(c -> Character.getType(c) == Character.SURROGATE)) {
      return "half a character";
    }
    boolean bad =
        switch (format) {
          case SHAPEFILE -> text.chars().anyMatch(Character::isISOControl);
          case GEOJSON -> false;
          case GEOPACKAGE -> text.indexOf(0) >= 0;
          case KML, ISOXML -> text.chars().anyMatch(BadCharacter::isNotOfXml);
        };
    return bad ? "a control character" : null;
  }

  private static boolean isNotOfXml(int c) {
    boolean blank = c == '\t' || c == '\n' || c == '\r';
    return (c < ' ' && !blank) || c == 0xFFFE || c == 0xFFFF;
  }
}
