package org.lynchet.geometry.coverage;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import org.locationtech.jts.geom.Coordinate;
import org.lynchet.geometry.guidance.Curve;
import org.lynchet.geometry.guidance.LinePoint;

/**
 * Draws cuts at offsets of a curve. They run through the vertices that lie on them, within {@link
 * ParallelCutter#ON_CUT}, so that a boundary along a cut leaves no slivers.
 */
final class CurvedCuts implements CutLines {
  /** A point of a cut this near to a vertex on it, in metres of y, gives way to the vertex. */
  private static final double GIVES_WAY = 1e-5;

  private final Curve curve;
  private final double[] cuts;
  private final List<Coordinate[]> lines = new ArrayList<>();

  private CurvedCuts(Curve curve, double[] cuts) {
    this.curve = curve;
    this.cuts = cuts;
  }

  /**
   * Draws.
   *
   * @param cuts rising offsets
   */
  static CurvedCuts through(Vertices vertices, Curve curve, double[] cuts) {
    CurvedCuts curved = new CurvedCuts(curve, cuts);
    double low = Double.POSITIVE_INFINITY;
    double high = Double.NEGATIVE_INFINITY;
    List<List<Coordinate>> on = new ArrayList<>();
    for (int cut = 0; cut < cuts.length; cut++) {
      on.add(new ArrayList<>());
    }
    for (int v = 0; v < vertices.size(); v++) {
      low = Math.min(low, vertices.y(v));
      high = Math.max(high, vertices.y(v));
      double offset = curve.offsetMetres(vertices.x(v), vertices.y(v));
      int right = curved.bandOf(offset);
      for (int cut = Math.max(0, right - 1); cut <= right && cut < cuts.length; cut++) {
        if (Math.abs(offset - cuts[cut]) <= ParallelCutter.ON_CUT) {
          on.get(cut).add(Rings.coordinate(vertices, v, Rings.Place.OFFSET));
        }
      }
    }
    for (int cut = 0; cut < cuts.length; cut++) {
      curved.lines.add(line(curve.pointsAt(cuts[cut], low - 1, high + 1), on.get(cut)));
    }
    return curved;
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

  @Override
  public void addTo(Arrangement arrangement) {
    for (int cut = 0; cut < lines.size(); cut++) {
      if (lines.get(cut).length > 1) {
        arrangement.addLine(lines.get(cut), cut);
      }
    }
  }

  /**
   * A cut along one of its edges tells; if there is none, the middle of an edge that is farthest
   * from all cuts.
   */
  @Override
  public int band(int[][] face, Arrangement arrangement, Vertices vertices) {
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
            curve.offsetMetres(
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
