package org.lynchet.geometry.coverage;

import java.io.Serializable;

/** One connected piece of one region in one band. */
public final class Cell implements Serializable {
  private static final long serialVersionUID = 1L;

  /** The band of cells that are not cut into strips. */
  public static final int NO_BAND = -1;

  private final RegionLabel region;
  private final int band;

  /** An outer ring, counter-clockwise, and its holes, clockwise. */
  final int[][] rings;

  /** Its area before rounding, in square metres; NaN where that is the area of its rings. */
  final double areaBeforeRounding;

  Cell(RegionLabel region, int band, int[][] rings) {
    this(region, band, rings, Double.NaN);
  }

  private Cell(RegionLabel region, int band, int[][] rings, double areaBeforeRounding) {
    this.region = region;
    this.band = band;
    this.rings = rings;
    this.areaBeforeRounding = areaBeforeRounding;
  }

  /** What sets its region apart. */
  public RegionLabel region() {
    return region;
  }

  /** Index of its band, from 0; {@link #NO_BAND} in the headland. */
  public int band() {
    return band;
  }

  Cell withRings(int[][] others) {
    return new Cell(region, band, others);
  }

  Cell withAreaBeforeRounding(double squareMetres) {
    return new Cell(region, band, rings, squareMetres);
  }
}
