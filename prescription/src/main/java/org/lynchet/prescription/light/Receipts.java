package org.lynchet.prescription.light;

import java.util.Arrays;

/** Counts what each row gets of the light that was sent: energy times metres across. */
final class Receipts {
  /** Stopped by the row's leaves. */
  final double[] absorbed;

  /** Fallen on the row's cell at the height of its canopy. */
  final double[] incident;

  /** Metres of that where less than half of the light was left. */
  final double[] shaded;

  private double ground;

  Receipts(int rows) {
    absorbed = new double[rows];
    incident = new double[rows];
    shaded = new double[rows];
  }

  void clear() {
    Arrays.fill(absorbed, 0);
    Arrays.fill(incident, 0);
    Arrays.fill(shaded, 0);
    ground = 0;
  }

  void addGround(double energy) {
    ground += energy;
  }

  /** What reached the ground. */
  double ground() {
    return ground;
  }
}
