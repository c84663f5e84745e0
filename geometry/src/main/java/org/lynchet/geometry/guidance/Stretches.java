package org.lynchet.geometry.guidance;

import java.util.ArrayList;
import java.util.List;

/** Takes a stretch out of a line of constant offset. */
final class Stretches {
  private Stretches() {}

  /**
   * The points from one place along the curve to another.
   *
   * @param line points that rise along the curve
   */
  static List<LinePoint> between(List<LinePoint> line, double fromAlong, double toAlong) {
    List<LinePoint> stretch = new ArrayList<>();
    for (int i = 0; i < line.size(); i++) {
      LinePoint point = line.get(i);
      if (i > 0) {
        addIfBetween(line.get(i - 1), fromAlong, point, stretch);
        addIfBetween(line.get(i - 1), toAlong, point, stretch);
      }
      if (point.alongMetres() >= fromAlong && point.alongMetres() <= toAlong) {
        add(point, stretch);
      }
    }
    return stretch;
  }

  private static void addIfBetween(
      LinePoint a, double along, LinePoint b, List<LinePoint> stretch) {
    if (a.alongMetres() < along && along < b.alongMetres()) {
      double t = (along - a.alongMetres()) / (b.alongMetres() - a.alongMetres());
      double x = a.x() + t * (b.x() - a.x());
      double y = a.y() + t * (b.y() - a.y());
      add(new LinePoint(x, y, along), stretch);
    }
  }

  private static void add(LinePoint point, List<LinePoint> stretch) {
    LinePoint last = stretch.isEmpty() ? null : stretch.get(stretch.size() - 1);
    if (last == null || last.x() != point.x() || last.y() != point.y()) {
      stretch.add(point);
    }
  }
}
