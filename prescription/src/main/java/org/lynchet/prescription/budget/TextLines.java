package org.lynchet.prescription.budget;

import java.util.Locale;

/** Gathers lines of text, each ended by a line feed. */
public final class TextLines {
  private static final int WIDTH = 100;

  private final StringBuilder text = new StringBuilder();

  /** Adds a line, formatted. */
  public void line(String format, Object... values) {
    text.append(String.format(Locale.ROOT, format, values).stripTrailing()).append('\n');
  }

  /** Adds whole lines. */
  public void add(String lines) {
    text.append(lines);
  }

  /** Adds words as lines that fit; the second and all further ones are indented. */
  public void wrap(String words) {
    wrap("", words);
  }

  /**
   * The same, all lines indented.
   *
   * @param indent blanks, one less than stand before the first word; none for none
   */
  public void wrap(String indent, String words) {
    StringBuilder line = new StringBuilder(indent);
    for (String word : words.split(" ", -1)) {
      if (line.length() > indent.length() && line.length() + 1 + word.length() > WIDTH) {
        line("%s", line);
        line = new StringBuilder(indent).append(' ');
      }
      line.append(line.length() > 0 ? " " : "").append(word);
    }
    line("%s", line);
  }

  /** A name that fits a column. */
  public static String cut(String name, int width) {
    return name.codePointCount(0, name.length()) <= width
        ? name
        : name.substring(0, name.offsetByCodePoints(0, width - 2)) + "..";
  }

  @Override
  public String toString() {
    return text.toString();
  }
}
