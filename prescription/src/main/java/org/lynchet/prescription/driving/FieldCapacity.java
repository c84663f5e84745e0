package org.lynchet.prescription.driving;

import org.lynchet.prescription.quantity.Speed;

/**
 * Computes how much a machine does in an hour.
 *
 * <p>Capacity <i>C = S w e</i>: speed <i>S</i> in m/h, working width <i>w</i> in m, efficiency
 * <i>e</i> of 0 to 1. In acres an hour, miles an hour and feet this is <i>w S e / 8.25</i>:
 * Hancock, Swetnam and Benson, Calculating Farm Machinery Field Capacities, U. Kentucky AEN-73,
 * 1991.
 */
public final class FieldCapacity {
  private FieldCapacity() {}

  /**
   * Square metres an hour.
   *
   * @param efficiency the share of the time that the machine works its whole width, 0 to 1
   */
  public static double squareMetresPerHour(Speed speed, double widthMetres, double efficiency) {
    return speed.metresPerHour() * widthMetres * efficiency;
  }

  /** Hours to drive a distance. */
  public static double hours(double metres, Speed speed) {
    return metres / speed.metresPerHour();
  }

  /** The share of the time that is spent in the row; 0 if no time is spent. */
  public static double shareInRow(double inRowHours, double otherHours) {
    double all = inRowHours + otherHours;
    return all == 0 ? 0 : inRowHours / all;
  }
}
