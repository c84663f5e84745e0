package org.lynchet.geometry.coverage;

import org.jspecify.annotations.Nullable;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.LineString;
import org.locationtech.jts.geom.util.LinearComponentExtracter;

/**
 * Finds the place of some lines that is nearest to a place, if it is near enough.
 *
 * <p>Edges that follow each other lie near each other, so boxes around eight of them, around eight
 * such boxes and so on, in the order in which the lines run, make a tree without any sorting. A box
 * is left out if it is no nearer than the nearest edge known; that is first the edge found before,
 * since places asked for one after the other mostly lie near each other too.
 */
final class NearestEdge {
  /** A box holds two to this power of the boxes or edges below it. */
  private static final int BITS = 3;

  private static final int NONE = -1;

  private final double[] fromX;
  private final double[] fromY;
  private final double[] toX;
  private final double[] toY;
  private final int size;

  /** At each level, the lowest first: least x, least y, greatest x, greatest y of each box. */
  private final double[][] boxes;

  /** The edge found before. */
  private int found;

  private int best = NONE;
  private double leastSquare;

  /** Takes the lines of a geometry in. */
  NearestEdge(Geometry lines) {
    int most = lines.getNumPoints();
    fromX = new double[most];
    fromY = new double[most];
    toX = new double[most];
    toY = new double[most];
    int count = 0;
    for (Object line : LinearComponentExtracter.getLines(lines)) {
      Coordinate[] at = ((LineString) line).getCoordinates();
      for (int i = 1; i < at.length; i++) {
        fromX[count] = at[i - 1].x;
        fromY[count] = at[i - 1].y;
        toX[count] = at[i].x;
        toY[count] = at[i].y;
        count++;
      }
    }
    size = count;
    boxes = boxes();
  }

  private double[][] boxes() {
    int levels = 0;
    for (int left = size; left > 1 << BITS; left = groups(left)) {
      levels++;
    }
    double[][] result = new double[levels][];
    int below = size;
    for (int level = 0; level < levels; level++) {
      int count = groups(below);
      double[] box = new double[4 * count];
      for (int b = 0; b < count; b++) {
        box[4 * b] = Double.POSITIVE_INFINITY;
        box[4 * b + 1] = Double.POSITIVE_INFINITY;
        box[4 * b + 2] = Double.NEGATIVE_INFINITY;
        box[4 * b + 3] = Double.NEGATIVE_INFINITY;
      }
      for (int i = 0; i < below; i++) {
        int b = 4 * (i >> BITS);
        double[] lower = level == 0 ? edgeBox(i) : result[level - 1];
        int at = level == 0 ? 0 : 4 * i;
        box[b] = Math.min(box[b], lower[at]);
        box[b + 1] = Math.min(box[b + 1], lower[at + 1]);
        box[b + 2] = Math.max(box[b + 2], lower[at + 2]);
        box[b + 3] = Math.max(box[b + 3], lower[at + 3]);
      }
      result[level] = box;
      below = count;
    }
    return result;
  }

  private static int groups(int below) {
    return (below + (1 << BITS) - 1) >> BITS;
  }

  private double[] edgeBox(int edge) {
    return new double[] {
      Math.min(fromX[edge], toX[edge]),
      Math.min(fromY[edge], toY[edge]),
      Math.max(fromX[edge], toX[edge]),
      Math.max(fromY[edge], toY[edge])
    };
  }

  /**
   * How far the nearest place is.
   *
   * @param reach how far it may be; beyond, nothing is looked for
   * @return infinite if nothing is within reach
   */
  double distance(Coordinate at, double reach) {
    return find(at.x, at.y, reach) ? Math.sqrt(leastSquare) : Double.POSITIVE_INFINITY;
  }

  /**
   * The nearest place.
   *
   * @param reach how far it may be; beyond, nothing is looked for
   * @return null if nothing is within reach
   */
  @Nullable Coordinate to(Coordinate at, double reach) {
    if (!find(at.x, at.y, reach)) {
      return null;
    }
    double t = nearestShare(best, at.x, at.y);
    return t == 1
        ? new Coordinate(toX[best], toY[best])
        : new Coordinate(
            fromX[best] + t * (toX[best] - fromX[best]),
            fromY[best] + t * (toY[best] - fromY[best]));
  }

  /** Finds the nearest edge; false if none is within reach. */
  private boolean find(double x, double y, double reach) {
    best = NONE;
    leastSquare = reach * reach;
    if (found < size) {
      tryEdge(found, x, y);
    }
    search(boxes.length, 0, x, y);
    if (best == NONE) {
      return false;
    }
    found = best;
    return true;
  }

  /** Searches what a box of a level holds. */
  private void search(int level, int box, double x, double y) {
    int first = box << BITS;
    int last = first + (1 << BITS);
    if (level == 0) {
      last = Math.min(last, size);
      for (int edge = first; edge < last; edge++) {
        tryEdge(edge, x, y);
      }
      return;
    }
    double[] inside = boxes[level - 1];
    last = Math.min(last, inside.length / 4);
    for (int b = first; b < last; b++) {
      int at = 4 * b;
      double dx = beyond(inside[at], x, inside[at + 2]);
      double dy = beyond(inside[at + 1], y, inside[at + 3]);
      if (dx * dx + dy * dy <= leastSquare) {
        search(level - 1, b, x, y);
      }
    }
  }

  /** How far a place is outside of a range; 0 inside. */
  private static double beyond(double least, double at, double greatest) {
    return at < least ? least - at : at > greatest ? at - greatest : 0;
  }

  /** Takes an edge if it is nearer than the nearest so far; of equally near ones the first. */
  private void tryEdge(int edge, double x, double y) {
    double t = nearestShare(edge, x, y);
    double dx = x - fromX[edge] - t * (toX[edge] - fromX[edge]);
    double dy = y - fromY[edge] - t * (toY[edge] - fromY[edge]);
    double square = dx * dx + dy * dy;
    if (square < leastSquare || (square == leastSquare && edge < best)) {
      leastSquare = square;
      best = edge;
    }
  }

  /** How far along an edge, 0 to 1, its place nearest to another lies. */
  private double nearestShare(int edge, double x, double y) {
    double ux = toX[edge] - fromX[edge];
    double uy = toY[edge] - fromY[edge];
    double along = ux * (x - fromX[edge]) + uy * (y - fromY[edge]);
    if (along <= 0) {
      return 0;
    }
    double square = ux * ux + uy * uy;
    return along >= square ? 1 : along / square;
  }
}
