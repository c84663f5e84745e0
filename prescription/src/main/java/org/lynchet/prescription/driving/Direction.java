package org.lynchet.prescription.driving;

import java.util.Locale;

/** Which way a pass is driven. */
public enum Direction {
  /** From A to B. */
  ALONG,
  /** From B to A. */
  AGAINST;

  /** The word for it in files. */
  String word() {
    return name().toLowerCase(Locale.ROOT);
  }

  Direction opposite() {
    return this == ALONG ? AGAINST : ALONG;
  }

  /** The row, from 1, that a row unit plants on a planter of so many. */
  int rowOf(int unit, int units) {
    return this == ALONG ? unit : units + 1 - unit;
  }
}
