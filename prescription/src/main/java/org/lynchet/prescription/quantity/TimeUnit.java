package org.lynchet.prescription.quantity;

/** The units of time that a plan may use. */
public enum TimeUnit {
  SECOND("s", 1),
  MINUTE("min", 60);

  private static final double SECONDS_PER_HOUR = 3600;

  private final String symbol;
  private final int seconds;

  TimeUnit(String symbol, int seconds) {
    this.symbol = symbol;
    this.seconds = seconds;
  }

  /** The unit as it is written in a plan. */
  public String symbol() {
    return symbol;
  }

  /** One of this unit in hours. */
  public double hours() {
    return seconds / SECONDS_PER_HOUR;
  }
}
