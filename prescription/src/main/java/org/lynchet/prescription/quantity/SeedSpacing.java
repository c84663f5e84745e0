package org.lynchet.prescription.quantity;

/**
 * Computes how much row lies on an area, and how far apart the seeds lie in it.
 *
 * <p>With rows a distance <i>w</i> apart, an area <i>A</i> holds <i>A / w</i> of row; <i>r</i>
 * seeds per area then lie <i>1 / (r w)</i> apart. Both are exact identities of a field without
 * edges; at an edge they are off by part of one row.
 */
public final class SeedSpacing {
  private SeedSpacing() {}

  /** Metres of row on an area; row spacing above 0. */
  public static double rowMetres(Area area, Length rowSpacing) {
    return area.squareMetres() / rowSpacing.metres();
  }

  /** Metres from seed to seed in a row, infinite for a rate of 0; row spacing above 0. */
  public static double seedMetres(SeedingRate rate, Length rowSpacing) {
    return 1 / (rate.perSquareMetre() * rowSpacing.metres());
  }
}
