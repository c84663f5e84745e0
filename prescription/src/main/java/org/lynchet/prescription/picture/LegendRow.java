package org.lynchet.prescription.picture;

import java.util.List;

/**
 * One row of the legend: a sign, one or two lines of text beside it, and an area at the right.
 *
 * @param sign what is drawn at the left
 * @param first the upper line
 * @param second the lower line; empty for none
 * @param area the area; empty for none
 * @param bold whether the upper line and the area are bold
 */
record LegendRow(Sign sign, String first, String second, String area, boolean bold) {
  /** Width of a row in points. */
  static final double WIDTH = 240;

  static final double SIGN_WIDTH = 26;
  static final double SIZE = 9.5;

  private static final double TEXT_LEFT = SIGN_WIDTH + 7;
  private static final double BASELINE = 9;
  private static final double SECOND_BASELINE = 19.5;
  private static final double ONE_LINE = 15.5;
  private static final double TWO_LINES = 24.5;

  /** Draws the sign of a row into a box. */
  @FunctionalInterface
  interface Sign {
    /** No sign. */
    Sign NONE = box -> List.of();

    List<Mark> marks(Box box);

    /** A sample of a look. */
    static Sign of(Look look) {
      return box ->
          List.of(
              Mark.Area.of(Outline.of(box), look),
              new Mark.Line(Outline.of(box), Scene.INK, 0.7, 0));
    }
  }

  /** The room for the upper line of a row with an area, in points. */
  static double roomBeside(String area) {
    return WIDTH - TEXT_LEFT - TextWidth.of(area, SIZE, true) - 6;
  }

  /** The room for the lower line. */
  static double roomBelow() {
    return WIDTH - TEXT_LEFT;
  }

  double height() {
    return second.isEmpty() ? ONE_LINE : TWO_LINES;
  }

  void paint(double left, double top, List<Mark> marks) {
    double signBottom = top + (second.isEmpty() ? BASELINE + 2 : SECOND_BASELINE);
    marks.addAll(sign.marks(new Box(left, top + 1, left + SIGN_WIDTH, signBottom)));
    marks.add(text(Mark.Text.left(first, left + TEXT_LEFT, top + BASELINE, SIZE)));
    if (!second.isEmpty()) {
      marks.add(Mark.Text.left(second, left + TEXT_LEFT, top + SECOND_BASELINE, SIZE));
    }
    if (!area.isEmpty()) {
      marks.add(text(Mark.Text.right(area, left + WIDTH, top + BASELINE, SIZE)));
    }
  }

  private Mark.Text text(Mark.Text text) {
    return bold ? text.inBold() : text;
  }
}
