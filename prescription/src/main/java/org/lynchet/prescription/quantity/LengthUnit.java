package org.lynchet.prescription.quantity;

/** The units of length that a plan may use, each a whole number of tenths of a millimetre. */
public enum LengthUnit {
  INCH("in", 254),
  FOOT("ft", 3048),
  METRE("m", 10_000),
  CENTIMETRE("cm", 100),
  MILLIMETRE("mm", 10);

  private static final double TENTHS_OF_MILLIMETRE_PER_METRE = 10_000;

  private final String symbol;
  private final int tenthsOfMillimetre;

  LengthUnit(String symbol, int tenthsOfMillimetre) {
    this.symbol = symbol;
    this.tenthsOfMillimetre = tenthsOfMillimetre;
  }

  /** The unit as it is written in a plan. */
  public String symbol() {
    return symbol;
  }

  /** One of this unit in metres. */
  public double metres() {
    return metres(1);
  }

  /** So many of this unit in metres: the nearest double, since a tenth of a millimetre has none. */
  double metres(double amount) {
    return amount * tenthsOfMillimetre / TENTHS_OF_MILLIMETRE_PER_METRE;
  }
}
