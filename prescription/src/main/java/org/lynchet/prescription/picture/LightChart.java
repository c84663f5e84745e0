package org.lynchet.prescription.picture;

import java.util.List;
import org.lynchet.prescription.light.DayShade;
import org.lynchet.prescription.light.LightResult;

/**
 * Draws the light of rows: a chart by row position, or a picture of the shade through some days,
 * each on one page to print.
 */
public final class LightChart extends Picture {
  private LightChart(Scene scene) {
    super(scene);
  }

  /**
   * The light of each row of a period, above a cross-section of the grown canopies.
   *
   * @param field the field's name
   */
  public static LightChart ofRows(LightResult light, String field) {
    return new LightChart(new RowChartMaker(light, field).make());
  }

  /**
   * The share of the sun's beam on each row through the hours of some days.
   *
   * @param days one to three days of the same rows
   * @param headingDegrees of the AB line
   * @param field the field's name
   */
  public static LightChart ofDays(List<DayShade> days, double headingDegrees, String field) {
    return new LightChart(new ShadeChartMaker(days, headingDegrees, field).make());
  }
}
