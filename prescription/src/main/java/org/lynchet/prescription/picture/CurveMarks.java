package org.lynchet.prescription.picture;

import java.util.ArrayList;
import java.util.List;
import org.locationtech.jts.geom.Coordinate;
import org.lynchet.geometry.guidance.Curve;

/**
 * Draws a curve: over the field and a little beyond it, with A where passes begin, and an arrow to
 * B.
 */
final class CurveMarks implements GuidanceMarks {
  /** Farther from the field than this share of its width, the curve is left out. */
  private static final double FAR = 0.2;

  private static final double SIZE = 12;
  private static final double LETTER = 12;
  private static final double ARROW = 9;
  private static final double WIDTH = 1.5;
  private static final double CASING = 3.5;

  /** Distance of a letter's middle from the end of the line, in points. */
  private static final double BESIDE = 8;

  private static final int MOST_STEPS = 20;

  private final Curve curve;
  private final FieldEdge.Reach across;
  private final FieldEdge.Reach along;

  /**
   * The marks of a curve.
   *
   * @param edge the field's edge by offset and place along the curve
   */
  CurveMarks(Curve curve, FieldEdge edge) {
    this.curve = curve;
    this.across = edge.across();
    FieldEdge.Reach here = edge.along(-BESIDE, BESIDE);
    this.along = here.isEmpty() ? edge.along(across.from(), across.to()) : here;
  }

  @Override
  public double outsideMetres() {
    return across.from() > 0 ? -across.from() : Math.max(0, -across.to());
  }

  @Override
  public boolean isDrawn() {
    return Math.abs(outsideMetres()) <= FAR * (across.to() - across.from());
  }

  @Override
  public List<Coordinate> places() {
    List<Coordinate> places = new ArrayList<>();
    for (Coordinate lonLat : curve.line(0, along.from(), along.to())) {
      places.add(curve.frame().toOffset(lonLat.x, lonLat.y));
    }
    return places;
  }

  @Override
  public List<Mark> marks(MapPlane plane, Labels labels) {
    List<Coordinate> line = new ArrayList<>();
    for (Coordinate lonLat : curve.line(0, along.from(), along.to())) {
      line.add(plane.fromLonLat(lonLat));
    }
    Coordinate tip = beyond(line.get(line.size() - 2), line.get(line.size() - 1), ARROW);
    Coordinate base = line.get(line.size() - 1);
    double dx = (tip.x - base.x) * 0.38;
    double dy = (tip.y - base.y) * 0.38;
    Outline course = Outline.lines();
    course.add(line);
    Outline head = Outline.rings();
    head.add(
        List.of(
            tip,
            new Coordinate(base.x - dy, base.y + dx),
            new Coordinate(base.x + dy, base.y - dx)));
    return List.of(
        new Mark.Line(course, Scene.WHITE, CASING, 0),
        new Mark.Line(course, Scene.INK, WIDTH, 0),
        Mark.Area.plain(head, Scene.INK),
        letter("A", freePlace(line.get(1), line.get(0), labels)),
        letter("B", freePlace(base, tip, labels)));
  }

  /** The first place from an end outwards where a letter covers no other label. */
  private static Coordinate freePlace(Coordinate from, Coordinate end, Labels labels) {
    for (int i = 0; i < MOST_STEPS; i++) {
      Coordinate at = beyond(from, end, BESIDE + 2 * i);
      Box box = Box.around(at.x, at.y, LETTER, LETTER);
      if (labels.isFree(box)) {
        labels.take(box);
        return at;
      }
    }
    return beyond(from, end, BESIDE);
  }

  private static Coordinate beyond(Coordinate from, Coordinate end, double points) {
    double t = points / Math.max(1e-9, from.distance(end));
    return new Coordinate(end.x + t * (end.x - from.x), end.y + t * (end.y - from.y));
  }

  private static Mark letter(String letter, Coordinate at) {
    return Mark.Text.label(letter, at.x, at.y, SIZE, true);
  }
}
