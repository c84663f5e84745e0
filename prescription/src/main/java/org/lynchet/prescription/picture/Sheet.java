package org.lynchet.prescription.picture;

import java.util.ArrayList;
import java.util.List;

/**
 * Gathers what stands on one sheet of paper, portrait, 8.25 by 11 inches, which fits both letter
 * and A4. Places are points of 1/72 inch from the top left corner, x to the right and y down; the y
 * of a text is its baseline. What is added later lies over what was added before.
 */
public final class Sheet {
  /** Width in points. */
  public static final double WIDTH = 594;

  /** Height in points. */
  public static final double HEIGHT = 792;

  /** Free room at each edge: no printer reaches it. */
  public static final double MARGIN = 28;

  /** Sizes of titles, the largest that fits is taken. */
  private static final double[] TITLES = {22, 18, 15, 13};

  private static final double TITLE_BASELINE = 17;

  private final List<Placed> parts = new ArrayList<>();

  /**
   * Marks in a frame of their own.
   *
   * @param left where x is 0
   * @param top where y is 0
   * @param scale points of the sheet in one of theirs
   */
  record Placed(List<Mark> marks, double left, double top, double scale) {

    Placed {
      marks = List.copyOf(marks);
    }
  }

  /**
   * The title at the top, as large as fits.
   *
   * @param name what may be cut
   * @param more what follows it and may not
   */
  public void title(String name, String more) {
    double room = WIDTH - 2 * MARGIN;
    double size = TITLES[TITLES.length - 1];
    for (double one : TITLES) {
      if (size < one && widthOf(name + more, one, true) <= room) {
        size = one;
      }
    }
    String fitting = cut(name, room - widthOf(more, size, true), size, true);
    bold(fitting + more, MARGIN, MARGIN + TITLE_BASELINE, size);
  }

  /** A text that begins at x. */
  public void text(String text, double x, double y, double size) {
    add(Mark.Text.left(SafeText.of(text), x, y, size));
  }

  /** A text in bold that begins at x. */
  public void bold(String text, double x, double y, double size) {
    add(Mark.Text.left(SafeText.of(text), x, y, size).inBold());
  }

  /** A text that ends at x. */
  public void right(String text, double x, double y, double size) {
    add(Mark.Text.right(SafeText.of(text), x, y, size));
  }

  /** A line between two places. */
  public void line(double fromX, double fromY, double toX, double toY, double width) {
    add(new Mark.Line(Outline.line(fromX, fromY, toX, toY), Scene.INK, width, 0));
  }

  /** How wide a text is on the sheet, in points. */
  public static double widthOf(String text, double size, boolean bold) {
    return FontWidths.get().of(SafeText.of(text), size, bold);
  }

  /** As much of a text as fits. */
  public static String cut(String text, double width, double size, boolean bold) {
    return FontWidths.get().cut(SafeText.of(text), width, size, bold);
  }

  private void add(Mark mark) {
    place(List.of(mark), 0, 0, 1);
  }

  /** Adds marks of a frame of their own. */
  void place(List<Mark> marks, double left, double top, double scale) {
    parts.add(new Placed(marks, left, top, scale));
  }

  List<Placed> parts() {
    return parts;
  }
}
