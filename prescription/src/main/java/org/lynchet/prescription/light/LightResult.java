package org.lynchet.prescription.light;

import java.io.Serializable;
import java.util.List;

/**
 * The light of a season on one period of the pattern.
 *
 * @param request what was asked
 * @param rows the rows that have a canopy, left to right
 * @param budget where the energy of the whole season went
 */
public record LightResult(LightRequest request, List<RowLight> rows, Budget budget)
    implements Serializable {

  /** Copies the list. */
  public LightResult {
    rows = List.copyOf(rows);
  }

  /**
   * Energy on one period over the season, in MJ for each metre along the rows.
   *
   * @param incident what came from sun and sky
   * @param absorbed what leaves stopped
   * @param ground what reached the ground
   */
  public record Budget(double incident, double absorbed, double ground) implements Serializable {}

  /** Mean of the absorbed light of a strip's rows, weighted by their ground. */
  public double meanAbsorbed(int strip) {
    double sum = 0;
    double width = 0;
    for (RowLight light : rows) {
      if (light.row().strip() == strip) {
        sum += light.relativeAbsorbed() * light.row().spacingMetres();
        width += light.row().spacingMetres();
      }
    }
    return sum / width;
  }

  /** Mean of the absorbed light of a crop's rows, weighted by their ground. */
  public double meanAbsorbed(String crop) {
    double sum = 0;
    double width = 0;
    for (RowLight light : rows) {
      if (light.row().crop().equals(crop)) {
        sum += light.relativeAbsorbed() * light.row().spacingMetres();
        width += light.row().spacingMetres();
      }
    }
    return sum / width;
  }
}
