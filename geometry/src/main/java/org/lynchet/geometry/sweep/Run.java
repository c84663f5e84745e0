package org.lynchet.geometry.sweep;

import java.io.Serializable;

/** A part of the field that each line of constant offset crosses in one stretch. */
final class Run implements Serializable {
  private static final long serialVersionUID = 1L;

  final double start;
  final double end;
  final Side upper;
  final Side lower;

  /** Numbers of the runs that hang together with its end. */
  final int[] next;

  /** All of its area: many runs lie in one band and are read no finer. */
  final double area;

  Run(double start, double end, Side upper, Side lower, int[] next) {
    this.start = start;
    this.end = end;
    this.upper = upper;
    this.lower = lower;
    this.next = next;
    this.area = upper.whole() + lower.whole();
  }
}
