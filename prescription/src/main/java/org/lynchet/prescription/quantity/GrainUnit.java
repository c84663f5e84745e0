package org.lynchet.prescription.quantity;

/** The units in which a plan may count grain, each with its own unit of yield. */
public enum GrainUnit {
  BUSHEL("bu", AreaUnit.ACRE),
  TONNE("t", AreaUnit.HECTARE);

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

  /** The unit of yield as it is written in a plan. */
  public String yieldSymbol() {
    return symbol + "/" + per.symbol();
  }
}
