package org.lynchet.geometry.coverage;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.locationtech.jts.algorithm.locate.IndexedPointInAreaLocator;
import org.locationtech.jts.geom.Location;

/**
 * Cuts regions along parallel lines by noding everything together: slower than {@link
 * ParallelCutter}, and able to take vertices on cuts and boundaries that touch themselves.
 *
 * <p>The cuts are {@link BentCuts}: they run through the boundary vertices that lie on them.
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
    BentCuts lines = BentCuts.through(vertices, known, cuts);
    lines.addTo(arrangement);
    List<IndexedPointInAreaLocator> locators = new ArrayList<>();
    for (Region region : regions) {
      locators.add(
          new IndexedPointInAreaLocator(Rings.polygon(vertices, region.rings, Rings.Place.OFFSET)));
    }
    Map<Key, List<int[][]>> faces = new LinkedHashMap<>();
    for (Arrangement.Face face : arrangement.faces()) {
      for (int r = 0; r < regions.size(); r++) {
        if (locators.get(r).locate(face.inside) != Location.EXTERIOR) {
          int band = regions.get(r).label.headland() ? Cell.NO_BAND : lines.band(face.inside);
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
}
