package org.lynchet.geometry.coverage;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import org.locationtech.jts.algorithm.Orientation;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.LineSegment;
import org.locationtech.jts.geom.LineString;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.geom.util.GeometryFixer;
import org.locationtech.jts.operation.distance.IndexedFacetDistance;
import org.locationtech.jts.operation.overlayng.OverlayNG;
import org.locationtech.jts.operation.overlayng.OverlayNGRobust;

/**
 * Draws what is near one run of a boundary.
 *
 * <p>Where the run ends, its inner edge goes on in the run's own direction until it meets the
 * boundary. Where it would go farther than two widths, or the boundary turns away from the field
 * there so that some rows pass the run, what is near ends along the row through the run's end.
 */
final class EndBand {
  /** How far the inner edge goes on at most, in widths. */
  private static final double FARTHEST = 2;

  /** Sine of the least angle between a run and the rows at its end: along a curve it can be 0. */
  private static final double FLATTEST = Math.sin(Math.toRadians(1));

  /** Places this near, in metres, are on a line: overlays work to 1e-9. */
  private static final double ON_LINE = 1e-6;

  private final LineString line;
  private final boolean whole;
  private final List<Coordinate> middles;
  private final List<Polygon> beyondRows = new ArrayList<>();

  /**
   * Gets ready.
   *
   * @param widthMetres how wide the headland is
   * @param boundary that of the field, of which the run is a part
   */
  EndBand(EndRun run, double widthMetres, BoundaryAhead boundary) {
    whole = run.tips().isEmpty();
    middles =
        IntStream.range(1, run.line().size())
            .mapToObj(i -> LineSegment.midPoint(run.line().get(i - 1), run.line().get(i)))
            .toList();
    List<Coordinate> drawn = new ArrayList<>(run.line());
    for (int i = 0; i < run.tips().size(); i++) {
      EndRun.Tip tip = run.tips().get(i);
      double further = further(tip, widthMetres, boundary);
      if (further > 0) {
        drawn.add(i == 0 ? 0 : drawn.size(), moved(tip.at(), tip.beyond(), further));
      }
    }
    line = Rings.FACTORY.createLineString(drawn.toArray(new Coordinate[0]));
  }

  /** How far the run is drawn on at an end; adds what lies beyond the row if it ends along one. */
  private double further(EndRun.Tip tip, double width, BoundaryAhead boundary) {
    if (tip.convex()) {
      Coordinate from = moved(tip.at(), tip.inward(), width);
      double further = boundary.distance(from, tip.beyond(), FARTHEST * width);
      if (further < Double.POSITIVE_INFINITY) {
        return further;
      }
    }
    double depth = width / Math.max(FLATTEST, dot(tip.along(), tip.inward()));
    double further = Math.max(0, depth * dot(tip.along(), tip.beyond()));
    further = Math.min(FARTHEST * width, further);
    beyondRows.add(beyondRow(tip, depth + width, further + 2 * width));
    return further;
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

  /** The run, drawn on beyond its ends as far as its inner edge goes. */
  LineString line() {
    return line;
  }

  /**
   * What lies within a distance of the run, in the field and out of it.
   *
   * @param widthMetres at most that which the band was made for
   */
  Geometry within(double widthMetres) {
    if (whole) {
      return aroundRing(widthMetres);
    }
    Geometry near = valid(InnerEdge.around(line, widthMetres));
    for (Polygon beyond : beyondRows) {
      near = OverlayNGRobust.overlay(near, beyond, OverlayNG.DIFFERENCE);
    }
    return near;
  }

  private Geometry aroundRing(double width) {
    Polygon ring = Rings.FACTORY.createPolygon(line.getCoordinates());
    if (!Orientation.isCCW(line.getCoordinates())) {
      return valid(InnerEdge.around(ring, width));
    }
    Geometry inside = valid(InnerEdge.inside(ring, width));
    return OverlayNGRobust.overlay(ring, inside, OverlayNG.DIFFERENCE);
  }

  /** Whether a part of the field lies along the run, not merely near it or at its end. */
  boolean reaches(Polygon part) {
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
