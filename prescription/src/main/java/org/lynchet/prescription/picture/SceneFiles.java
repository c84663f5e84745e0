package org.lynchet.prescription.picture;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import javax.imageio.ImageIO;

/** Writes a scene into a file. */
final class SceneFiles {
  private static final String HEADLESS = "java.awt.headless";

  private SceneFiles() {}

  static void writeSvg(Scene scene, Path file) throws IOException {
    Files.writeString(file, SvgWriter.write(scene), StandardCharsets.UTF_8);
  }

  /** Sets the system property {@code java.awt.headless} to true unless it is set already. */
  static void writePng(Scene scene, Path file) throws IOException {
    if (System.getProperty(HEADLESS) == null) {
      System.setProperty(HEADLESS, "true");
    }
    BufferedImage image = PngPainter.paint(scene);
    try (OutputStream out = Files.newOutputStream(file)) {
      if (!ImageIO.write(image, "png", out)) {
        throw new IOException("this Java cannot write PNG images");
      }
    }
  }
}
