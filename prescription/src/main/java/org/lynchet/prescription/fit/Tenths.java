package org.lynchet.prescription.fit;

import org.lynchet.prescription.quantity.Length;

/** Takes lengths to whole numbers of 0.1 mm and back. */
final class Tenths {
  private static final double IN_A_METRE = 10_000;

  private Tenths() {}

  /**
   * A length in tenths of a millimetre, rounded to the nearest: finer than any machine is built.
   */
  static long of(Length length) {
    return Math.round(length.metres() * IN_A_METRE);
  }

  static double metres(long tenths) {
    return tenths / IN_A_METRE;
  }

  static double millimetres(long tenths) {
    return tenths / 10.0;
  }
}
