package org.lynchet.prescription.quantity;

/** The units in which a plan may count grain, each with its own unit of yield. */
public enum GrainUnit {
  BUSHEL("bu", AreaUnit.ACRE),
  TONNE("t", AreaUnit.HECTARE),
  /** As grain is weighed; it is sold in one of the others. */
  POUND("lb", AreaUnit.ACRE);

  private static final double KILOGRAMS_IN_A_POUND = 0.45359237;

  private final String symbol;
  private final AreaUnit per;

  GrainUnit(String symbol, AreaUnit per) {
    this.symbol = symbol;
    this.per = per;
  }

  /** The unit as it is written in a plan. */
  public String symbol() {
    return symbol;
  }

  /** The area on which a yield in this unit is counted. */
  public AreaUnit per() {
    return per;
  }

  /** Whether grain is sold in this unit. */
  public boolean isSold() {
    return this != POUND;
  }

  /**
   * One of this unit on its area as pounds on an acre.
   *
   * @param poundsInABushel what a bushel of the crop weighs
   */
  public double poundsOnAnAcre(double poundsInABushel) {
    double pounds =
        switch (this) {
          case BUSHEL -> poundsInABushel;
          case TONNE -> 1000 / KILOGRAMS_IN_A_POUND;
          case POUND -> 1;
        };
    return pounds * AreaUnit.ACRE.squareMetres() / per.squareMetres();
  }

  /** The unit of yield as it is written in a plan. */
  public String yieldSymbol() {
    return symbol + "/" + per.symbol();
  }
}
