package org.lynchet.geometry.coverage;

import java.util.Arrays;
import org.locationtech.jts.algorithm.Orientation;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.CoordinateList;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.LinearRing;
import org.locationtech.jts.geom.util.GeometryEditor;

/**
 * Leaves out vertices of a boundary behind which no place deep inside the area can see: a pocket of
 * the area with a mouth from A to C no wider than L, all of its vertices less than w from A, is
 * closed by the straight line from A to C.
 *
 * <p>Be a place at least w deep in the area. Then
 *
 * <ol>
 *   <li>It is in no pocket, since all of a pocket is less than w from A, a vertex of the boundary.
 *   <li>It is at least sqrt(w^2 - L^2 / 4) from every line AC, since A and C are vertices of the
 *       boundary, each at least w away, and between them the middle is nearest (Stewart's theorem).
 *   <li>So it is w - s deep in what is left if L is at most 2 sqrt(2ws - s^2); and what is w deep
 *       in what is left is w deep in the area, of which it is a part.
 * </ol>
 */
final class ThinnedBoundary {
  /** How often mouths half as wide are tried where lines over them would cross. */
  private static final int TRIES = 4;

  /** Pockets of more vertices stay. */
  private static final int MOST_IN_POCKET = 400;

  private final double depth;
  private final double widestMouth;

  private ThinnedBoundary(double depth, double widestMouth) {
    this.depth = depth;
    this.widestMouth = widestMouth;
  }

  /**
   * Thins.
   *
   * @param area a valid polygon or multipolygon, the area on the left of its rings
   * @param depthMetres how deep the places are that matter
   * @param strayMetres by how much less deep they may come to be
   * @return valid; the area itself where lines would cross
   */
  static Geometry of(Geometry area, double depthMetres, double strayMetres) {
    double widestMouth = widestMouth(depthMetres, strayMetres);
    for (int i = 0; i < TRIES; i++) {
      Geometry thinned = new ThinnedBoundary(depthMetres, widestMouth).thinned(area);
      if (thinned.isValid()) {
        return thinned;
      }
      widestMouth /= 2;
    }
    return area;
  }

  /**
   * Thins a line.
   *
   * @param line the area on its left; closed or not, its ends are kept
   * @return indexes of what is left, rising
   */
  static int[] kept(Coordinate[] line, double depthMetres, double strayMetres) {
    return new ThinnedBoundary(depthMetres, widestMouth(depthMetres, strayMetres)).kept(line);
  }

  private static double widestMouth(double depth, double stray) {
    double least = Math.min(stray, depth);
    return 2 * Math.sqrt(2 * depth * least - least * least);
  }

  private Geometry thinned(Geometry area) {
    return new GeometryEditor()
        .edit(
            area,
            new GeometryEditor.CoordinateOperation() {
              @Override
              public Coordinate[] edit(Coordinate[] line, Geometry component) {
                return component instanceof LinearRing ? ring(line) : line;
              }
            });
  }

  private Coordinate[] ring(Coordinate[] ring) {
    CoordinateList result = new CoordinateList();
    for (int vertex : kept(ring)) {
      result.add(ring[vertex], false);
    }
    return result.size() > 3 ? result.toCoordinateArray() : ring;
  }

  /** Goes along a line, over the mouth of a pocket where one begins. */
  private int[] kept(Coordinate[] line) {
    int[] kept = new int[line.length];
    int size = 0;
    for (int a = 0; a < line.length - 1; a = next(line, a)) {
      kept[size++] = a;
    }
    kept[size++] = line.length - 1;
    return Arrays.copyOf(kept, size);
  }

  /** The end of the longest pocket that begins at a vertex, or the vertex after it. */
  private int next(Coordinate[] line, int a) {
    int next = a + 1;
    int leftmost = a + 1;
    int last = Math.min(line.length - 1, a + MOST_IN_POCKET);
    for (int c = a + 1; c <= last && line[a].distance(line[c]) < depth; c++) {
      if (Orientation.index(line[a], line[leftmost], line[c]) != Orientation.RIGHT) {
        leftmost = c;
        if (line[a].distance(line[c]) <= widestMouth && isPocket(line, a, c)) {
          next = c;
        }
      }
    }
    return next;
  }

  /** Whether the line stays on the right of the mouth from a to c. */
  private static boolean isPocket(Coordinate[] line, int a, int c) {
    for (int b = a + 1; b < c; b++) {
      if (Orientation.index(line[a], line[c], line[b]) == Orientation.LEFT) {
        return false;
      }
    }
    return true;
  }
}
