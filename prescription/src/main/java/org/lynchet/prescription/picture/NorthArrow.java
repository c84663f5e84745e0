package org.lynchet.prescription.picture;

import java.util.List;

/** Shows where north is: always up. */
final class NorthArrow {
  static final double WIDTH = 14;
  static final double HEIGHT = 28;

  private NorthArrow() {}

  /** An arrow with an N under it. */
  static List<Mark> marks(double left, double top) {
    double middle = left + WIDTH / 2;
    double foot = top + 18;
    Outline dark = Outline.ring(middle, top, left, foot, middle, foot - 5);
    Outline light = Outline.ring(middle, top, left + WIDTH, foot, middle, foot - 5);
    return List.of(
        Mark.Area.plain(dark, Scene.INK),
        Mark.Area.plain(light, Scene.WHITE),
        new Mark.Line(light, Scene.INK, 0.8, 0),
        new Mark.Line(dark, Scene.INK, 0.8, 0),
        new Mark.Text("N", middle, top + HEIGHT, 10, true, Mark.Anchor.MIDDLE, false));
  }
}
