package org.lynchet.prescription.picture;

import java.util.List;
import org.lynchet.prescription.zone.Zone;

/**
 * The colours of crops.
 *
 * <p>Each of the first four crops has three colours: centre, border, headland. Any two of the
 * twelve are at least 12 apart in CIE L*a*b* (1976), for normal sight and for protanopia,
 * deuteranopia and tritanopia as Machado, Oliveira and Fernandes (2009) simulate them; the three of
 * one crop differ by at least 9 in lightness, so that they differ in black and white too; those of
 * the first two crops, which most plans have, differ by at least 8, and by 15 where border rows of
 * the one stand beside the other.
 */
final class Palette {
  /** Crops with colours of their own; further crops take them again, under a hatch. */
  static final int CROPS = 4;

  /** Below this luminance a hatch is white. */
  private static final double DARK = 0.2;

  /** From this luminance on white lines would be lost. */
  private static final double PALE = 0.37;

  private static final int GREY = 0x8C8C8C;

  private record Shades(int centre, int border, int headland) {}

  private static final List<Shades> SHADES =
      List.of(
          new Shades(0xF9F7E2, 0xEBAC4E, 0xCAE2AD),
          new Shades(0x1F8AD8, 0x0A48A4, 0x61689A),
          new Shades(0xFFD8EC, 0x996F49, 0xFF6F7E),
          new Shades(0xCDA1BA, 0x443E75, 0x7B5773));

  private Palette() {}

  /** The colour of a part of a crop, 0xRRGGBB. */
  static int fill(int crop, Zone.Kind kind) {
    Shades shades = SHADES.get(crop % CROPS);
    return switch (kind) {
      case CENTRE -> shades.centre();
      case BORDER -> shades.border();
      case HEADLAND -> shades.headland();
    };
  }

  /** Dark or white, whichever is plain to see on a colour. */
  static int ink(int fill) {
    return luminance(fill) < DARK ? Scene.WHITE : Scene.INK;
  }

  /** White or grey, for broad lines that leave much of a colour to see. */
  static int broadInk(int fill) {
    return luminance(fill) < PALE ? Scene.WHITE : GREY;
  }

  /** Relative luminance, 0 to 1, of an sRGB colour (IEC 61966-2-1). */
  private static double luminance(int rgb) {
    return 0.2126 * linear(rgb >> 16 & 0xFF)
        + 0.7152 * linear(rgb >> 8 & 0xFF)
        + 0.0722 * linear(rgb & 0xFF);
  }

  private static double linear(int value) {
    double v = value / 255.0;
    return v <= 0.04045 ? v / 12.92 : Math.pow((v + 0.055) / 1.055, 2.4);
  }
}
