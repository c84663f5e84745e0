package org.lynchet.geometry.coverage;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import org.locationtech.jts.algorithm.locate.IndexedPointInAreaLocator;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.LineSegment;
import org.locationtech.jts.geom.LineString;
import org.locationtech.jts.geom.LinearRing;
import org.locationtech.jts.geom.Location;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.geom.util.GeometryFixer;
import org.locationtech.jts.geom.util.LinearComponentExtracter;
import org.locationtech.jts.operation.distance.IndexedFacetDistance;
import org.locationtech.jts.operation.overlayng.OverlayNG;
import org.locationtech.jts.operation.overlayng.OverlayNGRobust;

/**
 * Draws a headland that lies only where the rows end: the places of a field within a distance of
 * the {@link EndRuns runs} of its boundary.
 *
 * <p>Where a run ends, its inner edge goes on in the run's own direction until it meets the
 * boundary. Where it would go farther than two widths, or the boundary turns away from the field
 * there so that some rows pass the run, the headland ends along the row through the run's end.
 */
final class EndHeadland {
  /** How far the inner edge goes on at most, in widths. */
  private static final double FARTHEST = 2;

  /** Sine of the least angle between a run and the rows at its end: along a curve it can be 0. */
  private static final double FLATTEST = Math.sin(Math.toRadians(1));

  /** Places this near, in metres, are on a line: overlays work to 1e-9. */
  private static final double ON_LINE = 1e-6;

  private final Geometry area;
  private final List<Band> bands = new ArrayList<>();

  /** A run drawn on beyond its ends, places on it, and what lies beyond the rows at its ends. */
  private record Band(LineString line, List<Coordinate> middles, List<Polygon> beyondRows) {}

  /**
   * Finds where the headland lies.
   *
   * @param area valid polygons, outer rings counter-clockwise, holes clockwise
   */
  EndHeadland(Geometry area, Headland headland, HeadlandEnds ends) {
    this.area = area;
    double width = headland.widthMetres();
    Outside outside = new Outside(area);
    for (Object ring : LinearComponentExtracter.getLines(area)) {
      for (EndRun run : EndRuns.of((LinearRing) ring, headland, ends)) {
        bands.add(band(run, width, outside));
      }
    }
  }

  /** The boundary of an area, to find where a line leaves it. */
  private static final class Outside {
    final IndexedPointInAreaLocator locator;
    final List<LineSegment> edges = new ArrayList<>();

    Outside(Geometry area) {
      locator = new IndexedPointInAreaLocator(area);
      for (Object ring : LinearComponentExtracter.getLines(area)) {
        Coordinate[] line = ((LineString) ring).getCoordinates();
        for (int i = 1; i < line.length; i++) {
          edges.add(new LineSegment(line[i - 1], line[i]));
        }
      }
    }

    /** How far it is to the boundary from a place; 0 if it is outside, infinite beyond a limit. */
    double distance(Coordinate from, Coordinate direction, double limit) {
      if (locator.locate(from) != Location.INTERIOR) {
        return 0;
      }
      LineSegment ray = new LineSegment(from, moved(from, direction, limit));
      return edges.stream()
          .map(edge -> edge.intersection(ray))
          .filter(at -> at != null)
          .mapToDouble(from::distance)
          .min()
          .orElse(Double.POSITIVE_INFINITY);
    }
  }

  private static Band band(EndRun run, double width, Outside outside) {
    List<Coordinate> line = new ArrayList<>(run.line());
    List<Polygon> beyondRows = new ArrayList<>();
    for (int i = 0; i < run.tips().size(); i++) {
      EndRun.Tip tip = run.tips().get(i);
      double further =
          tip.convex()
              ? outside.distance(
                  moved(tip.at(), tip.inward(), width), tip.beyond(), FARTHEST * width)
              : Double.POSITIVE_INFINITY;
      if (further == Double.POSITIVE_INFINITY) {
        double depth = width / Math.max(FLATTEST, dot(tip.along(), tip.inward()));
        further = Math.max(0, depth * dot(tip.along(), tip.beyond()));
        further = Math.min(FARTHEST * width, further);
        beyondRows.add(beyondRow(tip, depth + width, further + 2 * width));
      }
      if (further > 0) {
        line.add(i == 0 ? 0 : line.size(), moved(tip.at(), tip.beyond(), further));
      }
    }
    List<Coordinate> middles =
        IntStream.range(1, run.line().size())
            .mapToObj(i -> LineSegment.midPoint(run.line().get(i - 1), run.line().get(i)))
            .toList();
    LineString drawn = Rings.FACTORY.createLineString(line.toArray(new Coordinate[0]));
    return new Band(drawn, middles, beyondRows);
  }

  /** A parallelogram between the row at the end of a run and one beyond it. */
  private static Polygon beyondRow(EndRun.Tip tip, double half, double across) {
    Coordinate in = moved(tip.at(), tip.along(), half);
    Coordinate out = moved(tip.at(), tip.along(), -half);
    return Rings.FACTORY.createPolygon(
        new Coordinate[] {
          in, out, moved(out, tip.beyond(), across), moved(in, tip.beyond(), across), in
        });
  }

  /** The headland of a width, at most that which it was made for. */
  Geometry within(double widthMetres) {
    List<Geometry> parts = new ArrayList<>();
    for (Band band : bands) {
      Geometry near = valid(InnerEdge.around(band.line, widthMetres));
      for (Polygon beyond : band.beyondRows) {
        near = OverlayNGRobust.overlay(near, beyond, OverlayNG.DIFFERENCE);
      }
      Geometry inField = OverlayNGRobust.overlay(near, area, OverlayNG.INTERSECTION);
      for (int i = 0; i < inField.getNumGeometries(); i++) {
        if (inField.getGeometryN(i) instanceof Polygon part && reaches(part, band.middles)) {
          parts.add(part);
        }
      }
    }
    return parts.isEmpty() ? Rings.FACTORY.createPolygon() : OverlayNGRobust.union(parts);
  }

  /** What is left of the area inside the headland. */
  Geometry inside(double widthMetres) {
    Geometry headland = within(widthMetres);
    return headland.isEmpty()
        ? area
        : OverlayNGRobust.overlay(area, headland, OverlayNG.DIFFERENCE);
  }

  /** The runs, drawn on beyond their ends as far as their inner edges go. */
  Geometry runs() {
    return Rings.FACTORY.createMultiLineString(
        bands.stream().map(Band::line).toArray(LineString[]::new));
  }

  /** Whether a part lies along a run, not merely near it or at its end. */
  private static boolean reaches(Polygon part, List<Coordinate> middles) {
    IndexedFacetDistance distance = new IndexedFacetDistance(part.getBoundary());
    return middles.stream()
        .filter(at -> part.getEnvelopeInternal().intersects(at))
        .anyMatch(at -> distance.isWithinDistance(Rings.FACTORY.createPoint(at), ON_LINE));
  }

  private static Geometry valid(Geometry drawn) {
    return drawn.isValid() ? drawn : GeometryFixer.fix(drawn);
  }

  private static Coordinate moved(Coordinate from, Coordinate direction, double distance) {
    return new Coordinate(from.x + distance * direction.x, from.y + distance * direction.y);
  }

  private static double dot(Coordinate a, Coordinate b) {
    return a.x * b.x + a.y * b.y;
  }
}
