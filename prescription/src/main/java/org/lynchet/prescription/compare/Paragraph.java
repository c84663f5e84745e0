package org.lynchet.prescription.compare;

/** Breaks a sentence into lines of at most 100 columns; those after the first stand in. */
final class Paragraph {
  private static final int WIDTH = 100;

  private Paragraph() {}

  /**
   * The lines, each with a line feed.
   *
   * @param first what stands before the first line
   * @param rest what stands before the others
   */
  static String of(String first, String rest, String words) {
    StringBuilder text = new StringBuilder();
    StringBuilder line = new StringBuilder(first);
    boolean empty = true;
    for (String word : words.split(" ", -1)) {
      if (!empty && line.length() + 1 + word.length() > WIDTH) {
        text.append(line).append('\n');
        line.setLength(0);
        line.append(rest);
        empty = true;
      }
      line.append(empty ? "" : " ").append(word);
      empty = false;
    }
    return text.append(line).append('\n').toString();
  }
}
