package org.lynchet.prescription.plan;

import org.lynchet.prescription.fault.PrintableText;

/** Shows text of a plan file in a message: clipped, and nothing in it that moves a terminal. */
final class Shown {
  private static final int LONGEST = 80;

  private Shown() {}

  /** The text in quotes. */
  static String quoted(String text) {
    return "'" + clipped(text) + "'";
  }

  /** At most the first 80 characters, with unprintable ones as {@code \}{@code uXXXX}. */
  static String clipped(String text) {
    StringBuilder shown = new StringBuilder();
    text.codePoints().limit(LONGEST).forEach(c -> PrintableText.append(c, shown));
    return text.codePointCount(0, text.length()) > LONGEST
        ? shown.append("...").toString()
        : shown.toString();
  }

  /** Whether a character shows as itself. */
  static boolean isPrintable(int codePoint) {
    return PrintableText.isPrintable(codePoint);
  }
}
