package org.lynchet.geometry.coverage;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.locationtech.jts.algorithm.locate.IndexedPointInAreaLocator;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Location;

/**
 * Cuts regions along parallel lines by noding everything together: slower than {@link
 * ParallelCutter}, and able to take vertices on cuts and boundaries that touch themselves.
 *
 * <p>A cut runs through the boundary vertices that lie on it, within {@link ParallelCutter#ON_CUT}.
 */
final class NodedCutter {
  /** Grid points in a metre: fine enough that strip edges keep to 0.001 mm. */
  static final double STEPS_PER_METRE = 1e8;

  private NodedCutter() {}

  /** The band and the region that a face lies in. */
  private record Key(int region, int band) {}

  /**
   * Cuts.
   *
   * @param vertices gets new nodes added
   * @param regions headland is not cut
   * @param cuts rising offsets
   */
  static List<Cell> cut(Vertices vertices, List<Region> regions, double[] cuts) {
    int known = vertices.size();
    Arrangement arrangement = new Arrangement(vertices, Rings.Place.OFFSET, STEPS_PER_METRE);
    for (Region region : regions) {
      for (int[] ring : region.rings) {
        arrangement.addRing(ring);
      }
    }
    addCuts(arrangement, vertices, known, cuts);
    List<IndexedPointInAreaLocator> locators = new ArrayList<>();
    for (Region region : regions) {
      locators.add(
          new IndexedPointInAreaLocator(Rings.polygon(vertices, region.rings, Rings.Place.OFFSET)));
    }
    Map<Key, List<int[][]>> faces = new LinkedHashMap<>();
    for (Arrangement.Face face : arrangement.faces()) {
      for (int r = 0; r < regions.size(); r++) {
        if (locators.get(r).locate(face.inside) != Location.EXTERIOR) {
          int band = regions.get(r).label.headland() ? Cell.NO_BAND : band(cuts, face.inside.x);
          faces.computeIfAbsent(new Key(r, band), key -> new ArrayList<>()).add(face.rings);
          break;
        }
      }
    }
    List<Cell> cells = new ArrayList<>();
    faces.forEach(
        (key, polygons) -> {
          for (int[][] rings : FaceJoiner.join(vertices, polygons)) {
            cells.add(new Cell(regions.get(key.region()).label, key.band(), rings));
          }
        });
    return cells;
  }

  private static int band(double[] cuts, double x) {
    int at = Arrays.binarySearch(cuts, x);
    return at >= 0 ? at + 1 : -at - 1;
  }

  private static void addCuts(
      Arrangement arrangement, Vertices vertices, int known, double[] cuts) {
    double low = Double.POSITIVE_INFINITY;
    double high = Double.NEGATIVE_INFINITY;
    List<List<Coordinate>> lines = new ArrayList<>();
    for (int cut = 0; cut < cuts.length; cut++) {
      lines.add(new ArrayList<>());
    }
    for (int v = 0; v < known; v++) {
      low = Math.min(low, vertices.y(v));
      high = Math.max(high, vertices.y(v));
      int right = band(cuts, vertices.x(v));
      for (int cut = Math.max(0, right - 1); cut <= right && cut < cuts.length; cut++) {
        if (Math.abs(vertices.x(v) - cuts[cut]) <= ParallelCutter.ON_CUT) {
          lines.get(cut).add(Rings.coordinate(vertices, v, Rings.Place.OFFSET));
        }
      }
    }
    for (int cut = 0; cut < cuts.length; cut++) {
      List<Coordinate> line = lines.get(cut);
      line.add(new Coordinate(cuts[cut], low - 1));
      line.add(new Coordinate(cuts[cut], high + 1));
      line.sort((p, q) -> Double.compare(p.y, q.y));
      arrangement.addLine(line.toArray(new Coordinate[0]));
    }
  }
}
