package org.lynchet.prescription.picture;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.OptionalInt;
import java.util.function.Predicate;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.LineString;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.geom.prep.PreparedGeometry;
import org.locationtech.jts.geom.prep.PreparedGeometryFactory;
import org.locationtech.jts.operation.overlayng.OverlayNG;
import org.locationtech.jts.operation.overlayng.OverlayNGRobust;
import org.lynchet.geometry.guidance.OffsetFrame;
import org.lynchet.prescription.setback.Neighbour;

/** Draws neighbours as far as they are near the field, with their names. */
final class NeighbourMarks {
  static final double WIDTH = 1.8;
  static final double DASH = 4;

  private static final double CASING = 4;
  private static final double SIZE = 9;
  private static final double LONGEST_NAME = 110;

  /** The height of a name with what reaches below its baseline, in sizes. */
  private static final double NAME_HEIGHT = 1.3;

  /** Farther from what it names than this, in points, a line leads from a name to it. */
  private static final double FAR = 9;

  /** A place beside the field is taken if it is at most this far away, in points. */
  private static final double NEAR = 60;

  private static final double LEADER = 0.8;

  /** How far around the field the map looks for neighbours, in metres, at least. */
  private static final double AROUND = 60;

  /** What lies over the area of a neighbour. */
  static final List<Hatch> HATCHES = List.of(Hatch.lines(60, 6, 0.9, Scene.INK));

  private final List<Near> near = new ArrayList<>();

  /** The part of a neighbour that is near, in the frame of the AB line. */
  private record Near(String name, List<Geometry> shapes) {}

  NeighbourMarks(List<Neighbour> neighbours, OffsetFrame frame, FieldEdge edge) {
    for (Neighbour neighbour : neighbours) {
      Envelope around = new Envelope();
      edge.vertices().forEach(around::expandToInclude);
      around.expandBy(Math.max(AROUND, 1.5 * neighbour.distanceMetres()));
      Geometry shape = neighbour.shape().copy();
      shape.apply((Coordinate at) -> at.setCoordinate(frame.toOffset(at.x, at.y)));
      shape.geometryChanged();
      near.add(new Near(neighbour.name(), clipped(shape, around)));
    }
  }

  /** Whether any of a neighbour is near. */
  boolean isNear(Neighbour neighbour) {
    return near.stream()
        .anyMatch(one -> one.name().equals(neighbour.name()) && !one.shapes().isEmpty());
  }

  /** The lines and polygons of a shape within a box. */
  private static List<Geometry> clipped(Geometry shape, Envelope box) {
    Geometry area = shape.getFactory().toGeometry(box);
    List<Geometry> parts = new ArrayList<>();
    for (int i = 0; i < shape.getNumGeometries(); i++) {
      Geometry inside =
          OverlayNGRobust.overlay(shape.getGeometryN(i), area, OverlayNG.INTERSECTION);
      for (int k = 0; k < inside.getNumGeometries(); k++) {
        if (!inside.getGeometryN(k).isEmpty()) {
          parts.add(inside.getGeometryN(k));
        }
      }
    }
    return parts;
  }

  /** Places of the neighbours, in the frame, for a map that shows them. */
  List<Coordinate> places() {
    return near.stream()
        .flatMap(one -> one.shapes().stream())
        .flatMap(shape -> List.of(shape.getCoordinates()).stream())
        .toList();
  }

  /** What they cover or where they run, without names. */
  List<Mark> shapes(MapPlane plane) {
    List<Mark> marks = new ArrayList<>();
    for (Near one : near) {
      Outline areas = Outline.rings();
      Outline lines = Outline.lines();
      for (Geometry shape : one.shapes()) {
        if (shape instanceof Polygon polygon) {
          add(polygon.getExteriorRing(), areas, plane);
          for (int i = 0; i < polygon.getNumInteriorRing(); i++) {
            add(polygon.getInteriorRingN(i), areas, plane);
          }
        } else if (shape instanceof LineString course) {
          add(course, lines, plane);
        }
      }
      marks.add(new Mark.Area(areas, OptionalInt.empty(), HATCHES));
      marks.add(new Mark.Line(areas, Scene.INK, WIDTH, DASH));
      marks.add(new Mark.Line(lines, Scene.WHITE, CASING, 0));
      marks.add(new Mark.Line(lines, Scene.INK, WIDTH, DASH));
    }
    return marks;
  }

  /**
   * Their names, none of them on another label; they take their places, beside the field if there
   * is room.
   *
   * @param field the boundary in longitude and latitude
   */
  List<Mark> names(Geometry field, MapPlane plane, Box map, Labels labels) {
    Geometry onPage = field.copy();
    onPage.apply((Coordinate at) -> at.setCoordinate(plane.fromLonLat(at)));
    onPage.geometryChanged();
    PreparedGeometry drawn = PreparedGeometryFactory.prepare(onPage);
    List<Mark> lines = new ArrayList<>();
    List<Mark> names = new ArrayList<>();
    for (Near one : near) {
      if (!one.shapes().isEmpty()) {
        addName(one, drawn, plane, new FreePlace(labels, map), lines, names);
      }
    }
    lines.addAll(names);
    return lines;
  }

  private static void add(LineString line, Outline to, MapPlane plane) {
    List<Coordinate> points = new ArrayList<>();
    for (Coordinate at : line.getCoordinates()) {
      points.add(plane.fromOffset(at.x, at.y));
    }
    to.add(points);
  }

  /** The name on the largest part, or as near to it as there is room. */
  private static void addName(
      Near one,
      PreparedGeometry field,
      MapPlane plane,
      FreePlace places,
      List<Mark> lines,
      List<Mark> names) {
    Geometry largest =
        Collections.max(
            one.shapes(),
            Comparator.comparingDouble(Geometry::getArea).thenComparing(Geometry::getLength));
    Coordinate inside = largest.getInteriorPoint().getCoordinate();
    Coordinate at = plane.fromOffset(inside.x, inside.y);
    String text = FontWidths.get().cut(SafeText.of(one.name()), LONGEST_NAME, SIZE, true);
    double width = FontWidths.get().of(text, SIZE, true) + 2;
    double height = NAME_HEIGHT * SIZE;
    Predicate<Box> beside = box -> !field.intersects(shape(box, largest.getFactory()));
    places
        .take(at.x, at.y, width, height, beside, NEAR)
        .or(() -> places.take(at.x, at.y, width, height))
        .ifPresent(
            box -> {
              names.add(Mark.Text.label(text, box.centreX(), box.centreY(), SIZE, true));
              double x = Math.max(box.left(), Math.min(box.right(), at.x));
              double y = Math.max(box.top(), Math.min(box.bottom(), at.y));
              if (Math.hypot(x - at.x, y - at.y) > FAR) {
                Outline leader = Outline.line(x, y, at.x, at.y);
                lines.add(new Mark.Line(leader, Scene.WHITE, CASING, 0));
                lines.add(new Mark.Line(leader, Scene.INK, LEADER, 0));
              }
            });
  }

  private static Geometry shape(Box box, GeometryFactory factory) {
    return factory.toGeometry(new Envelope(box.left(), box.right(), box.top(), box.bottom()));
  }
}
