package org.lynchet.geometry.coverage;

import java.io.Serializable;

/** One connected part of the field: an outer ring, counter-clockwise, and its holes, clockwise. */
final class Region implements Serializable {
  private static final long serialVersionUID = 1L;

  final RegionLabel label;
  final int[][] rings;

  Region(RegionLabel label, int[][] rings) {
    this.label = label;
    this.rings = rings;
  }
}
