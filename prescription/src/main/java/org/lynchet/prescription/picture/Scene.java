package org.lynchet.prescription.picture;

import java.util.List;

/**
 * Everything on the page.
 *
 * @param title what the picture is, for those who cannot see it
 * @param description what it shows, likewise
 * @param layers from the bottom to the top
 */
record Scene(String title, String description, List<Layer> layers) {
  /** Width of the page in points: 11 inches, the length of letter paper; A4 is longer. */
  static final double WIDTH = 792;

  /** Height of the page in points: 8.25 inches, just less than A4's 210 mm; letter is higher. */
  static final double HEIGHT = 594;

  /** The colour of text, and of lines that matter. */
  static final int INK = 0x1A1A1A;

  static final int WHITE = 0xFFFFFF;

  Scene {
    layers = List.copyOf(layers);
  }

  /**
   * Marks that belong together.
   *
   * @param id what they are, unique in the scene; letters and hyphens
   */
  record Layer(String id, List<Mark> marks) {

    Layer {
      marks = List.copyOf(marks);
    }
  }
}
