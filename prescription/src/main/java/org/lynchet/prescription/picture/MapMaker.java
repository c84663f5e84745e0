package org.lynchet.prescription.picture;

import java.util.ArrayList;
import java.util.List;
import org.locationtech.jts.geom.Coordinate;
import org.lynchet.prescription.zone.DrivenPass;
import org.lynchet.prescription.zone.FieldLayout;
import org.lynchet.prescription.zone.HeadlandPass;

/** Draws the map of a field laid out into a box, from the bottom to the top, and the map's foot. */
final class MapMaker {
  /** Passes narrower than this on the page, in points, have no line. */
  private static final double NARROWEST_PASS = 4;

  private final FieldLayout layout;
  private final Entries entries;
  private final UnitSystem units;
  private final GuidanceMarks line;
  private final Box map;
  private final MapPlane plane;
  private final Labels labels;
  private final PassNumbers numbers;

  /**
   * The map in a box.
   *
   * @param plane places the field in the box
   */
  MapMaker(
      FieldLayout layout,
      Entries entries,
      UnitSystem units,
      GuidanceMarks line,
      Box map,
      MapPlane plane) {
    this.layout = layout;
    this.entries = entries;
    this.units = units;
    this.line = line;
    this.map = map;
    this.plane = plane;
    this.labels = new Labels(map);
    this.numbers = PassNumbers.ofPasses(layout, plane, labels);
  }

  /** The map of a field and its guidance line, as large as a box takes them. */
  static MapMaker filling(
      Box map, FieldLayout layout, Entries entries, UnitSystem units, GuidanceMarks line) {
    MapPlane plane = Page.plane(shown(layout, line), layout.frame(), map);
    return new MapMaker(layout, entries, units, line, map, plane);
  }

  /** The places that must lie on a map of a field. */
  static List<Coordinate> shown(FieldLayout layout, GuidanceMarks line) {
    List<Coordinate> shown =
        new ArrayList<>(FieldEdge.of(layout.boundary(), layout.frame()).vertices());
    if (line.isDrawn()) {
      shown.addAll(line.places());
    }
    return shown;
  }

  /** The field, and the foot below it. */
  List<Scene.Layer> fieldAndFoot() {
    List<Scene.Layer> layers = new ArrayList<>(field());
    layers.addAll(foot());
    return layers;
  }

  /** The field with everything that lies on it. */
  List<Scene.Layer> field() {
    List<Mark> ab = line.isDrawn() ? line.marks(plane, labels) : List.of();
    ManagementZoneMarks managementZones = new ManagementZoneMarks(layout.zones(), plane);
    Looks looks = new Looks(layout.frame().headingDegrees());
    List<Scene.Layer> layers = new ArrayList<>();
    layers.add(new Scene.Layer("zones", ZoneMarks.of(entries, plane)));
    layers.add(new Scene.Layer("partial-passes", ZoneMarks.partial(layout.zones(), looks, plane)));
    layers.add(new Scene.Layer("waterways", WaterwayMarks.of(layout.waterways(), plane)));
    layers.add(new Scene.Layer("passes", passLines()));
    layers.add(new Scene.Layer("boundary", boundary(layout, map, plane)));
    layers.add(new Scene.Layer("management-zones", managementZones.edges()));
    layers.add(new Scene.Layer("ab-line", ab));
    layers.add(new Scene.Layer("pass-numbers", numbers.marks()));
    layers.add(new Scene.Layer("management-zone-names", managementZones.names(labels)));
    return layers;
  }

  /** North arrow, scale bar and notes below the box, in a height of {@link Page#FOOT}. */
  List<Scene.Layer> foot() {
    return List.of(
        new Scene.Layer("north-arrow", northArrow()),
        new Scene.Layer("scale-bar", scaleBar()),
        new Scene.Layer("notes", notes()));
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
  static List<Mark> boundary(FieldLayout layout, Box map, MapPlane plane) {
    Outline outline = Outline.rings();
    plane.add(layout.boundary(), outline);
    Outline outside = Outline.of(map);
    outline.parts().forEach(outside::add);
    return List.of(
        Mark.Area.plain(outside, Scene.WHITE), new Mark.Line(outline, Scene.INK, 1.3, 0));
  }

  private double footTop() {
    return map.bottom() + Page.FOOT - NorthArrow.HEIGHT;
  }

  private List<Mark> northArrow() {
    return NorthArrow.marks(map.left(), footTop());
  }

  private List<Mark> scaleBar() {
    double left = map.left() + NorthArrow.WIDTH + 20;
    return ScaleBar.of(plane.pointsPerMetre(), units).marks(left, footTop() + 10);
  }

  private List<Mark> notes() {
    List<Mark> notes = new ArrayList<>();
    double right = map.right();
    double bottom = footTop() + NorthArrow.HEIGHT - 2;
    if (!layout.passes().isEmpty()) {
      notes.add(Mark.Text.right(numbers.words("pass", "passes"), right, bottom, 9));
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
}
