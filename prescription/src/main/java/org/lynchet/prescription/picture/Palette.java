package org.lynchet.prescription.picture;

import java.util.List;
import org.lynchet.prescription.zone.Zone;

/**
 * The colours of crops.
 *
 * <p>Each of the first four crops has three colours: centre, border, headland. Any two of the
 * twelve are at least 12 apart in CIE L*a*b* (1976), for normal sight and for protanopia,
 * deuteranopia and tritanopia as Machado, Oliveira and Fernandes (2009) simulate them; the three of
 * one crop differ by at least 9 in lightness, so that they differ in black and white too.
 */
final class Palette {
  /** Crops with colours of their own; further crops take them again, under a hatch. */
  static final int CROPS = 4;

  /** Below this luminance a hatch is white. */
  private static final double DARK = 0.27;

  private record Shades(int centre, int border, int headland) {}

  private static final List<Shades> SHADES =
      List.of(
          new Shades(0xFFFBC3, 0x9E9A4B, 0xDBD35E),
          new Shades(0x33B2C8, 0x1B57A1, 0x61879C),
          new Shades(0xFBC4F9, 0x935C5E, 0xCE746A),
          new Shades(0xB3BEAF, 0x4D12A1, 0x594E65));

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
