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
  private double least = Double.POSITIVE_INFINITY;
  private double greatest = Double.NEGATIVE_INFINITY;
  private double first = Double.POSITIVE_INFINITY;
  private double last = Double.NEGATIVE_INFINITY;

  CurveMarks(Curve curve, FieldEdge edge) {
    this.curve = curve;
    for (Coordinate at : edge.vertices()) {
      double offset = curve.offsetMetres(at.x, at.y);
      double along = curve.alongMetres(at.x, at.y);
      least = Math.min(least, offset);
      greatest = Math.max(greatest, offset);
      first = Math.min(first, along);
      last = Math.max(last, along);
    }
  }

  @Override
  public double outsideMetres() {
    return least > 0 ? -least : greatest < 0 ? -greatest : 0;
  }

  @Override
  public boolean isDrawn() {
    return Math.abs(outsideMetres()) <= FAR * (greatest - least);
  }

  @Override
  public List<Coordinate> places() {
    List<Coordinate> places = new ArrayList<>();
    for (Coordinate lonLat : curve.line(0, first, last)) {
      places.add(curve.frame().toOffset(lonLat.x, lonLat.y));
    }
    return places;
  }

  @Override
  public List<Mark> marks(MapPlane plane, Labels labels) {
    List<Coordinate> line = new ArrayList<>();
    for (Coordinate lonLat : curve.line(0, first, last)) {
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
