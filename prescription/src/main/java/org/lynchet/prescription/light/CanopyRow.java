package org.lynchet.prescription.light;

import java.io.Serializable;
import org.jspecify.annotations.Nullable;

/**
 * One row of the cross-section, or a stretch of bare ground.
 *
 * @param strip number of the strip in the pattern, from 1
 * @param crop the crop, or an empty text for bare ground
 * @param product the hybrid or variety
 * @param row number of the row in its strip, from 1, left to right
 * @param offsetMetres the middle of its cell
 * @param spacingMetres width of its cell, above 0
 * @param canopy how it grows, or null for bare ground
 */
public record CanopyRow(
    int strip,
    String crop,
    String product,
    int row,
    double offsetMetres,
    double spacingMetres,
    @Nullable CanopyTraits canopy)
    implements Serializable {

  /** Bare ground of some width. */
  public static CanopyRow bare(double offsetMetres, double widthMetres) {
    return new CanopyRow(0, "", "", 0, offsetMetres, widthMetres, null);
  }
}
