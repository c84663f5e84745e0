package org.lynchet.geometry.guidance;

import java.util.ArrayList;
import java.util.List;

/**
 * Draws a line of constant offset of a curve as points that rise in y.
 *
 * <p>Arcs get points as close as it takes for the chords to keep to the bow; straight stretches get
 * some so that they keep to it for a reader that draws them straight in longitude and latitude.
 */
final class OffsetLine {
  /** Points nearer than this, in metres, are one. */
  private static final double SAME = 1e-7;

  private final Course course;
  private final OffsetCourse offset;
  private final double step;
  private final double longest;
  private final List<LinePoint> points = new ArrayList<>();

  private OffsetLine(Course course, OffsetCourse offset, double bow, double longest) {
    this.course = course;
    this.offset = offset;
    this.longest = longest;
    double cosine = 1 - bow / Math.max(offset.radius(), bow);
    this.step = 2 * Math.acos(Math.max(cosine, Math.cos(Math.PI / 8)));
  }

  /**
   * Draws from one y to another.
   *
   * @param bow how far a chord may be from the arc, in metres
   * @param longest the longest straight stretch, in metres
   */
  static List<LinePoint> draw(
      Course course, double offsetMetres, double fromY, double toY, double bow, double longest) {
    OffsetCourse offset = new OffsetCourse(course, offsetMetres);
    OffsetLine line = new OffsetLine(course, offset, bow, longest);
    for (OffsetCourse.Part part : offset.parts()) {
      double from = Math.max(fromY, part.fromY());
      double to = Math.min(toY, part.toY());
      if (from < to) {
        line.add(part.segment(), from, to);
      }
    }
    return line.points;
  }

  private void add(int segment, double from, double to) {
    double a = offset.straightFrom(segment);
    double b = offset.straightTo(segment);
    if (from < a) {
      addArc(segment, segment, from, Math.min(a, to));
    }
    if (from < b && to > a) {
      addStraight(segment, Math.max(from, a), Math.min(b, to));
    }
    if (to > b) {
      addArc(segment + 1, segment, Math.max(b, from), to);
    }
  }

  private void addArc(int vertex, int segment, double from, double to) {
    double first = offset.angle(vertex, from);
    double last = offset.angle(vertex, to);
    int parts = Math.max(1, (int) Math.ceil((last - first) / step));
    for (int i = 0; i <= parts; i++) {
      double angle = first + (last - first) * i / parts;
      double y = course.y(vertex) + offset.radius() * Math.sin(angle);
      // The ends of the arc are exact, so that neighbours begin where it ends.
      y = i == 0 ? from : i == parts ? to : y;
      addPoint(offset.xAt(segment, y), y, alongAround(vertex, angle));
    }
  }

  private double alongAround(int vertex, double angle) {
    double begin =
        vertex == 0
            ? angle
            : -Math.atan2(
                offset.side() * course.directionX(vertex - 1), course.directionY(vertex - 1));
    double turned = Math.max(0, Math.min(Math.abs(course.turn(vertex)), angle - begin));
    return course.alongBefore(vertex) + turned;
  }

  private void addStraight(int segment, double from, double to) {
    double length = (to - from) / course.directionY(segment);
    int parts = Math.max(1, (int) Math.ceil(length / longest));
    for (int i = 0; i <= parts; i++) {
      double y = i == parts ? to : from + (to - from) * i / parts;
      double metres = (y - offset.straightFrom(segment)) / course.directionY(segment);
      addPoint(offset.xAt(segment, y), y, course.alongSegment(segment) + metres);
    }
  }

  private void addPoint(double x, double y, double along) {
    if (!points.isEmpty()) {
      LinePoint last = points.get(points.size() - 1);
      boolean same = Math.abs(last.x() - x) < SAME && Math.abs(last.y() - y) < SAME;
      if (same && Math.abs(last.alongMetres() - along) < SAME) {
        return;
      }
      if (same) {
        // A corner, where a piece of the curve has no part in the line: one place, twice along.
        points.add(new LinePoint(last.x(), last.y(), along));
        return;
      }
    }
    points.add(new LinePoint(x, y, along));
  }
}
