package org.lynchet.prescription.light;

import org.lynchet.prescription.defaults.Defaults;

/** Lies beside a field: so wide that rows on its far side hide little of the sky. */
final class OpenGround {
  private static final double METRES =
      Defaults.get().number("model.open-ground-beside-the-field-metres");

  private OpenGround() {}

  /** It as a row without a canopy, from an offset in metres to the right. */
  static CanopyRow from(double offsetMetres) {
    return CanopyRow.bare(offsetMetres + METRES / 2, METRES);
  }
}
