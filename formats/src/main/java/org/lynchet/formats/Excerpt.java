package org.lynchet.formats;

/** Shortens what a fault shows of a file. */
public final class Excerpt {
  private Excerpt() {}

  /**
   * A text, or its first characters and three points; no surrogate pair is cut in two.
   *
   * @param most characters (chars) that are shown, at least one
   */
  public static String of(String text, int most) {
    if (text.length() <= most) {
      return text;
    }
    boolean halved = Character.isHighSurrogate(text.charAt(most - 1));
    return text.substring(0, halved ? most - 1 : most) + "...";
  }
}
