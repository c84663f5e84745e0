package org.lynchet.geometry.sweep;

/**
 * One of the offsets at which a band is read, and how far it can move while no vertex of the field
 * passes it: so far lengths change linearly and areas quadratically with it.
 */
final class BandMark {
  /** Nearer to a vertex than this, in metres, a mark is not moved: runs end on cuts that near. */
  private static final double CLEAR = 2 * BandReader.ON_CUT;

  private double fixed;
  private double low = Double.POSITIVE_INFINITY;
  private double high = Double.NEGATIVE_INFINITY;
  private double moved;

  /**
   * Fixes the mark at a finite offset.
   *
   * @param vertexOffsets offsets of all vertices
   */
  void fix(double offset, RisingIndex vertexOffsets) {
    fixed = offset;
    moved = 0;
    int place = vertexOffsets.lastUpTo(offset);
    boolean isBefore = offset < vertexOffsets.get(place);
    int after = isBefore ? place : place + 1;
    low = isBefore ? Double.NEGATIVE_INFINITY : vertexOffsets.get(place) + CLEAR;
    high =
        after < vertexOffsets.size() ? vertexOffsets.get(after) - CLEAR : Double.POSITIVE_INFINITY;
    if (offset < low || offset > high) {
      low = Double.POSITIVE_INFINITY;
    }
  }

  /** Whether no vertex is passed between where it was fixed and an offset. */
  boolean canMoveTo(double offset) {
    return offset >= low && offset <= high;
  }

  void moveTo(double offset) {
    moved = offset - fixed;
  }

  /** Where it was fixed. */
  double fixedMetres() {
    return fixed;
  }

  /** Where it is. */
  double metres() {
    return fixed + moved;
  }

  /** How far it has moved since it was fixed. */
  double movedMetres() {
    return moved;
  }
}
