package org.lynchet.geometry.sweep;

import java.io.Serializable;
import java.util.Arrays;

/** A part of the field that each line of constant offset crosses in one stretch. */
final class Run implements Serializable {
  private static final long serialVersionUID = 1L;

  final double start;
  final Side upper = new Side();
  final Side lower = new Side();
  double end;

  /** Numbers of the runs that hang together with its end. */
  int[] next = new int[0];

  Run(double start) {
    this.start = start;
  }

  void addNext(int run) {
    next = Arrays.copyOf(next, next.length + 1);
    next[next.length - 1] = run;
  }

  void close(double at) {
    end = at;
    upper.close();
    lower.close();
  }
}
