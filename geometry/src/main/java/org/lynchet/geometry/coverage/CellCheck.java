package org.lynchet.geometry.coverage;

import java.util.List;
import java.util.function.IntPredicate;
import org.locationtech.jts.algorithm.Orientation;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.operation.valid.IsValidOp;

/**
 * Checks that cells are still valid polygons after some of their vertices came new or moved a
 * little.
 *
 * <p>Only edges at such vertices can have come to touch another edge, so only they are held against
 * the others; everything else was valid before.
 */
final class CellCheck {
  /** More pairs of edges than this in a cell, and JTS with its index is the quicker. */
  private static final long MANY_PAIRS = 20_000;

  private final Vertices vertices;
  private final Rings.Place place;
  private final IntPredicate isNew;

  private CellCheck(Vertices vertices, Rings.Place place, IntPredicate isNew) {
    this.vertices = vertices;
    this.place = place;
    this.isNew = isNew;
  }

  /** Whether every cell is a valid polygon, its outer ring counter-clockwise, holes clockwise. */
  static boolean allValid(
      Vertices vertices, List<Cell> cells, Rings.Place place, IntPredicate isNew) {
    CellCheck check = new CellCheck(vertices, place, isNew);
    for (Cell cell : cells) {
      if (!check.isValid(cell.rings)) {
        return false;
      }
    }
    return true;
  }

  private boolean isValid(int[][] rings) {
    int edges = 0;
    for (int[] ring : rings) {
      edges += ring.length;
    }
    Coordinate[] from = new Coordinate[edges];
    Coordinate[] to = new Coordinate[edges];
    int[] fromVertex = new int[edges];
    int[] toVertex = new int[edges];
    boolean[] changed = new boolean[edges];
    int changes = 0;
    int e = 0;
    for (int r = 0; r < rings.length; r++) {
      int[] ring = rings[r];
      if (ring.length < 3) {
        return false;
      }
      int first = e;
      double twiceArea = 0;
      Coordinate origin = Rings.coordinate(vertices, ring[0], place);
      for (int i = 0; i < ring.length; i++, e++) {
        fromVertex[e] = ring[i];
        from[e] = i == 0 ? origin : to[e - 1];
        int next = i + 1 == ring.length ? 0 : i + 1;
        toVertex[e] = ring[next];
        to[e] = next == 0 ? from[first] : Rings.coordinate(vertices, ring[next], place);
        changed[e] = isNew.test(ring[i]) || isNew.test(ring[next]);
        changes += changed[e] ? 1 : 0;
        twiceArea +=
            (from[e].x - origin.x) * (to[e].y - origin.y)
                - (to[e].x - origin.x) * (from[e].y - origin.y);
      }
      if (!(r == 0 ? twiceArea > 0 : twiceArea < 0)) {
        return false;
      }
    }
    if ((long) changes * edges > MANY_PAIRS) {
      return new IsValidOp(Rings.polygon(vertices, rings, place)).isValid();
    }
    for (int i = 0; i < edges; i++) {
      for (int j = 0; changed[i] && j < edges; j++) {
        if (i == j || (changed[j] && j < i)) {
          continue;
        }
        boolean follows = toVertex[i] == fromVertex[j];
        boolean precedes = toVertex[j] == fromVertex[i];
        if (follows && precedes) {
          return false;
        }
        if (follows
            ? foldsBack(from[i], to[i], to[j])
            : precedes ? foldsBack(from[j], to[j], to[i]) : meet(from[i], to[i], from[j], to[j])) {
          return false;
        }
      }
    }
    return true;
  }

  /** Whether the way from a over b to c comes back over itself. */
  private static boolean foldsBack(Coordinate a, Coordinate b, Coordinate c) {
    double ahead = (b.x - a.x) * (c.x - b.x) + (b.y - a.y) * (c.y - b.y);
    return ahead <= 0 && Orientation.index(a, b, c) == Orientation.COLLINEAR;
  }

  private static boolean meet(Coordinate p, Coordinate q, Coordinate u, Coordinate v) {
    return Envelope.intersects(p, q, u, v)
        && Orientation.index(p, q, u) * Orientation.index(p, q, v) <= 0
        && Orientation.index(u, v, p) * Orientation.index(u, v, q) <= 0;
  }
}
