package org.lynchet.prescription.picture;

import java.util.List;
import org.lynchet.prescription.driving.Driving;
import org.lynchet.prescription.zone.FieldLayout;

/**
 * The map of a field laid out as a part of a page of HTML: the map at the left, its loading charts
 * below it, the legend at the right; no title.
 *
 * <p>It is so narrow that the legend is printed in letters of 7 points and more on A4 and letter
 * paper, upright, with margins of 10 mm.
 *
 * @param scene the picture
 * @param view the part of it that is shown, in points
 */
record PageMap(Scene scene, Box view) {
  /** Width in points. */
  static final double WIDTH = 720;

  /** The least height of map and foot, in points. */
  private static final double HEIGHT = 300;

  private static final double LEGEND_GAP = 12;

  /** Draws a layout; it must have at least one zone. */
  static PageMap of(FieldLayout layout) {
    UnitSystem units = UnitSystem.of(layout);
    Entries entries = Entries.of(layout);
    GuidanceMarks line = GuidanceMarks.of(layout);
    LegendColumns legend =
        new Legend(layout, entries, units, line.isDrawn() ? layout.guidance().name() : "")
            .columns();
    LoadingMarks loading = new LoadingMarks(Driving.of(layout), entries);
    double height = Math.max(legend.height(1), HEIGHT + loading.height());
    double legendLeft = WIDTH - LegendRow.WIDTH;
    Box map = new Box(0, 0, legendLeft - LEGEND_GAP, height - Page.FOOT - loading.height());
    List<Scene.Layer> layers = MapMaker.filling(map, layout, entries, units, line).fieldAndFoot();
    layers.add(new Scene.Layer("loading", loading.marks(0, map.bottom() + Page.FOOT, map.width())));
    layers.add(new Scene.Layer("legend", legend.marks(legendLeft, 0, 1, Page.COLUMN_GAP)));
    Scene scene = new MapWords(layout, units).scene(layers);
    return new PageMap(scene, new Box(0, 0, WIDTH, Math.ceil(height)));
  }
}
