package org.lynchet.prescription.picture;

import java.util.List;

/**
 * How a zone is filled.
 *
 * @param fill its colour, 0xRRGGBB
 * @param hatches what lies over the colour, in the order of painting
 */
record Look(int fill, List<Hatch> hatches) {

  Look {
    hatches = List.copyOf(hatches);
  }
}
