package org.lynchet.prescription.fault;

/**
 * Shows text that may come from anywhere, such as a file's own words, so that nothing in it moves
 * the cursor, changes colours or turns the direction of reading around.
 */
public final class PrintableText {
  private static final int ZERO_WIDTH_NON_JOINER = 0x200C;
  private static final int ZERO_WIDTH_JOINER = 0x200D;

  private PrintableText() {}

  /**
   * The text on one line: breaks and tabs become spaces, all else that does not show as itself
   * becomes {@code \}{@code uXXXX}.
   */
  public static String oneLine(String text) {
    StringBuilder shown = new StringBuilder(text.length());
    text.codePoints()
        .map(c -> c == '\n' || c == '\r' || c == '\t' ? ' ' : c)
        .forEach(c -> append(c, shown));
    return shown.toString();
  }

  /** Appends a character, or its number if it does not show as itself. */
  public static void append(int codePoint, StringBuilder shown) {
    if (isPrintable(codePoint)) {
      shown.appendCodePoint(codePoint);
    } else {
      shown.append(String.format("\\u%04X", codePoint));
    }
  }

  /**
   * Whether a character shows as itself. Not so: controls, line and paragraph separators, halves of
   * surrogate pairs, and invisible format characters other than the two joiners that some scripts
   * need inside words.
   */
  public static boolean isPrintable(int codePoint) {
    return switch (Character.getType(codePoint)) {
      case Character.CONTROL,
          Character.LINE_SEPARATOR,
          Character.PARAGRAPH_SEPARATOR,
          Character.SURROGATE ->
          false;
      case Character.FORMAT -> codePoint == ZERO_WIDTH_NON_JOINER || codePoint == ZERO_WIDTH_JOINER;
      default -> true;
    };
  }
}
