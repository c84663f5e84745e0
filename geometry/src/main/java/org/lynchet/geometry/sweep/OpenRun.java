package org.lynchet.geometry.sweep;

import java.util.Arrays;

/** Collects what is known of a run while the field is swept. */
final class OpenRun {
  final OpenSide upper = new OpenSide();
  final OpenSide lower = new OpenSide();
  private final double start;
  private double end;
  private int[] next = new int[0];

  OpenRun(double start) {
    this.start = start;
    this.end = start;
  }

  /** Adds the number of a run that hangs together with the end. */
  void addNext(int run) {
    next = Arrays.copyOf(next, next.length + 1);
    next[next.length - 1] = run;
  }

  void endAt(double offset) {
    end = offset;
  }

  Run closed() {
    return new Run(start, end, upper.closed(), lower.closed(), next);
  }
}
