package org.lynchet.geometry.coverage;

import org.locationtech.jts.algorithm.Orientation;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.CoordinateList;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.LinearRing;
import org.locationtech.jts.geom.util.GeometryEditor;

/**
 * Leaves out vertices of a boundary behind which no place deep inside the area can see: where the
 * area juts out between two vertices A and C that are near each other, the straight line from A to
 * C takes its place.
 *
 * <p>A place at least w away from A and C is at least sqrt(w^2 - |AC|^2 / 4) away from all of the
 * line between them. So what is w deep in the area is nearly as deep in what is left; what is w
 * deep in what is left is w deep in the area, since the way out leads over a line.
 */
final class ThinnedBoundary {
  private final double longest;

  private ThinnedBoundary(double longest) {
    this.longest = longest;
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
    double bound = Math.sqrt(8 * depthMetres * strayMetres);
    ThinnedBoundary thinned = new ThinnedBoundary(Math.min(bound, depthMetres));
    Geometry result =
        new GeometryEditor()
            .edit(
                area,
                new GeometryEditor.CoordinateOperation() {
                  @Override
                  public Coordinate[] edit(Coordinate[] line, Geometry component) {
                    return component instanceof LinearRing ? thinned.ring(line) : line;
                  }
                });
    return result.isValid() ? result : area;
  }

  /** Goes along a ring and back over what has just been kept, as a scan for a convex hull does. */
  private Coordinate[] ring(Coordinate[] ring) {
    Coordinate[] kept = new Coordinate[ring.length];
    int size = 0;
    for (Coordinate at : ring) {
      while (size > 1 && isHidden(kept[size - 2], kept[size - 1], at)) {
        size--;
      }
      kept[size++] = at;
    }
    CoordinateList result = new CoordinateList();
    for (int i = 0; i < size; i++) {
      result.add(kept[i], false);
    }
    return result.size() > 3 ? result.toCoordinateArray() : ring;
  }

  /** Whether the area juts out at b, and the ends a and c are near each other. */
  private boolean isHidden(Coordinate a, Coordinate b, Coordinate c) {
    return a.distance(c) <= longest && Orientation.index(a, c, b) != Orientation.LEFT;
  }
}
