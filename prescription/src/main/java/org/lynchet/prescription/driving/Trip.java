package org.lynchet.prescription.driving;

import java.io.Serializable;

/** One pass, driven one way. */
record Trip(PlantedPass pass, Direction direction) implements Serializable {

  /** The row, from 1, that a row unit plants. */
  int rowOf(int unit) {
    return direction.rowOf(unit, pass.products().size());
  }

  /** The product that a row unit should plant. */
  String productOf(int unit) {
    return pass.products().get(rowOf(unit) - 1);
  }

  /** The length in the field that a row unit plants, in metres. */
  double metresOf(int unit) {
    return pass.rowMetres().get(rowOf(unit) - 1);
  }
}
