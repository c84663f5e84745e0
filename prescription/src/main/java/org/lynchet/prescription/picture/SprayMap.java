package org.lynchet.prescription.picture;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalInt;
import org.jspecify.annotations.Nullable;
import org.locationtech.jts.geom.Coordinate;
import org.lynchet.prescription.plan.PlannedGuidance.Position;
import org.lynchet.prescription.setback.Neighbour;
import org.lynchet.prescription.setback.SprayPlan;
import org.lynchet.prescription.spraying.SprayedArea;
import org.lynchet.prescription.zone.FieldLayout;
import org.lynchet.prescription.zone.Zone;

/**
 * Puts the map of what is sprayed on a sheet: crops, strip numbers, what is set aside, neighbours
 * near the field and its entrance.
 */
public final class SprayMap {
  private static final double NOTE = 9;
  private static final double ENTRANCE = 6;
  private static final String ENTRANCE_WORD = "entrance";
  private static final int UNSPRAYED = 0xE2E2E2;

  /** The entrance is shown if it is at most this far from the field, as a share of its width. */
  private static final double NEAR = 0.5;

  /** What is set aside: white, with lines both ways. */
  static final Look SET_ASIDE =
      new Look(
          Scene.WHITE,
          List.of(Hatch.lines(20, 4, 0.5, Scene.INK), Hatch.lines(110, 4, 0.5, Scene.INK)));

  private final FieldLayout layout;
  private final SprayPlan spray;
  private final UnitSystem units;
  private final GuidanceMarks line;
  private final FieldEdge edge;
  private final NeighbourMarks neighbours;

  private SprayMap(FieldLayout layout, SprayPlan spray) {
    this.layout = layout;
    this.spray = spray;
    this.units = UnitSystem.of(layout);
    this.line = GuidanceMarks.of(layout);
    this.edge = FieldEdge.of(layout.boundary(), layout.frame());
    this.neighbours = new NeighbourMarks(spray.neighbours(), layout.frame(), edge);
  }

  /** Draws what is sprayed of a layout. */
  public static SprayMap of(FieldLayout layout, SprayPlan spray) {
    return new SprayMap(layout, spray);
  }

  /** Adds the map with scale bar and north arrow, in a box. */
  public void addMap(
      Sheet sheet, double left, double top, double width, double height, double scale) {
    Box map = new Box(0, 0, width / scale, height / scale - Page.FOOT);
    List<Coordinate> shown = new ArrayList<>(edge.vertices());
    if (line.isDrawn()) {
      shown.addAll(line.places());
    }
    shown.addAll(neighbours.places());
    Coordinate entrance = entrance();
    if (entrance != null) {
      shown.add(entrance);
    }
    MapPlane plane = Page.plane(shown, layout.frame(), map);
    Labels labels = new Labels(map);
    Coordinate sign = entrance == null ? null : plane.fromOffset(entrance.x, entrance.y);
    if (sign != null) {
      labels.take(signBox(sign.x, sign.y));
    }
    PassNumbers numbers = PassNumbers.ofStrips(layout, plane, labels);
    List<Mark> marks = new ArrayList<>(ground(plane));
    marks.addAll(MapMaker.boundary(layout, map, plane));
    marks.addAll(neighbours.shapes(plane));
    marks.addAll(line.isDrawn() ? line.marks(plane, labels) : List.of());
    marks.addAll(numbers.marks());
    if (sign != null) {
      marks.addAll(entranceMarks(sign, new FreePlace(labels, map)));
    }
    marks.addAll(neighbours.names(layout.boundary(), plane, map, labels));
    double foot = map.bottom() + Page.FOOT - NorthArrow.HEIGHT;
    marks.addAll(NorthArrow.marks(0, foot));
    marks.addAll(
        ScaleBar.of(plane.pointsPerMetre(), units).marks(NorthArrow.WIDTH + 20, foot + 10));
    marks.add(
        Mark.Text.right(
            numbers.words("strip", "strips"), map.right(), foot + NorthArrow.HEIGHT - 2, NOTE));
    sheet.place(marks, left, top, scale);
  }

  private List<Mark> ground(MapPlane plane) {
    List<Mark> marks = new ArrayList<>();
    Outline field = Outline.rings();
    plane.add(layout.boundary(), field);
    marks.add(Mark.Area.plain(field, UNSPRAYED));
    Map<Look, Outline> outlines = new LinkedHashMap<>();
    for (SprayedArea area : spray.areas()) {
      Outline outline =
          outlines.computeIfAbsent(look(area.crop(), area.strip() == 0), l -> Outline.rings());
      plane.add(area.polygon(), outline);
    }
    outlines.forEach((look, outline) -> marks.add(Mark.Area.of(outline, look)));
    Outline aside = Outline.rings();
    spray.setAside().forEach(area -> plane.add(area.shape(), aside));
    marks.add(Mark.Area.of(aside, SET_ASIDE));
    return marks;
  }

  /** The look of what is sprayed: that of the crop's centre rows or of its headland on map.svg. */
  Look look(String crop, boolean headland) {
    return new Looks(layout.frame().headingDegrees())
        .look(
            Entries.crops(layout).indexOf(crop),
            headland ? Zone.Kind.HEADLAND : Zone.Kind.CENTRE,
            0);
  }

  /** Whether the map shows any of a neighbour. */
  boolean shows(Neighbour neighbour) {
    return neighbours.isNear(neighbour);
  }

  /** The entrance in the frame, if it is near enough for the map. */
  private @Nullable Coordinate entrance() {
    Position at = layout.plan().field().entrance();
    if (at == null) {
      return null;
    }
    Coordinate place = layout.frame().toOffset(at.longitudeDegrees(), at.latitudeDegrees());
    double near = NEAR * (edge.across().to() - edge.across().from());
    boolean isNear =
        edge.vertices().stream().anyMatch(vertex -> vertex.distance(place) <= Math.max(near, 50));
    return isNear ? place : null;
  }

  /** The sign, and the word below it or as near as there is room. */
  private static List<Mark> entranceMarks(Coordinate at, FreePlace places) {
    List<Mark> marks = new ArrayList<>(entranceSign(at.x, at.y));
    double width = TextWidth.of(ENTRANCE_WORD, NOTE, true);
    places
        .take(at.x, at.y + 0.75 * NOTE, width, NOTE)
        .ifPresent(
            box ->
                marks.add(
                    Mark.Text.label(ENTRANCE_WORD, box.centreX(), box.centreY(), NOTE, true)));
    return marks;
  }

  /** A triangle that stands on its tip. */
  static List<Mark> entranceSign(double x, double y) {
    Box box = signBox(x, y);
    Outline triangle = Outline.ring(x, y, box.left(), box.top(), box.right(), box.top());
    return List.of(
        new Mark.Line(triangle, Scene.WHITE, 2.5, 0),
        new Mark.Area(triangle, OptionalInt.of(Scene.INK), List.of()));
  }

  private static Box signBox(double tipX, double tipY) {
    return new Box(tipX - ENTRANCE * 0.7, tipY - ENTRANCE * 1.4, tipX + ENTRANCE * 0.7, tipY);
  }

  /** The height of the legend in points. */
  public double legendHeight(int columns, double scale) {
    return legend().height(columns) * scale;
  }

  /** Adds the legend: crops with areas and open sections, what is set aside, neighbours. */
  public void addLegend(Sheet sheet, double left, double top, int columns, double scale) {
    sheet.place(legend().marks(0, 0, columns, Page.COLUMN_GAP), left, top, scale);
  }

  private LegendColumns legend() {
    String guidance = line.isDrawn() ? layout.guidance().name() : "";
    return new SprayLegend(layout, spray, units, this).columns(guidance, entrance() != null);
  }
}
