package org.lynchet.prescription.driving;

import org.lynchet.prescription.quantity.AreaUnit;

/** The lengths that go with a unit of area: feet and miles with acres, else metric. */
enum Distances {
  FEET("ft", 0.3048, "mi", 1609.344),
  METRES("m", 1, "km", 1000);

  private final String nearSymbol;
  private final double nearMetres;
  private final String farSymbol;
  private final double farMetres;

  Distances(String nearSymbol, double nearMetres, String farSymbol, double farMetres) {
    this.nearSymbol = nearSymbol;
    this.nearMetres = nearMetres;
    this.farSymbol = farSymbol;
    this.farMetres = farMetres;
  }

  static Distances beside(AreaUnit area) {
    return area == AreaUnit.ACRE ? FEET : METRES;
  }

  /** The unit for turns and rows. */
  String nearSymbol() {
    return nearSymbol;
  }

  /** Metres in the unit for turns and rows. */
  double near(double metres) {
    return metres / nearMetres;
  }

  /** The unit for ways. */
  String farSymbol() {
    return farSymbol;
  }

  /** Metres in the unit for ways. */
  double far(double metres) {
    return metres / farMetres;
  }
}
