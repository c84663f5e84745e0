package org.lynchet.prescription.picture;

import java.util.List;
import java.util.OptionalInt;

/** One thing painted on the page. Lengths are in points, colours 0xRRGGBB. */
sealed interface Mark {

  /**
   * A filled area.
   *
   * @param outline rings
   * @param fill its colour; empty if only hatches are painted
   * @param hatches what lies over the colour, in the order of painting
   */
  record Area(Outline outline, OptionalInt fill, List<Hatch> hatches) implements Mark {

    public Area {
      hatches = List.copyOf(hatches);
    }

    static Area plain(Outline outline, int fill) {
      return new Area(outline, OptionalInt.of(fill), List.of());
    }

    static Area of(Outline outline, Look look) {
      return new Area(outline, OptionalInt.of(look.fill()), look.hatches());
    }
  }

  /**
   * A line, or the edge of rings.
   *
   * @param dash length of a dash and of the gap after it; 0 for a line without gaps
   */
  record Line(Outline outline, int colour, double width, double dash) implements Mark {}

  /**
   * One line of text.
   *
   * @param x where its {@code anchor} is
   * @param y its baseline
   * @param size of the font
   * @param halo whether a white rim sets it off from what lies below
   */
  record Text(
      String text, double x, double y, double size, boolean bold, Anchor anchor, boolean halo)
      implements Mark {

    static Text left(String text, double x, double y, double size) {
      return new Text(text, x, y, size, false, Anchor.START, false);
    }

    static Text right(String text, double x, double y, double size) {
      return new Text(text, x, y, size, false, Anchor.END, false);
    }

    /** A text around a point, with a halo. */
    static Text label(String text, double centreX, double centreY, double size, boolean bold) {
      double baseline = centreY + TextWidth.DIGIT_HEIGHT * size / 2;
      return new Text(text, centreX, baseline, size, bold, Anchor.MIDDLE, true);
    }

    Text inBold() {
      return new Text(text, x, y, size, true, anchor, halo);
    }
  }

  /** Which part of a text is at its x. */
  enum Anchor {
    START,
    MIDDLE,
    END
  }
}
