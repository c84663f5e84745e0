package org.lynchet.prescription.picture;

import java.util.ArrayList;
import java.util.List;
import org.lynchet.prescription.zone.Zone;

/**
 * Makes the looks of zones: border rows have lines at 45 degrees to the rows, headland has dots.
 *
 * <p>A second product or rate of one kind has lines across the rows, a third closer ones; a fifth
 * crop takes the first one's colours with broad lines over them, and so on.
 */
final class Looks {
  private final double headingDegrees;

  /** Looks for rows on a heading. */
  Looks(double headingDegrees) {
    this.headingDegrees = headingDegrees;
  }

  /**
   * The look of a zone.
   *
   * @param crop number of the crop, from 0
   * @param variant number of the product or rate among those of the same kind, from 0
   */
  Look look(int crop, Zone.Kind kind, int variant) {
    int fill = Palette.fill(crop, kind);
    int ink = Palette.ink(fill);
    int broad = Palette.broadInk(fill);
    List<Hatch> hatches = new ArrayList<>();
    int round = crop / Palette.CROPS;
    if (round % 2 == 1) {
      hatches.add(Hatch.lines(alongRows() + 30, 9, 2.5, broad));
    }
    if (round / 2 % 2 == 1) {
      hatches.add(Hatch.lines(alongRows() + 120, 9, 2.5, broad));
    }
    if (kind == Zone.Kind.BORDER) {
      hatches.add(Hatch.lines(alongRows() + 45, 3.2, 0.55, ink));
    } else if (kind == Zone.Kind.HEADLAND) {
      hatches.add(Hatch.dots(alongRows() + 45, 3.6, 1.1, ink));
    }
    if (variant > 0) {
      hatches.add(Hatch.lines(alongRows() + 90, variant == 1 ? 5 : 2.2, 0.4, ink));
    }
    return new Look(fill, hatches);
  }

  /** What lies over the look of a zone in a partial pass: lines the other way, dark on light. */
  List<Hatch> partial() {
    double angle = alongRows() - 45;
    return List.of(
        Hatch.lines(angle, 4.5, 1.7, Scene.WHITE), Hatch.lines(angle, 4.5, 0.8, Scene.INK));
  }

  /** Direction of the rows on the page, clockwise from the x axis. */
  private double alongRows() {
    return headingDegrees - 90;
  }
}
