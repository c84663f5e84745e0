package org.lynchet.prescription.picture;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.LineString;
import org.locationtech.jts.geom.Polygon;
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

  List<Mark> marks(MapPlane plane, Box map) {
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
      if (!one.shapes().isEmpty()) {
        marks.add(name(one, plane, map));
      }
    }
    return marks;
  }

  private static void add(LineString line, Outline to, MapPlane plane) {
    List<Coordinate> points = new ArrayList<>();
    for (Coordinate at : line.getCoordinates()) {
      points.add(plane.fromOffset(at.x, at.y));
    }
    to.add(points);
  }

  /** The name on the first part, moved as far as it takes to be on the map. */
  private static Mark name(Near one, MapPlane plane, Box map) {
    Coordinate inside = one.shapes().get(0).getInteriorPoint().getCoordinate();
    Coordinate at = plane.fromOffset(inside.x, inside.y);
    String text = TextWidth.cut(SafeText.of(one.name()), LONGEST_NAME, SIZE, true);
    double half = TextWidth.of(text, SIZE, true) / 2;
    double x = Math.max(map.left() + half, Math.min(map.right() - half, at.x));
    double y = Math.max(map.top() + SIZE, Math.min(map.bottom() - SIZE, at.y));
    return Mark.Text.label(text, x, y, SIZE, true);
  }
}
