package org.lynchet.prescription.picture;

import java.util.function.ToDoubleFunction;

/**
 * Estimates how wide a text is, without a font at hand.
 *
 * <p>The viewer of an SVG picks its own sans-serif font, so the estimate is on the wide side: about
 * the advance widths of DejaVu Sans, the widest of the usual ones (Arial and Helvetica are about a
 * tenth narrower). Scripts with wide characters count as one em each.
 */
final class TextWidth {
  /** Height of a digit, as a share of the font's size. */
  static final double DIGIT_HEIGHT = 0.72;

  private static final double BOLD = 1.12;
  private static final String NARROW = "iljI.,:;|!'()[]";
  private static final String WIDE = "mwMW%@\u2026\u2014";
  private static final int FIRST_WIDE_SCRIPT = 0x1100;

  private TextWidth() {}

  /** The width of a text in points. */
  static double of(String text, double size, boolean bold) {
    double ems = text.codePoints().mapToDouble(TextWidth::ems).sum();
    return ems * size * (bold ? BOLD : 1);
  }

  /** The text, or as much of it as fits with an ellipsis after it. */
  static String cut(String text, double width, double size, boolean bold) {
    return cut(text, width, part -> of(part, size, bold));
  }

  /** The same, by another measure. */
  static String cut(String text, double width, ToDoubleFunction<String> measure) {
    if (measure.applyAsDouble(text) <= width) {
      return text;
    }
    int end = text.length();
    while (end > 0 && measure.applyAsDouble(text.substring(0, end) + "\u2026") > width) {
      end = text.offsetByCodePoints(end, -1);
    }
    return text.substring(0, end).stripTrailing() + "\u2026";
  }

  private static double ems(int c) {
    if (c >= FIRST_WIDE_SCRIPT && c != 0x2026) {
      return 1.05;
    }
    if (NARROW.indexOf(c) >= 0) {
      return 0.4;
    }
    if (WIDE.indexOf(c) >= 0) {
      return 1.02;
    }
    if (c == ' ' || c == 0xA0) {
      return 0.33;
    }
    return Character.isUpperCase(c) ? 0.76 : 0.64;
  }
}
