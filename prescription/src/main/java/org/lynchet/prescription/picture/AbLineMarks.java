package org.lynchet.prescription.picture;

import java.util.List;
import org.locationtech.jts.geom.Coordinate;

/**
 * Draws the AB line: over the field and a little beyond it, with A where passes begin, and an arrow
 * to B. Where a pass number stands between A and the field, the line begins at the field.
 *
 * <p>The letters mark the ends of what is drawn; the line that machines steer by has no ends.
 */
final class AbLineMarks implements GuidanceMarks {
  /** Farther from the field than this share of its width, the line is left out. */
  private static final double FAR = 0.2;

  private static final double SIZE = 12;
  private static final double LETTER = 12;
  private static final double ARROW = 9;
  private static final double WIDTH = 1.5;
  private static final double CASING = 3.5;

  /** Room between a letter and other labels, in points. */
  private static final double GAP = 1.5;

  private static final double TAIL_ROOM = CASING + 2 * GAP;
  private static final double STEP = 2;
  private static final int MOST_STEPS = 40;

  private final FieldEdge edge;
  private final FieldEdge.Reach across;

  AbLineMarks(FieldEdge edge) {
    this.edge = edge;
    this.across = edge.across();
  }

  @Override
  public double outsideMetres() {
    if (across.from() > 0) {
      return -across.from();
    }
    return across.to() < 0 ? -across.to() : 0;
  }

  @Override
  public boolean isDrawn() {
    return Math.abs(outsideMetres()) <= FAR * (across.to() - across.from());
  }

  @Override
  public List<Coordinate> places() {
    FieldEdge.Reach along = along(0);
    return List.of(new Coordinate(0, along.from()), new Coordinate(0, along.to()));
  }

  @Override
  public List<Mark> marks(MapPlane plane, Labels labels) {
    FieldEdge.Reach reach = along(plane.reachAcross(LETTER, LETTER));
    double metresPerPoint = 1 / plane.pointsPerMetre();
    double half = plane.reachAlong(LETTER, LETTER);
    double tip = reach.to() + (ARROW + 5) * metresPerPoint;
    double a = freePlace(plane, labels, reach.from() - half - 2 * metresPerPoint, -metresPerPoint);
    double b = freePlace(plane, labels, tip + half + metresPerPoint, metresPerPoint);
    double from = isTailFree(plane, labels, a + half, reach.from()) ? a + half : reach.from();
    Outline line = Outline.lines();
    Coordinate base = plane.fromOffset(0, tip - ARROW * metresPerPoint);
    line.add(List.of(plane.fromOffset(0, from), base));
    Outline head = Outline.rings();
    double wing = 0.38 * ARROW * metresPerPoint;
    head.add(
        List.of(
            plane.fromOffset(0, tip),
            plane.fromOffset(-wing, tip - ARROW * metresPerPoint),
            plane.fromOffset(wing, tip - ARROW * metresPerPoint)));
    return List.of(
        new Mark.Line(line, Scene.WHITE, CASING, 0),
        new Mark.Line(line, Scene.INK, WIDTH, 0),
        Mark.Area.plain(head, Scene.INK),
        letter("A", plane.fromOffset(0, a)),
        letter("B", plane.fromOffset(0, b)));
  }

  private FieldEdge.Reach along(double halfWidth) {
    FieldEdge.Reach here = edge.along(-halfWidth, halfWidth);
    return here.isEmpty() ? edge.along(across.from(), across.to()) : here;
  }

  /** The first place from a start outwards where a letter covers no other label. */
  private static double freePlace(MapPlane plane, Labels labels, double start, double point) {
    double along = start;
    for (int i = 0; i < MOST_STEPS; i++) {
      Coordinate centre = plane.fromOffset(0, along);
      Box box = Box.around(centre.x, centre.y, LETTER, LETTER);
      if (labels.isFree(box.shrunk(-GAP, -GAP))) {
        labels.take(box);
        return along;
      }
      along += STEP * point;
    }
    return start;
  }

  /** Whether the line meets no label between its letter and the field; if not it has no tail. */
  private static boolean isTailFree(MapPlane plane, Labels labels, double from, double to) {
    double step = STEP / plane.pointsPerMetre();
    for (double along = from + step; along < to; along += step) {
      Coordinate at = plane.fromOffset(0, along);
      if (!labels.isFree(Box.around(at.x, at.y, TAIL_ROOM, TAIL_ROOM))) {
        return false;
      }
    }
    return true;
  }

  /** The line as a sign for the legend. */
  static List<Mark> sign(Box box) {
    double y = box.centreY();
    double base = box.right() - ARROW;
    double wing = 0.38 * ARROW;
    Outline head = Outline.ring(box.right(), y, base, y - wing, base, y + wing);
    return List.of(
        new Mark.Line(Outline.line(box.left(), y, base, y), Scene.INK, WIDTH, 0),
        Mark.Area.plain(head, Scene.INK));
  }

  private static Mark letter(String letter, Coordinate at) {
    return Mark.Text.label(letter, at.x, at.y, SIZE, true);
  }
}
