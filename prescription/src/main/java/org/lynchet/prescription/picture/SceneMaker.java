package org.lynchet.prescription.picture;

import java.util.ArrayList;
import java.util.List;
import org.lynchet.prescription.driving.Driving;
import org.lynchet.prescription.zone.FieldLayout;

/** Draws a field laid out on a page of its own: title, map, legend and loading charts. */
final class SceneMaker {
  private static final double TITLE_SIZE = 20;
  private static final double SMALL_TITLE_SIZE = 14;
  private static final double SIZE = 10;

  private final FieldLayout layout;
  private final MapWords words;
  private final UnitSystem units;
  private final Entries entries;
  private final GuidanceMarks line;
  private final Page page;
  private final Legend legend;
  private final LoadingMarks loading;

  SceneMaker(FieldLayout layout) {
    this.layout = layout;
    this.units = UnitSystem.of(layout);
    this.words = new MapWords(layout, units);
    this.entries = Entries.of(layout);
    this.line = GuidanceMarks.of(layout);
    this.legend =
        new Legend(layout, entries, units, line.isDrawn() ? layout.guidance().name() : "");
    this.loading = new LoadingMarks(Driving.of(layout), entries);
    this.page = Page.of(MapMaker.shown(layout, line), layout.frame(), legend, loading.height());
  }

  Scene make() {
    MapMaker map = new MapMaker(layout, entries, units, line, page.map(), page.plane());
    List<Scene.Layer> layers = new ArrayList<>(map.field());
    layers.add(new Scene.Layer("heading", title()));
    layers.addAll(map.foot());
    layers.add(new Scene.Layer("loading", loading()));
    layers.add(
        new Scene.Layer(
            "legend",
            legend
                .columns()
                .marks(
                    page.legend().left(),
                    page.legend().top(),
                    page.legendColumns(),
                    Page.COLUMN_GAP)));
    return words.scene(layers);
  }

  private List<Mark> title() {
    double room = page.map().width();
    double top = Page.MARGIN;
    boolean fits = TextWidth.of(words.name(), TITLE_SIZE, true) <= room;
    double size = fits ? TITLE_SIZE : SMALL_TITLE_SIZE;
    return List.of(
        Mark.Text.left(TextWidth.cut(words.name(), room, size, true), Page.MARGIN, top + 17, size)
            .inBold(),
        Mark.Text.left(
            TextWidth.cut(words.facts(), room, SIZE, false), Page.MARGIN, top + 34, SIZE));
  }

  private List<Mark> loading() {
    double top = page.map().bottom() + Page.FOOT;
    return loading.marks(Page.MARGIN, top, page.map().width());
  }
}
