package org.lynchet.geometry.coverage;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.lynchet.geometry.frame.RoundedDegrees;

/**
 * Rounds the vertices of a coverage to 9 decimals of a degree, about 0.1 mm.
 *
 * <p>Each vertex is rounded once, so cells still match. Vertices that come to the same place along
 * an edge are merged. Where rounding made a cell invalid, which takes vertices and edges within 0.2
 * mm of each other, all edges are noded on the rounded grid and each face goes to the cell in which
 * it lay; a cell thinner than the grid can vanish, and one with a neck thinner than the grid falls
 * in two.
 */
final class Rounding {
  private Rounding() {}

  static Coverage round(Coverage exact) {
    Vertices vertices = new Vertices(exact.vertices(), 0);
    boolean[] moved = vertices.round();
    List<Cell> cells = SamePlaces.merge(vertices, exact.cells());
    return CellCheck.allValid(vertices, cells, Rings.Place.LON_LAT, v -> moved[v])
        ? new Coverage(vertices, cells)
        : mend(exact.cells(), vertices);
  }

  private static Coverage mend(List<Cell> cells, Vertices vertices) {
    Arrangement arrangement =
        new Arrangement(vertices, Rings.Place.LON_LAT, RoundedDegrees.PER_DEGREE);
    for (int i = 0; i < cells.size(); i++) {
      for (int[] ring : cells.get(i).rings) {
        arrangement.addRing(ring, i);
      }
    }
    Map<Integer, List<int[][]>> faces = new TreeMap<>();
    for (Arrangement.Face face : arrangement.faces()) {
      if (face.areas.length > 0) {
        faces.computeIfAbsent(face.areas[0], key -> new ArrayList<>()).add(face.rings);
      }
    }
    Map<Integer, List<int[][]>> partsOf = new TreeMap<>();
    faces.forEach(
        (cell, polygons) -> {
          List<int[][]> parts = FaceJoiner.join(vertices, Rings.Place.LON_LAT, polygons);
          if (!parts.isEmpty()) {
            partsOf.put(cell, parts);
          }
        });
    double[] areas = AreasKept.areas(vertices, cells, partsOf.keySet());
    List<Cell> mended = new ArrayList<>();
    partsOf.forEach(
        (cell, parts) ->
            mended.addAll(AreasKept.share(vertices, cells.get(cell), areas[cell], parts)));
    vertices.round();
    return new Coverage(vertices, mended);
  }
}
