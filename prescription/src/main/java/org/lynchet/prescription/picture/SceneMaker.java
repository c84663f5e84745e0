package org.lynchet.prescription.picture;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.locationtech.jts.geom.Coordinate;
import org.lynchet.geometry.guidance.Curve;
import org.lynchet.prescription.driving.Driving;
import org.lynchet.prescription.plan.PlannedStrip;
import org.lynchet.prescription.zone.DrivenPass;
import org.lynchet.prescription.zone.FieldLayout;
import org.lynchet.prescription.zone.HeadlandPass;

/** Draws a field laid out: finds the scale, places everything, from the bottom to the top. */
final class SceneMaker {
  /** Passes narrower than this on the page, in points, have no line. */
  private static final double NARROWEST_PASS = 4;

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
    Labels labels = new Labels(page.map());
    PassNumbers numbers = new PassNumbers(layout, plane, labels);
    List<Mark> ab = line.isDrawn() ? line.marks(plane, labels) : List.of();
    ManagementZoneMarks managementZones = new ManagementZoneMarks(layout.zones(), plane);
    Looks looks = new Looks(layout.frame().headingDegrees());
    List<Scene.Layer> layers = new ArrayList<>();
    layers.add(new Scene.Layer("zones", ZoneMarks.of(entries, plane)));
    layers.add(new Scene.Layer("partial-passes", ZoneMarks.partial(layout.zones(), looks, plane)));
    layers.add(new Scene.Layer("waterways", WaterwayMarks.of(layout.waterways(), plane)));
    layers.add(new Scene.Layer("passes", passLines()));
    layers.add(new Scene.Layer("boundary", boundary()));
    layers.add(new Scene.Layer("management-zones", managementZones.edges()));
    layers.add(new Scene.Layer("ab-line", ab));
    layers.add(new Scene.Layer("pass-numbers", numbers.marks()));
    layers.add(new Scene.Layer("management-zone-names", managementZones.names(labels)));
    layers.add(new Scene.Layer("heading", title()));
    layers.add(new Scene.Layer("north-arrow", northArrow()));
    layers.add(new Scene.Layer("scale-bar", scaleBar()));
    layers.add(new Scene.Layer("notes", notes(numbers)));
    layers.add(new Scene.Layer("loading", loading()));
    layers.add(
        new Scene.Layer(
            "legend",
            legend.marks(
                page.legend().left(), page.legend().top(), page.legendColumns(), Page.COLUMN_GAP)));
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
        count(layout.passes().stream().mapToInt(DrivenPass::strip).distinct().count(), "strip"),
        count(layout.passes().size(), "pass"));
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

  private static String count(long number, String word) {
    String plural = word.endsWith("s") ? word + "es" : word + "s";
    return number + " " + (number == 1 ? word : plural);
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

  private List<Mark> passLines() {
    Outline outline = Outline.lines();
    for (DrivenPass pass : layout.passes()) {
      double width = pass.pass().rightMetres() - pass.pass().leftMetres();
      if (width * plane.pointsPerMetre() >= NARROWEST_PASS) {
        plane.add(pass.line(), outline);
      }
    }
    double outermost =
        layout.headlandPasses().stream().mapToDouble(HeadlandPass::distanceMetres).min().orElse(0);
    if (2 * outermost * plane.pointsPerMetre() >= NARROWEST_PASS) {
      layout.headlandPasses().forEach(pass -> plane.add(pass.line(), outline));
    }
    return outline.isEmpty() ? List.of() : List.of(new Mark.Line(outline, Scene.INK, 0.35, 2));
  }

  /** The boundary, and white over what lies outside it: lines of passes overshoot slanted sides. */
  private List<Mark> boundary() {
    Outline outline = Outline.rings();
    plane.add(layout.boundary(), outline);
    Outline outside = Outline.of(page.map());
    outline.parts().forEach(outside::add);
    return List.of(
        Mark.Area.plain(outside, Scene.WHITE), new Mark.Line(outline, Scene.INK, 1.3, 0));
  }

  private double footTop() {
    return page.map().bottom() + Page.FOOT - NorthArrow.HEIGHT;
  }

  private List<Mark> northArrow() {
    return NorthArrow.marks(Page.MARGIN, footTop());
  }

  private List<Mark> scaleBar() {
    double left = Page.MARGIN + NorthArrow.WIDTH + 20;
    return ScaleBar.of(plane.pointsPerMetre(), units).marks(left, footTop() + 10);
  }

  private List<Mark> loading() {
    double top = page.map().bottom() + Page.FOOT;
    return loading.marks(Page.MARGIN, top, page.map().width());
  }

  private List<Mark> notes(PassNumbers numbers) {
    List<Mark> notes = new ArrayList<>();
    double right = page.map().right();
    double bottom = footTop() + NorthArrow.HEIGHT - 2;
    if (!layout.passes().isEmpty()) {
      notes.add(Mark.Text.right(numbering(numbers.step()), right, bottom, 9));
    }
    if (!line.isDrawn()) {
      double outside = line.outsideMetres();
      String text =
          layout.guidance().name()
              + ": "
              + units.length(Math.abs(outside))
              + (outside < 0 ? " left" : " right")
              + " of the field";
      notes.add(Mark.Text.right(text, right, bottom - 12, 9));
    }
    return notes;
  }

  private static String numbering(int step) {
    return step == 1 ? "numbers: passes" : "numbers: every " + step + ordinal(step) + " pass";
  }

  private static String ordinal(int step) {
    return step == 2 ? "nd" : "th";
  }
}
