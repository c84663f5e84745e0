package org.lynchet.prescription.quantity;

/** The units of length that a plan may use. */
public enum LengthUnit {
  INCH("in", 0.0254),
  FOOT("ft", 0.3048),
  METRE("m", 1),
  CENTIMETRE("cm", 0.01),
  MILLIMETRE("mm", 0.001);

  private final String symbol;
  private final double metres;

  LengthUnit(String symbol, double metres) {
    this.symbol = symbol;
    this.metres = metres;
  }

  /** The unit as it is written in a plan. */
  public String symbol() {
    return symbol;
  }

  /** One of this unit in metres. */
  public double metres() {
    return metres;
  }
}
