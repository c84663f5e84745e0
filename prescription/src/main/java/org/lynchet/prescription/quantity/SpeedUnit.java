package org.lynchet.prescription.quantity;

/** The units of speed that a plan may use. */
public enum SpeedUnit {
  MILE_PER_HOUR("mph", 1609.344),
  KILOMETRE_PER_HOUR("km/h", 1000);

  private final String symbol;
  private final double metresPerHour;

  SpeedUnit(String symbol, double metresPerHour) {
    this.symbol = symbol;
    this.metresPerHour = metresPerHour;
  }

  /** The unit as it is written in a plan. */
  public String symbol() {
    return symbol;
  }

  /** One of this unit in metres an hour. */
  public double metresPerHour() {
    return metresPerHour;
  }
}
