package org.lynchet.prescription.quantity;

/** The units of area that a plan may use. */
public enum AreaUnit {
  ACRE("ac", 4046.8564224),
  HECTARE("ha", 10000),
  SQUARE_METRE("m2", 1);

  private final String symbol;
  private final double squareMetres;

  AreaUnit(String symbol, double squareMetres) {
    this.symbol = symbol;
    this.squareMetres = squareMetres;
  }

  /** The unit as it is written in a plan. */
  public String symbol() {
    return symbol;
  }

  /** One of this unit in square metres. */
  public double squareMetres() {
    return squareMetres;
  }
}
