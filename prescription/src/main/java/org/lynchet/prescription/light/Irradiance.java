package org.lynchet.prescription.light;

import java.io.Serializable;

/**
 * The sun's energy on level ground, split into what comes straight from the sun and what comes from
 * the sky (Erbs, Klein and Duffie 1982, equation 1).
 *
 * @param beam W/m2, 0 or more
 * @param diffuse W/m2, 0 or more
 */
public record Irradiance(double beam, double diffuse) implements Serializable {
  /** W/m2 on a plane that faces the sun outside the air, at the mean distance. */
  private static final double SOLAR_CONSTANT = 1366.1;

  /** Below this sine of the elevation energy outside the air is not divided by: 3.7 degrees. */
  private static final double LOWEST = 0.065;

  private static final Irradiance NIGHT = new Irradiance(0, 0);

  /**
   * A sky of some clearness.
   *
   * @param dayOfYear 1 to 366
   * @param elevationRadians the sun's
   * @param clearness share of a cloudless sky's energy, 0 to 1
   */
  public static Irradiance of(double dayOfYear, double elevationRadians, double clearness) {
    double global = ClearSky.horizontal(elevationRadians) * clearness;
    return global <= 0 ? NIGHT : split(dayOfYear, elevationRadians, global);
  }

  /** Splits the energy on level ground, in W/m2. */
  static Irradiance split(double dayOfYear, double elevationRadians, double global) {
    double outside = outside(dayOfYear) * Math.max(Math.sin(elevationRadians), LOWEST);
    double diffuse = global * diffuseShare(global / outside);
    return new Irradiance(global - diffuse, diffuse);
  }

  /**
   * The diffuse share of the energy on level ground.
   *
   * @param k that energy as a share of what arrives outside the air
   */
  static double diffuseShare(double k) {
    if (k <= 0.22) {
      return 1 - 0.09 * k;
    }
    return k <= 0.8 ? 0.9511 + k * (-0.1604 + k * (4.388 + k * (-16.638 + k * 12.336))) : 0.165;
  }

  /** W/m2 outside the air on a plane that faces the sun (Spencer 1971, after Iqbal 1983). */
  static double outside(double dayOfYear) {
    double b = 2 * Math.PI * (dayOfYear - 1) / 365;
    return SOLAR_CONSTANT
        * (1.00011
            + 0.034221 * Math.cos(b)
            + 0.00128 * Math.sin(b)
            + 0.000719 * Math.cos(2 * b)
            + 0.000077 * Math.sin(2 * b));
  }

  double global() {
    return beam + diffuse;
  }
}
