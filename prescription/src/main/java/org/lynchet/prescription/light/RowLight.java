package org.lynchet.prescription.light;

import java.io.Serializable;
import java.util.List;

/**
 * The light of one row, relative to the same product in a wide block.
 *
 * @param row the row
 * @param relativeIncident incident light of the season
 * @param relativeAbsorbed absorbed light of the season
 * @param months by month, in the order of the season
 * @param shadeByHour share of the sunny time of the season in which the row's canopy gets less than
 *     half of the sun's beam from above, by hour of local mean solar time, 0 to 23; 0 at night
 */
public record RowLight(
    CanopyRow row,
    double relativeIncident,
    double relativeAbsorbed,
    List<Month> months,
    List<Double> shadeByHour)
    implements Serializable {

  /** Copies the lists. */
  public RowLight {
    months = List.copyOf(months);
    shadeByHour = List.copyOf(shadeByHour);
  }

  /**
   * One month of a row's season.
   *
   * @param month 1 to 12
   * @param relativeIncident incident light of the month
   * @param relativeAbsorbed absorbed light of the month
   * @param shareOfSeason of what the product absorbs over the season in a wide block
   */
  public record Month(
      int month, double relativeIncident, double relativeAbsorbed, double shareOfSeason)
      implements Serializable {}
}
