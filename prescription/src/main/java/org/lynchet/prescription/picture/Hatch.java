package org.lynchet.prescription.picture;

/**
 * A pattern over a fill.
 *
 * @param dots dots rather than lines
 * @param angleDegrees direction of the lines, clockwise from the x axis of the page, [0, 180)
 * @param spacing distance of neighbouring lines or dots, in points
 * @param width of a line or of a dot, in points
 * @param ink its colour, 0xRRGGBB
 */
record Hatch(boolean dots, double angleDegrees, double spacing, double width, int ink) {

  static Hatch lines(double angleDegrees, double spacing, double width, int ink) {
    double angle = angleDegrees % 180;
    return new Hatch(false, angle < 0 ? angle + 180 : angle, spacing, width, ink);
  }

  static Hatch dots(double angleDegrees, double spacing, double width, int ink) {
    double angle = angleDegrees % 180;
    return new Hatch(true, angle < 0 ? angle + 180 : angle, spacing, width, ink);
  }

  /**
   * The last middle of a line or dot before a place, in a frame turned to the direction: the same
   * wherever the area lies, so that neighbours fit together.
   */
  double firstBefore(double place) {
    return (Math.floor(place / spacing) - 0.5) * spacing;
  }
}
