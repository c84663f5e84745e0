package org.lynchet.prescription.intake;

import org.locationtech.jts.algorithm.Angle;
import org.locationtech.jts.geom.Coordinate;

/** Finds the point in which a line turns most. */
final class SharpestTurn {
  private SharpestTurn() {}

  /** Index of the point, of several the first; at least 3 points, neighbours different. */
  static int of(Coordinate[] line) {
    int sharpest = 1;
    double most = -1;
    for (int i = 1; i + 1 < line.length; i++) {
      double turn = Math.PI - Angle.angleBetween(line[i - 1], line[i], line[i + 1]);
      if (turn > most) {
        most = turn;
        sharpest = i;
      }
    }
    return sharpest;
  }
}
