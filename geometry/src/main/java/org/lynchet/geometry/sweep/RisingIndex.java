package org.lynchet.geometry.sweep;

import java.io.Serializable;

/**
 * Finds places in rising numbers in constant time where they are spread evenly: their range is
 * divided into as many equal slots as there are numbers, and each slot knows where to begin.
 */
final class RisingIndex implements Serializable {
  private static final long serialVersionUID = 1L;

  /** As few as this are looked at one after the other, without slots. */
  private static final int FEW = 8;

  /** As far as this, one after the other is quicker than steps that double. */
  private static final int NEAR = 8;

  /** So many that most slots have no number to step over: a step that is not foreseen is slow. */
  private static final int SLOTS_PER_NUMBER = 4;

  private final double[] x;
  private final double origin;
  private final double slotsPerUnit;

  /** For each slot, the last number in slots before; 0 if there is none. */
  private final int[] before;

  /** Gets ready; the numbers rise or stay equal, and there is at least one. */
  RisingIndex(double[] x) {
    this.x = x;
    origin = x[0];
    double range = x[x.length - 1] - origin;
    int slots = x.length <= FEW || range <= 0 ? 1 : SLOTS_PER_NUMBER * x.length;
    slotsPerUnit = slots == 1 ? 0 : (slots - 1) / range;
    before = new int[slots];
    int slot = 0;
    for (int i = 0; i < x.length; i++) {
      int own = slot(x[i]);
      while (slot < own) {
        before[++slot] = i - 1;
      }
    }
    while (slot < slots - 1) {
      before[++slot] = x.length - 1;
    }
  }

  int size() {
    return x.length;
  }

  double get(int i) {
    return x[i];
  }

  private int slot(double value) {
    return Math.max(0, Math.min(before.length - 1, (int) ((value - origin) * slotsPerUnit)));
  }

  /**
   * The last index at which a number is at or below a value; 0 if there is none.
   *
   * @param value may be infinite
   */
  int lastUpTo(double value) {
    if (value >= x[x.length - 1]) {
      return x.length - 1;
    }
    // Slots rise with numbers, so that the number before the slot is below the value.
    int at = before.length == 1 ? 0 : before[slot(value)];
    int near = Math.min(x.length - 1, at + NEAR);
    while (at < near && x[at + 1] <= value) {
      at++;
    }
    return at < near || at == x.length - 1 ? at : farther(value, at);
  }

  private int farther(double value, int from) {
    int at = from;
    int step = 1;
    while (at + step < x.length && x[at + step] <= value) {
      at += step;
      step *= 2;
    }
    for (; step > 0; step /= 2) {
      if (at + step < x.length && x[at + step] <= value) {
        at += step;
      }
    }
    return at;
  }
}
