package org.lynchet.geometry.coverage;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.function.DoubleBinaryOperator;
import org.locationtech.jts.geom.Coordinate;
import org.lynchet.geometry.guidance.Curve;
import org.lynchet.geometry.guidance.LinePoint;

/**
 * Draws cuts that run through the vertices that lie on them, within {@link ParallelCutter#ON_CUT},
 * and tells which band a place is in between such cuts.
 *
 * <p>Between its points a cut is straight, so it strays from its offset by no more than they do;
 * but a boundary that runs along it can have slivers beside it that are on the other side of the
 * offset.
 */
final class BentCuts {
  /** A point of a cut this near to a vertex on it, in metres of y, gives way to the vertex. */
  private static final double GIVES_WAY = 1e-5;

  private final double[] cuts;
  private final DoubleBinaryOperator offsetOf;

  /** The places of each cut, rising along the guidance line; it reaches beyond all vertices. */
  private final List<Coordinate[]> lines = new ArrayList<>();

  private BentCuts(double[] cuts, DoubleBinaryOperator offsetOf) {
    this.cuts = cuts;
    this.offsetOf = offsetOf;
  }

  /** The points of a cut between two places along the guidance line, rising. */
  private interface Course {
    List<LinePoint> points(double offset, double fromY, double toY);
  }

  /**
   * Draws cuts along an AB line.
   *
   * @param cuts rising offsets
   */
  static BentCuts through(Vertices vertices, double[] cuts) {
    BentCuts bent = new BentCuts(cuts, (x, y) -> x);
    bent.draw(
        vertices,
        (offset, fromY, toY) ->
            List.of(new LinePoint(offset, fromY, fromY), new LinePoint(offset, toY, toY)));
    return bent;
  }

  /**
   * Draws cuts along a curve.
   *
   * @param cuts rising offsets
   */
  static BentCuts through(Vertices vertices, Curve curve, double[] cuts) {
    BentCuts bent = new BentCuts(cuts, curve::offsetMetres);
    bent.draw(vertices, curve::pointsAt);
    return bent;
  }

  private void draw(Vertices vertices, Course course) {
    double low = Double.POSITIVE_INFINITY;
    double high = Double.NEGATIVE_INFINITY;
    List<List<Coordinate>> on = new ArrayList<>();
    for (int cut = 0; cut < cuts.length; cut++) {
      on.add(new ArrayList<>());
    }
    for (int v = 0; v < vertices.size(); v++) {
      low = Math.min(low, vertices.y(v));
      high = Math.max(high, vertices.y(v));
      double offset = offsetOf.applyAsDouble(vertices.x(v), vertices.y(v));
      int right = bandOf(offset);
      for (int cut = Math.max(0, right - 1); cut <= right && cut < cuts.length; cut++) {
        if (Math.abs(offset - cuts[cut]) <= ParallelCutter.ON_CUT) {
          on.get(cut).add(Rings.coordinate(vertices, v, Rings.Place.OFFSET));
        }
      }
    }
    for (int cut = 0; cut < cuts.length; cut++) {
      lines.add(line(course.points(cuts[cut], low - 1, high + 1), on.get(cut)));
    }
  }

  private static Coordinate[] line(List<LinePoint> points, List<Coordinate> on) {
    on.sort(Comparator.comparingDouble((Coordinate at) -> at.y).thenComparing(at -> at.x));
    List<Coordinate> line = new ArrayList<>(points.size() + on.size());
    int next = 0;
    for (LinePoint point : points) {
      while (next < on.size() && on.get(next).y < point.y()) {
        line.add(on.get(next++));
      }
      boolean nearBefore = next > 0 && point.y() - on.get(next - 1).y < GIVES_WAY;
      boolean nearAfter = next < on.size() && on.get(next).y - point.y() < GIVES_WAY;
      if (!nearBefore && !nearAfter) {
        line.add(new Coordinate(point.x(), point.y()));
      }
    }
    return line.toArray(new Coordinate[0]);
  }

  /** Adds the cuts to an arrangement, numbered from 0, each with lesser offsets on its left. */
  void addTo(Arrangement arrangement) {
    for (int cut = 0; cut < lines.size(); cut++) {
      if (lines.get(cut).length > 1) {
        arrangement.addLine(lines.get(cut), cut);
      }
    }
  }

  /**
   * The band in which a face lies: a cut along one of its edges tells; if there is none, the face
   * touches cuts in vertices at most, and the middle of an edge that is farthest from them tells.
   */
  int band(int[][] face, Arrangement arrangement, Vertices vertices) {
    double clear = -1;
    double clearest = 0;
    for (int[] ring : face) {
      int u = ring[ring.length - 1];
      for (int v : ring) {
        int cut = arrangement.lineAlong(u, v);
        if (cut != EdgeMap.ABSENT) {
          return cut >= 0 ? cut : ~cut + 1;
        }
        double offset =
            offsetOf.applyAsDouble(
                (vertices.x(u) + vertices.x(v)) / 2, (vertices.y(u) + vertices.y(v)) / 2);
        double distance = distanceToCut(offset);
        if (distance > clear) {
          clear = distance;
          clearest = offset;
        }
        u = v;
      }
    }
    return bandOf(clearest);
  }

  private double distanceToCut(double offset) {
    int band = bandOf(offset);
    double left = band > 0 ? offset - cuts[band - 1] : Double.POSITIVE_INFINITY;
    double right = band < cuts.length ? cuts[band] - offset : Double.POSITIVE_INFINITY;
    return Math.min(left, right);
  }

  private int bandOf(double offset) {
    int at = Arrays.binarySearch(cuts, offset);
    return at >= 0 ? at + 1 : -at - 1;
  }
}
