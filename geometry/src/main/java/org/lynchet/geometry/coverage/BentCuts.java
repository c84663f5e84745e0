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
final class BentCuts {
  private final double[] cuts;

  /** The places of each cut, rising along the AB line; it reaches beyond all vertices. */
  private final List<Coordinate[]> lines = new ArrayList<>();

  private BentCuts(double[] cuts) {
    this.cuts = cuts;
  }

  /**
   * Draws.
   *
   * @param size how many of the vertices to heed
   * @param cuts rising offsets
   */
  static BentCuts through(Vertices vertices, int size, double[] cuts) {
    double low = 0;
    double high = 0;
    List<List<Coordinate>> on = new ArrayList<>();
    for (int cut = 0; cut < cuts.length; cut++) {
      on.add(new ArrayList<>());
    }
    for (int v = 0; v < size; v++) {
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

  /** Adds the cuts to an arrangement. */
  void addTo(Arrangement arrangement) {
    lines.forEach(arrangement::addLine);
  }

  /** The band in which a place between the cuts lies. */
  int band(Coordinate at) {
    int band = straightBand(cuts, at.x);
    while (band > 0 && offset(band - 1, at.y) > at.x) {
      band--;
    }
    while (band < cuts.length && offset(band, at.y) <= at.x) {
      band++;
    }
    return band;
  }

  /** The offset of a cut at a distance along the AB line. */
  private double offset(int cut, double along) {
    Coordinate[] line = lines.get(cut);
    int low = 0;
    int high = line.length - 1;
    while (high - low > 1) {
      int middle = (low + high) >>> 1;
      if (line[middle].y <= along) {
        low = middle;
      } else {
        high = middle;
      }
    }
    double t = (along - line[low].y) / (line[high].y - line[low].y);
    return line[low].x + t * (line[high].x - line[low].x);
  }

  private static int straightBand(double[] cuts, double x) {
    int at = Arrays.binarySearch(cuts, x);
    return at >= 0 ? at + 1 : -at - 1;
  }
}
