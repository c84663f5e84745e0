package org.lynchet.prescription.picture;

import java.util.Optional;
import java.util.function.Predicate;

/** Finds the place nearest to a point where a label lies on no other, and takes it. */
final class FreePlace {
  /** How far apart tried places are, in points. */
  private static final double STEP = 3;

  private static final int DIRECTIONS = 24;

  private final Labels labels;
  private final Box map;

  FreePlace(Labels labels, Box map) {
    this.labels = labels;
    this.map = map;
  }

  /** Takes a place around the nearest centre that is free; empty if the map is full. */
  Optional<Box> take(double centreX, double centreY, double width, double height) {
    double all = Math.hypot(map.width(), map.height());
    return take(centreX, centreY, width, height, box -> true, all);
  }

  /** The same, but only a place that is good, at most so far away. */
  Optional<Box> take(
      double centreX,
      double centreY,
      double width,
      double height,
      Predicate<Box> good,
      double farthest) {
    for (double distance = 0; distance <= farthest; distance += STEP) {
      for (int i = 0; i < (distance > 0 ? DIRECTIONS : 1); i++) {
        double angle = 2 * Math.PI * i / DIRECTIONS;
        Box box =
            Box.around(
                centreX + distance * Math.sin(angle),
                centreY + distance * Math.cos(angle),
                width,
                height);
        if (labels.isFree(box) && good.test(box)) {
          labels.take(box);
          return Optional.of(box);
        }
      }
    }
    return Optional.empty();
  }
}
