package org.lynchet.prescription.picture;

/**
 * Makes a user's text fit to be shown: one line, without control characters.
 *
 * <p>Control characters, lone surrogates, private and unassigned ones, and those that turn the
 * direction of writing around (they could make a rate read backwards) become U+FFFD, the
 * replacement character; breaks and tabs become spaces.
 */
final class SafeText {
  private static final int REPLACEMENT = 0xFFFD;

  /** Some scripts cannot be written without these two, although they count as format characters. */
  private static final int NON_JOINER = 0x200C;

  private static final int JOINER = 0x200D;

  private SafeText() {}

  static String of(String text) {
    StringBuilder safe = new StringBuilder(text.length());
    text.codePoints().map(SafeText::safe).forEach(safe::appendCodePoint);
    return safe.toString();
  }

  private static int safe(int c) {
    if (Character.isWhitespace(c)) {
      return ' ';
    }
    if (c == NON_JOINER || c == JOINER) {
      return c;
    }
    return switch (Character.getType(c)) {
      case Character.CONTROL,
          Character.SURROGATE,
          Character.PRIVATE_USE,
          Character.UNASSIGNED,
          Character.FORMAT ->
          REPLACEMENT;
      default -> c;
    };
  }
}
