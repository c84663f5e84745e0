package org.lynchet.formats;

/** Takes the beginning of a text; no surrogate pair is cut in two. */
public final class Excerpt {
  private Excerpt() {}

  /**
   * A text as a fault shows it: all, or its first characters and three points.
   *
   * @param most characters (chars) that are shown, at least one
   */
  public static String of(String text, int most) {
    return text.length() <= most ? text : start(text, most) + "...";
  }

  /**
   * All of a text, or its first characters.
   *
   * @param most characters (chars) that are taken, at least one
   */
  public static String start(String text, int most) {
    if (text.length() <= most) {
      return text;
    }
    boolean halved = Character.isHighSurrogate(text.charAt(most - 1));
    return text.substring(0, halved ? most - 1 : most);
  }
}
