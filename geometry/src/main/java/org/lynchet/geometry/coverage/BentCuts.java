package org.lynchet.geometry.coverage;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import org.locationtech.jts.geom.Coordinate;

/**
 * Draws cuts that run through the vertices that lie on them, within {@link ParallelCutter#ON_CUT},
 * and tells which band a place is in between such cuts.
 *
 * <p>Between two of its vertices a cut is straight, so it strays from its offset by no more than
 * they do; but a boundary that runs along it can have slivers beside it that are on the other side
 * of the offset.
 */
final class BentCuts implements CutLines {
  private final double[] cuts;

  /** The places of each cut, rising along the AB line; it reaches beyond all vertices. */
  private final List<Coordinate[]> lines = new ArrayList<>();

  private BentCuts(double[] cuts) {
    this.cuts = cuts;
  }

  /**
   * Draws.
   *
   * @param cuts rising offsets
   */
  static BentCuts through(Vertices vertices, double[] cuts) {
    double low = 0;
    double high = 0;
    List<List<Coordinate>> on = new ArrayList<>();
    for (int cut = 0; cut < cuts.length; cut++) {
      on.add(new ArrayList<>());
    }
    for (int v = 0; v < vertices.size(); v++) {
      low = Math.min(low, vertices.y(v));
      high = Math.max(high, vertices.y(v));
      int right = straightBand(cuts, vertices.x(v));
      for (int cut = Math.max(0, right - 1); cut <= right && cut < cuts.length; cut++) {
        if (Math.abs(vertices.x(v) - cuts[cut]) <= ParallelCutter.ON_CUT) {
          on.get(cut).add(Rings.coordinate(vertices, v, Rings.Place.OFFSET));
        }
      }
    }
    BentCuts bent = new BentCuts(cuts);
    for (int cut = 0; cut < cuts.length; cut++) {
      List<Coordinate> line = on.get(cut);
      line.add(new Coordinate(cuts[cut], low - 1));
      line.add(new Coordinate(cuts[cut], high + 1));
      line.sort(Comparator.comparingDouble((Coordinate at) -> at.y).thenComparing(at -> at.x));
      bent.lines.add(line.toArray(new Coordinate[0]));
    }
    return bent;
  }

  @Override
  public void addTo(Arrangement arrangement) {
    for (int cut = 0; cut < lines.size(); cut++) {
      arrangement.addLine(lines.get(cut), cut);
    }
  }

  /**
   * The band in which a face lies: a cut along one of its edges tells; if there is none, the face
   * touches cuts in vertices at most, and the place farthest from them tells.
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
        double x = (vertices.x(u) + vertices.x(v)) / 2;
        double distance = distanceToCut(x);
        if (distance > clear) {
          clear = distance;
          clearest = x;
        }
        u = v;
      }
    }
    return straightBand(cuts, clearest);
  }

  private double distanceToCut(double x) {
    int band = straightBand(cuts, x);
    double left = band > 0 ? x - cuts[band - 1] : Double.POSITIVE_INFINITY;
    double right = band < cuts.length ? cuts[band] - x : Double.POSITIVE_INFINITY;
    return Math.min(left, right);
  }

  private static int straightBand(double[] cuts, double x) {
    int at = Arrays.binarySearch(cuts, x);
    return at >= 0 ? at + 1 : -at - 1;
  }
}
