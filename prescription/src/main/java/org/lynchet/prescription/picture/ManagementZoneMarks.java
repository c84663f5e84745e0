package org.lynchet.prescription.picture;

import java.util.ArrayList;
import java.util.Collection;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import org.locationtech.jts.coverage.CoverageUnion;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.CoordinateFilter;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.LineSegment;
import org.locationtech.jts.geom.LineString;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.geom.util.LinearComponentExtracter;
import org.locationtech.jts.operation.linemerge.LineMerger;
import org.lynchet.prescription.zone.Zone;

/**
 * Draws where management zones meet, and their names.
 *
 * <p>Zones share their edges vertex for vertex, so an edge of two management zones is found by
 * looking for the same segment in both.
 */
final class ManagementZoneMarks {
  private static final double SIZE = 10;
  private static final double LONGEST_NAME = 130;
  static final double WIDTH = 1.3;
  private static final double CASING = 2.8;
  static final double DASH = 6;

  private final Map<String, Geometry> areas = new TreeMap<>();

  ManagementZoneMarks(List<Zone> zones, MapPlane plane) {
    Map<String, List<Geometry>> parts = new TreeMap<>();
    for (Zone zone : zones) {
      String name = zone.managementZone();
      if (name != null) {
        parts.computeIfAbsent(name, n -> new ArrayList<>()).add(zone.polygon());
      }
    }
    parts.forEach((name, polygons) -> areas.put(name, onPage(polygons, plane)));
  }

  boolean isEmpty() {
    return areas.isEmpty();
  }

  private static Geometry onPage(List<Geometry> polygons, MapPlane plane) {
    Geometry union = CoverageUnion.union(polygons.toArray(Geometry[]::new)).copy();
    CoordinateFilter toPage =
        coordinate -> {
          Coordinate at = plane.fromLonLat(coordinate);
          coordinate.x = at.x;
          coordinate.y = at.y;
        };
    union.apply(toPage);
    union.geometryChanged();
    return union;
  }

  /** Dashed lines where two management zones meet. */
  List<Mark> edges() {
    Outline outline = Outline.lines();
    for (LineString line : merged(shared())) {
      outline.add(List.of(line.getCoordinates()));
    }
    return outline.isEmpty()
        ? List.of()
        : List.of(
            new Mark.Line(outline, Scene.WHITE, CASING, 0),
            new Mark.Line(outline, Scene.INK, WIDTH, DASH));
  }

  private Set<LineSegment> shared() {
    Set<LineSegment> seen = new HashSet<>();
    Set<LineSegment> shared = new LinkedHashSet<>();
    for (Geometry area : areas.values()) {
      Collection<?> rings = LinearComponentExtracter.getLines(area);
      for (Object ring : rings) {
        Coordinate[] points = ((LineString) ring).getCoordinates();
        for (int i = 1; i < points.length; i++) {
          LineSegment segment = new LineSegment(points[i - 1], points[i]);
          segment.normalize();
          if (!seen.add(segment)) {
            shared.add(segment);
          }
        }
      }
    }
    return shared;
  }

  private List<LineString> merged(Set<LineSegment> segments) {
    LineMerger merger = new LineMerger();
    for (Geometry area : areas.values()) {
      segments.forEach(segment -> merger.add(segment.toGeometry(area.getFactory())));
      break;
    }
    List<LineString> lines = new ArrayList<>();
    for (Object line : merger.getMergedLineStrings()) {
      lines.add((LineString) line);
    }
    return lines;
  }

  /** Names on the largest part of each management zone, and on others that have room for it. */
  List<Mark> names(Labels labels) {
    List<Mark> marks = new ArrayList<>();
    areas.forEach(
        (name, area) -> {
          String text = TextWidth.cut(SafeText.of(name), LONGEST_NAME, SIZE, true);
          double width = TextWidth.of(text, SIZE, true) + 4;
          Polygon largest = largest(area);
          for (int i = 0; i < area.getNumGeometries(); i++) {
            Geometry part = area.getGeometryN(i);
            Coordinate at = part.getInteriorPoint().getCoordinate();
            Box box = Box.around(at.x, at.y, width, SIZE + 2);
            if ((part.equals((Object) largest) || covers(part, box)) && labels.isFree(box)) {
              labels.take(box);
              marks.add(Mark.Text.label(text, at.x, at.y, SIZE, true));
            }
          }
        });
    return marks;
  }

  private static Polygon largest(Geometry area) {
    Polygon largest = (Polygon) area.getGeometryN(0);
    for (int i = 1; i < area.getNumGeometries(); i++) {
      Polygon part = (Polygon) area.getGeometryN(i);
      largest = part.getArea() > largest.getArea() ? part : largest;
    }
    return largest;
  }

  private static boolean covers(Geometry part, Box box) {
    Envelope envelope = new Envelope(box.left(), box.right(), box.top(), box.bottom());
    return part.covers(part.getFactory().toGeometry(envelope));
  }
}
