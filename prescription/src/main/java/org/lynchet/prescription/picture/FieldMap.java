package org.lynchet.prescription.picture;

import org.lynchet.prescription.zone.FieldLayout;

/**
 * Draws a field laid out, on one page to print.
 *
 * <p>The page is 11 by 8.25 inches, for letter and A4 paper, landscape. North is up. It shows the
 * zones by crop and kind, partial passes, the boundary, the edges and names of management zones,
 * the AB line, pass numbers, a scale bar and a north arrow in the plan's units, and a legend with
 * product, rate and area, and below the map what goes into the hopper of each row unit where that
 * is not the same for all.
 */
public final class FieldMap extends Picture {
  private FieldMap(Scene scene) {
    super(scene);
  }

  /** Draws a layout; it must have at least one zone. */
  public static FieldMap of(FieldLayout layout) {
    return new FieldMap(new SceneMaker(layout).make());
  }
}
