package org.lynchet.geometry.sweep;

/**
 * Holds what a band is made of, which stays the same while none of its marks passes a vertex: so it
 * is made out once for many placements that lie near each other.
 */
final class BandForm {
  private final BandMark left = new BandMark();
  private final BandMark right = new BandMark();
  private final BandMark fullFrom = new BandMark();
  private final BandMark fullTo = new BandMark();
  private final BandPieces pieces = new BandPieces();
  private final Ways ways = new Ways();

  /** Runs in the band; those that come from left of it first. */
  private int[] active = new int[4];

  /** Runs in the band that go on right of it. */
  private int[] going = new int[4];

  private int goingCount;

  /** How many runs begin left of the band's right edge. */
  private int entered;

  /** Moves the marks; false if one of them would pass a vertex. */
  boolean move(double leftTo, double rightTo, double fullFromTo, double fullToTo) {
    if (!left.canMoveTo(leftTo)
        || !right.canMoveTo(rightTo)
        || !fullFrom.canMoveTo(fullFromTo)
        || !fullTo.canMoveTo(fullToTo)) {
      return false;
    }
    left.moveTo(leftTo);
    right.moveTo(rightTo);
    fullFrom.moveTo(fullFromTo);
    fullTo.moveTo(fullToTo);
    return true;
  }

  /** Fixes the marks. */
  void fix(double leftAt, double rightAt, double fromAt, double toAt, RisingIndex vertexOffsets) {
    left.fix(leftAt, vertexOffsets);
    right.fix(rightAt, vertexOffsets);
    fullFrom.fix(fromAt, vertexOffsets);
    fullTo.fix(toAt, vertexOffsets);
  }

  /**
   * Makes out the band between the marks.
   *
   * @param before the band on its left
   */
  void make(BandForm before, Run[] runs, RunGroups groups, Crossing crossing) {
    double rightAt = right.fixedMetres();
    int count = enter(before, runs, rightAt - BandReader.ON_CUT);
    int found = groups.group(active, count, rightAt);
    pieces.clear(found);
    ways.clear(found);
    crossing.begin(fullFrom.fixedMetres(), fullTo.fixedMetres());
    goingCount = 0;
    for (int i = 0; i < count; i++) {
      Run run = runs[active[i]];
      int piece = groups.of(active[i]);
      pieces.reach(piece, run, left.fixedMetres());
      if (i < before.goingCount) {
        pieces.cutAtLeft(piece, run, left.fixedMetres());
      }
      if (run.end > rightAt + BandReader.ON_CUT) {
        pieces.addUpTo(piece, run, rightAt);
        going[goingCount++] = active[i];
      } else {
        pieces.addWhole(piece, run);
      }
      crossing.follow(active[i], piece, ways);
    }
  }

  /** Lists the runs in the band; returns how many. */
  private int enter(BandForm before, Run[] runs, double right) {
    entered = before.entered;
    while (entered < runs.length && runs[entered].start < right) {
      entered++;
    }
    int count = before.goingCount + entered - before.entered;
    if (count > active.length) {
      active = new int[Math.max(count, 2 * active.length)];
      going = new int[active.length];
    }
    System.arraycopy(before.going, 0, active, 0, before.goingCount);
    for (int i = before.goingCount, run = before.entered; i < count; i++, run++) {
      active[i] = run;
    }
    return count;
  }

  int pieces() {
    return pieces.size();
  }

  double minOffset(int piece) {
    return pieces.minOffset(piece, left);
  }

  double maxOffset(int piece) {
    return pieces.maxOffset(piece, right);
  }

  double area(int piece) {
    return pieces.area(piece, left, right);
  }

  double fullLength(int piece) {
    return ways.length(piece, fullFrom, fullTo);
  }
}
