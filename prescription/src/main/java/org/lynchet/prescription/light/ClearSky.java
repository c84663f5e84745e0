package org.lynchet.prescription.light;

/** Computes the sun's energy under a cloudless sky (Haurwitz 1945, 1946). */
public final class ClearSky {
  private ClearSky() {}

  /**
   * Energy on level ground: 1098 cos z exp(-0.059 / cos z).
   *
   * @param elevationRadians the sun's
   * @return W/m2, 0 with the sun at or below the horizon
   */
  public static double horizontal(double elevationRadians) {
    double c = Math.sin(elevationRadians);
    return c <= 0 ? 0 : 1098 * c * Math.exp(-0.059 / c);
  }
}
