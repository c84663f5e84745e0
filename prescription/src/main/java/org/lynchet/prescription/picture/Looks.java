package org.lynchet.prescription.picture;

import java.util.ArrayList;
import java.util.List;
import org.lynchet.prescription.zone.Zone;

/**
 * Makes the looks of zones: headland has dots; border rows and centres of the first four crops have
 * marks of their own, so that they tell apart in black and white. Border rows have lines at 45
 * degrees to the rows, lines crossed at that angle, broad lines, or a grid; centres of the first
 * two crops, the pale and the dark one, are plain, the third has few dots, the fourth a wide grid.
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
    hatches.addAll(
        switch (kind) {
          case CENTRE -> centre(crop % Palette.CROPS, ink);
          case BORDER -> border(crop % Palette.CROPS, ink);
          case HEADLAND -> List.of(Hatch.dots(alongRows() + 45, 3.6, 1.1, ink));
        });
    if (variant > 0) {
      hatches.add(Hatch.lines(alongRows() + 90, variant == 1 ? 5 : 2.2, 0.4, ink));
    }
    return new Look(fill, hatches);
  }

  private List<Hatch> centre(int crop, int ink) {
    return switch (crop) {
      case 2 -> List.of(Hatch.dots(alongRows(), 6.5, 1.2, ink));
      case 3 -> grid(alongRows() + 22.5, 7, 0.4, ink);
      default -> List.of();
    };
  }

  private List<Hatch> border(int crop, int ink) {
    return switch (crop) {
      case 0 -> List.of(Hatch.lines(alongRows() + 45, 3.2, 0.55, ink));
      case 1 -> grid(alongRows() + 45, 3.8, 0.6, ink);
      case 2 -> List.of(Hatch.lines(alongRows() + 22.5, 5, 1.6, ink));
      default -> grid(alongRows(), 4.4, 0.6, ink);
    };
  }

  private static List<Hatch> grid(double angle, double spacing, double width, int ink) {
    return List.of(
        Hatch.lines(angle, spacing, width, ink), Hatch.lines(angle + 90, spacing, width, ink));
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
