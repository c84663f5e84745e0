package org.lynchet.prescription.light;

import java.io.Serializable;

/**
 * How finely a season is sampled.
 *
 * @param days days that one cross-section stands for, at most; 1 is every day
 * @param minutes minutes between two suns
 * @param raysPerRow rays that fall on the cell of the narrowest row
 * @param skyAcross directions of the sky in the plane across the rows
 * @param skyAlong directions along the rows on each side, for each of them
 */
public record Sampling(int days, double minutes, int raysPerRow, int skyAcross, int skyAlong)
    implements Serializable {

  /** Every day, a sun each 10 minutes. */
  public static final Sampling FULL = new Sampling(1, 10, 12, 40, 4);

  /** Keeps every row within 0.5 % of {@link #FULL}. */
  public static final Sampling QUICK = new Sampling(7, 20, 5, 16, 2);

  private static final int MANY_DAYS = 10;

  /** Rays this far apart, or nearer, keep rows within 0.5 %. */
  private static final double RAY_METRES = 0.2;

  /**
   * Checks the ranges.
   *
   * @throws IllegalArgumentException if a step is not above 0
   */
  public Sampling {
    if (days < 1 || !(minutes > 0) || raysPerRow < 1 || skyAcross < 1 || skyAlong < 1) {
      throw new IllegalArgumentException("a step that is not above 0");
    }
  }

  /**
   * For many seasons: no more rays than it takes to keep every row within 0.5 % of {@link #FULL}.
   *
   * @param narrowestMetres width of the narrowest row's cell
   */
  public static Sampling many(double narrowestMetres) {
    int rays = Math.max(2, (int) Math.ceil(narrowestMetres / RAY_METRES));
    return new Sampling(MANY_DAYS, QUICK.minutes(), rays, QUICK.skyAcross(), QUICK.skyAlong());
  }

  /** The same with a sun each so many minutes. */
  public Sampling withMinutes(double step) {
    return new Sampling(days, step, raysPerRow, skyAcross, skyAlong);
  }
}
