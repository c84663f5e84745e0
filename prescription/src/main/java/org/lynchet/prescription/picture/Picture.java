package org.lynchet.prescription.picture;

import java.io.IOException;
import java.nio.file.Path;

/**
 * Writes a drawn page as SVG or PNG. The same page gives the same SVG, byte for byte; the letters
 * of the PNG are those of the machine's own sans-serif font.
 */
public abstract sealed class Picture permits FieldMap, LightChart, BudgetChart {
  private final Scene scene;

  Picture(Scene scene) {
    this.scene = scene;
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

  /** The picture as SVG. */
  public String svg() {
    return SvgWriter.write(scene);
  }

  Scene scene() {
    return scene;
  }
}
