package org.lynchet.geometry.coverage;

import java.util.ArrayList;
import java.util.List;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.LineSegment;
import org.locationtech.jts.geom.LineString;
import org.locationtech.jts.geom.util.LinearComponentExtracter;
import org.locationtech.jts.operation.distance.IndexedFacetDistance;
import org.locationtech.jts.operation.linemerge.LineMerger;
import org.locationtech.jts.operation.overlayng.OverlayNG;
import org.locationtech.jts.operation.overlayng.OverlayNGRobust;

/**
 * Draws lines through a headland at one distance from the boundary that it follows.
 *
 * <p>Such a line is the inner edge that a headland of that width would have, so it keeps the
 * distance as exactly. Around a whole ring it is closed; along a run it is open, from side to side
 * or to the row at which the headland ends. Where the headland does not follow holes, lines stop at
 * a hole and go on beyond it.
 */
public final class HeadlandLines {
  /** How far from its distance, in metres, a place can be and yet be on the line. */
  private static final double ON_LINE = 0.01;

  /** Places this near, in metres, are on the boundary: overlays work to 1e-9. */
  private static final double ON_BOUNDARY = 1e-6;

  private final DrawnHeadland headland;
  private final IndexedFacetDistance boundary;

  private HeadlandLines(DrawnHeadland headland) {
    this.headland = headland;
    this.boundary = new IndexedFacetDistance(headland.area().getBoundary());
  }

  /** Gets ready to draw lines through a headland. */
  public static HeadlandLines of(DrawnHeadland headland) {
    return new HeadlandLines(headland);
  }

  /**
   * The lines at a distance from the boundary, offset (x) and metres along the AB line (y).
   *
   * @param distanceMetres above 0, at most the headland's width
   * @return none where the field is too narrow for them
   */
  public List<LineString> at(double distanceMetres) {
    EndHeadland ends = headland.ends();
    List<LineString> lines = ends == null ? closed(distanceMetres) : open(ends, distanceMetres);
    return headland.passesHoles() ? outsideHoles(lines) : lines;
  }

  private List<LineString> closed(double distance) {
    List<LineString> lines = new ArrayList<>();
    Geometry inside = InnerEdge.inside(headland.area(), distance);
    if (!inside.isEmpty()) {
      for (Object ring : LinearComponentExtracter.getLines(inside)) {
        lines.add(Rings.FACTORY.createLineString(((LineString) ring).getCoordinates()));
      }
    }
    return lines;
  }

  private List<LineString> open(EndHeadland ends, double distance) {
    List<LineString> lines = new ArrayList<>();
    Geometry near = ends.within(distance);
    if (!near.isEmpty()) {
      List<IndexedFacetDistance> runs =
          ends.runs().stream().map(IndexedFacetDistance::new).toList();
      for (Object ring : LinearComponentExtracter.getLines(near)) {
        addOpen(((LineString) ring).getCoordinates(), runs, distance, lines);
      }
    }
    return lines;
  }

  /** Adds the stretches of a ring that keep a distance from runs. */
  private void addOpen(
      Coordinate[] ring, List<IndexedFacetDistance> runs, double distance, List<LineString> lines) {
    int edges = ring.length - 1;
    boolean[] onLine = new boolean[edges];
    int start = 0;
    for (int i = 0; i < edges; i++) {
      LineSegment edge = new LineSegment(ring[i], ring[i + 1]);
      onLine[i] = isInside(edge) && runs.stream().anyMatch(run -> keeps(edge, run, distance));
      start = onLine[i] ? start : i + 1;
    }
    List<Coordinate> line = new ArrayList<>();
    for (int i = 0; i < edges; i++) {
      int edge = (start + i) % edges;
      if (onLine[edge]) {
        if (line.isEmpty()) {
          line.add(ring[edge]);
        }
        line.add(ring[edge + 1]);
      } else {
        addLine(line, lines);
        line.clear();
      }
    }
    addLine(line, lines);
  }

  private static void addLine(List<Coordinate> line, List<LineString> lines) {
    if (!line.isEmpty()) {
      lines.add(Rings.FACTORY.createLineString(line.toArray(new Coordinate[0])));
    }
  }

  /** Whether an edge is not part of the boundary. */
  private boolean isInside(LineSegment edge) {
    return !boundary.isWithinDistance(Rings.FACTORY.createPoint(edge.midPoint()), ON_BOUNDARY);
  }

  private static boolean keeps(LineSegment edge, IndexedFacetDistance run, double distance) {
    for (Coordinate at : List.of(edge.p0, edge.midPoint(), edge.p1)) {
      double off = run.distance(Rings.FACTORY.createPoint(at)) - distance;
      if (Math.abs(off) > ON_LINE) {
        return false;
      }
    }
    return true;
  }

  private List<LineString> outsideHoles(List<LineString> lines) {
    Geometry field = RegionDivider.polygons(headland.field(), true);
    List<LineString> result = new ArrayList<>();
    for (LineString line : lines) {
      LineMerger merger = new LineMerger();
      merger.add(OverlayNGRobust.overlay(line, field, OverlayNG.INTERSECTION));
      for (Object merged : merger.getMergedLineStrings()) {
        result.add((LineString) merged);
      }
    }
    return result;
  }
}
