package org.lynchet.geometry.guidance;

import java.util.ArrayList;
import java.util.List;

/**
 * Finds which part of a line of constant offset belongs to which segment of a curve.
 *
 * <p>What lies within the offset <i>r</i> of a segment is a band with round ends. Seen from the
 * offset's side, with y along the curve, its outer edge is a function of y: an arc around the first
 * vertex up to <i>a</i>, a straight line up to <i>b</i>, an arc around the second vertex. The line
 * of constant offset is the greatest of these functions. A curve that rises in y is itself a
 * function of y; then of two segments the later one, once it is the greater, stays so, and a stack
 * finds all parts in one walk along the curve.
 */
final class OffsetCourse {
  private static final int HALVINGS = 80;

  private final Course course;
  private final double side;
  private final double radius;

  /**
   * Gets ready.
   *
   * @param offset in metres, positive to the right
   */
  OffsetCourse(Course course, double offset) {
    this.course = course;
    this.side = offset < 0 ? -1 : 1;
    this.radius = Math.abs(offset);
  }

  /**
   * A part of the line.
   *
   * @param segment the segment that it belongs to
   * @param fromY where it begins
   * @param toY where it ends
   */
  record Part(int segment, double fromY, double toY) {}

  /** The parts, rising in y, each beginning where the one before ends. */
  List<Part> parts() {
    int[] segments = new int[course.segments()];
    double[] from = new double[course.segments()];
    int size = 0;
    for (int k = 0; k < course.segments(); k++) {
      while (size > 1 && value(k, from[size - 1]) > value(segments[size - 1], from[size - 1])) {
        size--;
      }
      from[size] = size == 0 ? straightFrom(k) : takesOver(segments[size - 1], k, from[size - 1]);
      segments[size++] = k;
    }
    List<Part> parts = new ArrayList<>(size);
    for (int i = 0; i < size; i++) {
      double to = i + 1 < size ? from[i + 1] : straightTo(segments[i]);
      if (to > from[i]) {
        parts.add(new Part(segments[i], from[i], to));
      }
    }
    return parts;
  }

  /** Where a segment's edge begins to be straight. */
  double straightFrom(int segment) {
    return course.y(segment) - radius * side * course.directionX(segment);
  }

  /** Where a segment's edge ends to be straight. */
  double straightTo(int segment) {
    return course.y(segment + 1) - radius * side * course.directionX(segment);
  }

  /** The outer edge of a segment's band at y, counted to the offset's side. */
  private double value(int segment, double y) {
    double from = straightFrom(segment);
    if (y < from) {
      return aroundVertex(segment, y);
    }
    if (y > straightTo(segment)) {
      return aroundVertex(segment + 1, y);
    }
    double slope = side * course.directionX(segment) / course.directionY(segment);
    return side * course.x(segment) + radius * course.directionY(segment) + (y - from) * slope;
  }

  private double aroundVertex(int vertex, double y) {
    double dy = y - course.y(vertex);
    double square = radius * radius - dy * dy;
    return square < 0 ? Double.NEGATIVE_INFINITY : side * course.x(vertex) + Math.sqrt(square);
  }

  /** The place of the line at y, its x. */
  double xAt(int segment, double y) {
    return side * value(segment, y);
  }

  /** Where the later of two segments becomes the greater. */
  private double takesOver(int earlier, int later, double from) {
    if (later == earlier + 1 && straightTo(earlier) <= straightFrom(later)) {
      // Both have the arc between in common.
      return Math.max(from, straightTo(earlier));
    }
    double low = from;
    double high = course.y(earlier + 1) + radius;
    for (int i = 0; i < HALVINGS && low < high; i++) {
      double middle = low + (high - low) / 2;
      if (middle <= low || middle >= high) {
        break;
      }
      if (value(later, middle) > value(earlier, middle)) {
        high = middle;
      } else {
        low = middle;
      }
    }
    return high;
  }

  /**
   * The direction of the line at y as an angle: radians from the y axis, positive to the offset's
   * side.
   */
  double direction(int segment, double y) {
    if (y < straightFrom(segment)) {
      return -angle(segment, y);
    }
    if (y > straightTo(segment)) {
      return -angle(segment + 1, y);
    }
    return Math.atan2(side * course.directionX(segment), course.directionY(segment));
  }

  /** The angle at which the line at y is seen from a vertex; radians from the offset's side. */
  double angle(int vertex, double y) {
    double sine = radius == 0 ? 0 : (y - course.y(vertex)) / radius;
    return Math.asin(Math.max(-1, Math.min(1, sine)));
  }

  double radius() {
    return radius;
  }

  double side() {
    return side;
  }
}
