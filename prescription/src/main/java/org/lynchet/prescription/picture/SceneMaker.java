package org.lynchet.prescription.picture;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.locationtech.jts.geom.Coordinate;
import org.lynchet.geometry.guidance.Curve;
import org.lynchet.prescription.driving.Driving;
import org.lynchet.prescription.plan.PlannedStrip;
import org.lynchet.prescription.quantity.Count;
import org.lynchet.prescription.zone.DrivenPass;
import org.lynchet.prescription.zone.FieldLayout;

/** Draws a field laid out on a page of its own: title, map, legend and loading charts. */
final class SceneMaker {
  private static final double TITLE_SIZE = 20;
  private static final double SMALL_TITLE_SIZE = 14;
  private static final double SIZE = 10;

  private final FieldLayout layout;
  private final UnitSystem units;
  private final Entries entries;
  private final FieldEdge edge;
  private final GuidanceMarks line;
  private final Page page;
  private final MapPlane plane;
  private final Legend legend;
  private final LoadingMarks loading;

  SceneMaker(FieldLayout layout) {
    this.layout = layout;
    this.units = UnitSystem.of(layout);
    this.entries = Entries.of(layout);
    this.edge = FieldEdge.of(layout.boundary(), layout.frame());
    this.line = GuidanceMarks.of(layout);
    this.legend =
        new Legend(layout, entries, units, line.isDrawn() ? layout.guidance().name() : "");
    this.loading = new LoadingMarks(Driving.of(layout), entries);
    List<Coordinate> shown = new ArrayList<>(edge.vertices());
    if (line.isDrawn()) {
      shown.addAll(line.places());
    }
    this.page = Page.of(shown, layout.frame(), legend, loading.height());
    this.plane = page.plane();
  }

  Scene make() {
    MapMaker map = new MapMaker(layout, entries, units, line, page.map(), plane);
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
    return new Scene(name() + ": map of the plan", description(), layers);
  }

  private String name() {
    return SafeText.of(layout.plan().field().name()).strip();
  }

  private String facts() {
    return String.format(
        Locale.ROOT,
        "%s \u00b7 %s \u00b7 %s \u00b7 %s",
        heading(),
        units.area(layout.areaSquareMetres(), layout.areaSquareMetres()),
        Count.of(layout.passes().stream().mapToInt(DrivenPass::strip).distinct().count(), "strip"),
        Count.of(layout.passes().size(), "pass"));
  }

  private String heading() {
    if (layout.guidance() instanceof Curve curve) {
      return String.format(
          Locale.ROOT,
          "curve, headings %.0f\u00b0 to %.0f\u00b0",
          curve.directions().firstHeadingDegrees(),
          curve.directions().lastHeadingDegrees());
    }
    return String.format(Locale.ROOT, "heading %.1f\u00b0", layout.frame().headingDegrees());
  }

  private String description() {
    List<String> crops =
        layout.plan().strips().stream()
            .map(PlannedStrip::crop)
            .distinct()
            .map(SafeText::of)
            .toList();
    return "The field "
        + name()
        + " seen from above, north up, with strips of "
        + String.join(" and ", crops)
        + ": "
        + facts()
        + ".";
  }

  private List<Mark> title() {
    double room = page.map().width();
    double top = Page.MARGIN;
    boolean fits = TextWidth.of(name(), TITLE_SIZE, true) <= room;
    double size = fits ? TITLE_SIZE : SMALL_TITLE_SIZE;
    return List.of(
        Mark.Text.left(TextWidth.cut(name(), room, size, true), Page.MARGIN, top + 17, size)
            .inBold(),
        Mark.Text.left(TextWidth.cut(facts(), room, SIZE, false), Page.MARGIN, top + 34, SIZE));
  }

  private List<Mark> loading() {
    double top = page.map().bottom() + Page.FOOT;
    return loading.marks(Page.MARGIN, top, page.map().width());
  }
}
