package org.lynchet.geometry.sweep;

/** One stretch of the sweep line between two edges, and the run that it belongs to. */
final class Stretch {
  /** The run of a stretch that has none yet. */
  static final int NO_RUN = -1;

  final Edge lower;
  final Edge upper;
  int run = NO_RUN;

  /** Whether its run goes on right of the offset at which the sweep line stands. */
  boolean goesOn;

  /** How many stretches on the other side of that offset it hangs together with. */
  int partners;

  Stretch(Edge lower, Edge upper) {
    this.lower = lower;
    this.upper = upper;
  }

  /** How long it is at an offset. */
  double length(double offset) {
    return upper.y(offset) - lower.y(offset);
  }
}
