package org.lynchet.geometry.coverage;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * Cuts regions along lines, parallel or bent, by noding everything together: slower than {@link
 * ParallelCutter}, and able to take vertices on cuts and boundaries that touch themselves.
 *
 * <p>The cuts are {@link BentCuts}: they run through the boundary vertices that lie on them.
 */
final class NodedCutter {
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
    return cut(vertices, regions, BentCuts.through(vertices, cuts));
  }

  /**
   * Cuts.
   *
   * @param vertices gets new nodes added
   * @param regions headland is not cut
   */
  static List<Cell> cut(Vertices vertices, List<Region> regions, BentCuts lines) {
    Arrangement arrangement =
        new Arrangement(vertices, Rings.Place.OFFSET, Vertices.STEPS_PER_METRE);
    for (int r = 0; r < regions.size(); r++) {
      for (int[] ring : regions.get(r).rings) {
        arrangement.addRing(ring, r);
      }
    }
    lines.addTo(arrangement);
    Map<Key, List<int[][]>> faces = new LinkedHashMap<>();
    for (Arrangement.Face face : arrangement.faces()) {
      if (face.areas.length > 0) {
        int r = face.areas[0];
        int band =
            regions.get(r).label.headland()
                ? Cell.NO_BAND
                : lines.band(face.rings, arrangement, vertices);
        faces.computeIfAbsent(new Key(r, band), key -> new ArrayList<>()).add(face.rings);
      }
    }
    List<Cell> cells = new ArrayList<>();
    faces.forEach(
        (key, polygons) -> {
          for (int[][] rings : FaceJoiner.join(vertices, Rings.Place.OFFSET, polygons)) {
            cells.add(new Cell(regions.get(key.region()).label, key.band(), rings));
          }
        });
    return cells;
  }
}
