package org.lynchet.prescription.picture;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import org.lynchet.prescription.light.DayShade;
import org.lynchet.prescription.light.LightResult;

/**
 * Draws the light of rows: a chart by row position, or a picture of the shade through some days,
 * each on one page to print. The same input gives the same SVG, byte for byte.
 */
public final class LightChart {
  private final Scene scene;

  private LightChart(Scene scene) {
    this.scene = scene;
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

  /**
   * Writes the picture as SVG in UTF-8.
   *
   * @throws IOException if the file cannot be written
   */
  public void writeSvg(Path file) throws IOException {
    SceneFiles.writeSvg(scene, file);
  }

  /**
   * Writes the picture as PNG; needs no screen, but a font.
   *
   * @throws IOException if the file cannot be written
   */
  public void writePng(Path file) throws IOException {
    SceneFiles.writePng(scene, file);
  }

  Scene scene() {
    return scene;
  }
}
