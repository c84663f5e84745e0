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

  Cell(RegionLabel region, int band, int[][] rings) {
    this.region = region;
    this.band = band;
    this.rings = rings;
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
}
