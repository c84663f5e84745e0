package org.lynchet.prescription.spraying;

import org.jspecify.annotations.Nullable;
import org.lynchet.geometry.strip.Strip;
import org.lynchet.prescription.swath.Swath;

/**
 * The part of a strip that one spray pass is there for.
 *
 * @param strip the strip
 * @param crop its crop
 * @param leftMetres offset of its left edge
 * @param work the pass over it, or null if the crop has no sprayer
 */
record SprayedBand(Strip strip, String crop, double leftMetres, @Nullable Work work) {

  /**
   * What the sprayer does there.
   *
   * @param machine the sprayer's name
   * @param swath what it covers of the strip
   * @param shut whether no section may be open, because it would reach over another crop
   */
  record Work(String machine, Swath swath, boolean shut) {

    int firstOpen() {
      return shut ? 0 : Math.max(1, swath.firstOpen());
    }

    int lastOpen() {
      return shut ? 0 : firstOpen() + Math.max(1, swath.openSections()) - 1;
    }
  }
}
