package org.lynchet.geometry.coverage;

import java.util.List;
import java.util.function.IntPredicate;
import org.locationtech.jts.operation.valid.IsValidOp;

/**
 * Checks that cells are still valid polygons after some of their vertices came new or moved a
 * little.
 *
 * <p>Only edges at such vertices can have come to touch another edge, so only they are held against
 * the others; everything else was valid before.
 */
final class CellCheck {
  /** More edges than this, and going through them in order is quicker than pair by pair. */
  private static final int FEW_EDGES = 32;

  private final Vertices vertices;
  private final Rings.Place place;
  private final IntPredicate isNew;
  private final TwoChains chains;
  private final RingEdges edges = new RingEdges();

  private CellCheck(Vertices vertices, Rings.Place place, IntPredicate isNew) {
    this.vertices = vertices;
    this.place = place;
    this.isNew = isNew;
    this.chains = new TwoChains(vertices, place);
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
    if (rings.length == 1 && chains.areCertain(rings[0])) {
      return true;
    }
    for (int r = 0; r < rings.length; r++) {
      if (rings[r].length < 3
          || !((r == 0 ? 1 : -1) * Rings.signedArea(vertices, place, rings[r]) > 0)) {
        return false;
      }
    }
    edges.fill(vertices, rings, place, isNew);
    if (edges.size() <= FEW_EDGES || edges.newEdges() <= 2) {
      return noneMeet();
    }
    // What meets can still be valid: rings may touch in a vertex.
    return EdgeSweep.noneMeet(edges)
        || new IsValidOp(Rings.polygon(vertices, rings, place)).isValid();
  }

  /** Whether no new edge meets another. */
  private boolean noneMeet() {
    for (int i = 0; i < edges.size(); i++) {
      if (edges.isNew(i) && edges.meetsAny(i)) {
        return false;
      }
    }
    return true;
  }
}
