package org.lynchet.prescription.setback;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.CoordinateFilter;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.geom.prep.PreparedGeometry;
import org.locationtech.jts.geom.prep.PreparedGeometryFactory;
import org.locationtech.jts.geom.util.GeometryFixer;
import org.locationtech.jts.geom.util.PolygonExtracter;
import org.locationtech.jts.operation.overlayng.OverlayNG;
import org.locationtech.jts.operation.overlayng.OverlayNGRobust;
import org.locationtech.jts.operation.union.UnaryUnionOp;
import org.lynchet.prescription.fault.Warning;
import org.lynchet.prescription.plan.PlannedSetback.Side;
import org.lynchet.prescription.setback.SprayPlan.SetAside;
import org.lynchet.prescription.spraying.SprayedArea;
import org.lynchet.prescription.zone.FieldLayout;

/** Cuts what lies within setbacks out of sprayed areas, in the plane of the field. */
final class SetbackCutter {
  private static final int QUADRANT_SEGMENTS = 32;

  /** A polygon around a circle has its edges this much farther out than one in it. */
  private static final double AROUND = 1 / Math.cos(Math.PI / (4 * QUADRANT_SEGMENTS));

  /** Coordinates have nine decimals. */
  private static final double ROUNDING = 1e9;

  /** What is left below this, in square metres, is not sprayed: no boom opens for it. */
  private static final double LEAST = 0.1;

  private final FieldLayout layout;
  private final List<Neighbour> neighbours;
  private final List<SprayedArea> areas = new ArrayList<>();
  private final List<SetAside> setAside = new ArrayList<>();
  private final List<Warning> warnings = new ArrayList<>();

  SetbackCutter(FieldLayout layout, List<Neighbour> neighbours) {
    this.layout = layout;
    this.neighbours = neighbours;
  }

  SprayPlan cut() {
    List<Geometry> within = new ArrayList<>();
    addSides(within);
    for (Neighbour neighbour : neighbours) {
      if (neighbour.distanceMetres() > 0) {
        within.add(around(toPlane(neighbour.shape()), neighbour.distanceMetres()));
      }
    }
    if (within.isEmpty()) {
      return new SprayPlan(layout.spraying().areas(), List.of(), neighbours, warnings);
    }
    PreparedGeometry setback = PreparedGeometryFactory.prepare(UnaryUnionOp.union(within));
    layout.spraying().areas().forEach(area -> cut(area, setback));
    addCropsWithoutRest();
    return new SprayPlan(areas, setAside, neighbours, warnings);
  }

  private void addSides(List<Geometry> within) {
    Map<Side, List<Geometry>> sides =
        FieldSides.of(toPlane(layout.boundary()), layout.frame().headingDegrees());
    layout
        .plan()
        .setback()
        .sides()
        .forEach(
            (side, distance) -> {
              if (!sides.containsKey(side)) {
                warnings.add(withoutSide(side));
              }
              for (Geometry line : sides.getOrDefault(side, List.of())) {
                if (distance.metres() > 0) {
                  within.add(around(line, distance.metres()));
                }
              }
            });
  }

  private static Warning withoutSide(Side side) {
    String word = side.name().toLowerCase(Locale.ROOT);
    return new Warning(
        Warning.Code.SETBACK_WITHOUT_SIDE,
        "setback.sides."
            + word
            + " sets nothing aside: no part of the boundary faces "
            + word
            + " within 45 degrees; name the side that it faces, or the neighbour there");
  }

  private void addCropsWithoutRest() {
    for (String crop : layout.spraying().crops()) {
      if (areas.stream().noneMatch(area -> area.crop().equals(crop))) {
        warnings.add(
            new Warning(
                Warning.Code.SETBACK_LEAVES_NOTHING,
                "setbacks set all of "
                    + crop
                    + " aside: nothing of it is sprayed; check the distances of setback.sides and"
                    + " setback.neighbours, and their units"));
      }
    }
  }

  private static Geometry around(Geometry shape, double distance) {
    return shape.buffer(distance * AROUND, QUADRANT_SEGMENTS);
  }

  private void cut(SprayedArea area, PreparedGeometry setback) {
    Geometry whole = toPlane(area.polygon());
    if (!setback.intersects(whole)) {
      areas.add(area);
      return;
    }
    Geometry left = OverlayNGRobust.overlay(whole, setback.getGeometry(), OverlayNG.DIFFERENCE);
    double kept = 0;
    for (int i = 0; i < left.getNumGeometries(); i++) {
      if (left.getGeometryN(i) instanceof Polygon piece && piece.getArea() >= LEAST) {
        kept += keep(area, piece);
      }
    }
    if (kept < area.areaSquareMetres()) {
      Geometry cut = OverlayNGRobust.overlay(whole, setback.getGeometry(), OverlayNG.INTERSECTION);
      Geometry areasOnly = cut.getFactory().buildGeometry(PolygonExtracter.getPolygons(cut));
      setAside.add(new SetAside(area.crop(), area.areaSquareMetres() - kept, toLonLat(areasOnly)));
    }
  }

  /** Adds what is left as sprayed areas of the same pass, and tells how much it is. */
  private double keep(SprayedArea area, Polygon piece) {
    Geometry rounded = toLonLat(piece);
    Geometry valid = rounded.isValid() ? rounded : GeometryFixer.fix(rounded);
    for (int i = 0; i < valid.getNumGeometries(); i++) {
      if (valid.getGeometryN(i) instanceof Polygon polygon) {
        areas.add(
            area.withPolygon(
                polygon,
                valid.getNumGeometries() == 1 ? piece.getArea() : toPlane(polygon).getArea()));
      }
    }
    return piece.getArea();
  }

  private Geometry toPlane(Geometry lonLat) {
    return changed(lonLat, at -> at.setCoordinate(layout.frame().toOffset(at.x, at.y)));
  }

  private Geometry toLonLat(Geometry plane) {
    return changed(
        plane,
        at -> {
          Coordinate lonLat = layout.frame().toLonLat(at.x, at.y);
          at.x = Math.rint(lonLat.x * ROUNDING) / ROUNDING;
          at.y = Math.rint(lonLat.y * ROUNDING) / ROUNDING;
        });
  }

  private static Geometry changed(Geometry shape, CoordinateFilter change) {
    Geometry copy = shape.copy();
    copy.apply(change);
    copy.geometryChanged();
    return copy;
  }
}
