package org.lynchet.geometry.coverage;

import java.util.ArrayList;
import java.util.List;
import org.locationtech.jts.algorithm.Area;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.simplify.DouglasPeuckerSimplifier;

/**
 * Leaves out the vertices of a ring that a digitised line has too many of: the lines between those
 * left stay within a distance of the ring (Douglas and Peucker 1973,
 * doi:10.3138/FM57-6770-U75U-7727).
 *
 * <p>It goes out from two vertices far from each other, so that the vertex at which the ring
 * happens to begin does not matter.
 */
final class SimpleRing {
  private SimpleRing() {}

  /**
   * Indexes of the vertices left, rising, at least two.
   *
   * @param ring closed, its last coordinate the first
   */
  static int[] kept(Coordinate[] ring, double distance) {
    int vertices = ring.length - 1;
    int first = farthestFrom(ring, farthestFrom(ring, least(ring)));
    int second = farthestFrom(ring, first);
    List<Integer> kept = new ArrayList<>();
    addHalf(ring, first, Math.floorMod(second - first, vertices), distance, kept);
    addHalf(ring, second, Math.floorMod(first - second, vertices), distance, kept);
    return kept.stream().mapToInt(Integer::intValue).sorted().toArray();
  }

  /** Adds what is left of the line from one vertex over so many edges, without its end. */
  private static void addHalf(
      Coordinate[] ring, int from, int edges, double distance, List<Integer> kept) {
    int vertices = ring.length - 1;
    Coordinate[] line = new Coordinate[edges + 1];
    for (int i = 0; i <= edges; i++) {
      line[i] = ring[(from + i) % vertices];
    }
    Coordinate[] simple =
        DouglasPeuckerSimplifier.simplify(Rings.FACTORY.createLineString(line), distance)
            .getCoordinates();
    int next = 0;
    for (int i = 0; i < edges && next < simple.length - 1; i++) {
      if (line[i].equals2D(simple[next])) {
        kept.add((from + i) % vertices);
        next++;
      }
    }
  }

  private static int least(Coordinate[] ring) {
    int least = 0;
    for (int i = 1; i < ring.length - 1; i++) {
      least = ring[i].compareTo(ring[least]) < 0 ? i : least;
    }
    return least;
  }

  private static int farthestFrom(Coordinate[] ring, int vertex) {
    int farthest = vertex == 0 ? 1 : 0;
    for (int i = 0; i < ring.length - 1; i++) {
      if (ring[i].distance(ring[vertex]) > ring[farthest].distance(ring[vertex])) {
        farthest = i;
      }
    }
    return farthest;
  }

  /**
   * How far the simple ring may be from a ring that carries headland: a quarter of the headland's
   * width, and less in areas that are narrow themselves, an eighth of the side of a square. Jags
   * make a ring long, but not its area narrow, so the length is that of a simple ring.
   */
  static double distanceFor(Coordinate[] ring, double widthMetres) {
    int[] kept = kept(ring, widthMetres / 4);
    double length = 0;
    for (int i = 0; i < kept.length; i++) {
      length += ring[kept[i]].distance(ring[kept[(i + 1) % kept.length]]);
    }
    return Math.min(widthMetres / 4, Area.ofRing(ring) / length / 2);
  }
}
