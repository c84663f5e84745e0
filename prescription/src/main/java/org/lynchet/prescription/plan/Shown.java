package org.lynchet.prescription.plan;

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
    text.codePoints()
        .limit(LONGEST)
        .forEach(
            c -> {
              if (isPrintable(c)) {
                shown.appendCodePoint(c);
              } else {
                shown.append(String.format("\\u%04X", c));
              }
            });
    return text.codePointCount(0, text.length()) > LONGEST
        ? shown.append("...").toString()
        : shown.toString();
  }

  /**
   * Whether a character shows as itself. Not so: controls, line and paragraph separators, halves of
   * surrogate pairs, and invisible format characters other than the two joiners that some scripts
   * need inside words.
   */
  static boolean isPrintable(int codePoint) {
    int zeroWidthNonJoiner = 0x200C;
    int zeroWidthJoiner = 0x200D;
    return switch (Character.getType(codePoint)) {
      case Character.CONTROL,
          Character.LINE_SEPARATOR,
          Character.PARAGRAPH_SEPARATOR,
          Character.SURROGATE ->
          false;
      case Character.FORMAT -> codePoint == zeroWidthNonJoiner || codePoint == zeroWidthJoiner;
      default -> true;
    };
  }
}
