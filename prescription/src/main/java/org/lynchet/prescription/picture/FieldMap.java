package org.lynchet.prescription.picture;

import java.io.IOException;
import java.nio.file.Path;
import org.lynchet.prescription.zone.FieldLayout;

/**
 * Draws a field laid out, on one page to print.
 *
 * <p>The page is 11 by 8.25 inches, for letter and A4 paper, landscape. North is up. It shows the
 * zones by crop and kind, partial passes, the boundary, the edges and names of management zones,
 * the AB line, pass numbers, a scale bar and a north arrow in the plan's units, and a legend with
 * product, rate and area, and below the map what goes into the hopper of each row unit where that
 * is not the same for all. The same layout gives the same SVG, byte for byte; the letters of the
 * PNG are those of the machine's own sans-serif font.
 */
public final class FieldMap {
  private final Scene scene;

  private FieldMap(Scene scene) {
    this.scene = scene;
  }

  /** Draws a layout; it must have at least one zone. */
  public static FieldMap of(FieldLayout layout) {
    return new FieldMap(new SceneMaker(layout).make());
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
   * Writes the picture as PNG, 2200 by 1650 pixels. Needs no screen, but a font. Sets the system
   * property {@code java.awt.headless} to true unless it is set already.
   *
   * @throws IOException if the file cannot be written
   */
  public void writePng(Path file) throws IOException {
    SceneFiles.writePng(scene, file);
  }

  String svg() {
    return SvgWriter.write(scene);
  }

  Scene scene() {
    return scene;
  }
}
