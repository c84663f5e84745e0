package org.lynchet.geometry.coverage;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.locationtech.jts.algorithm.locate.IndexedPointInAreaLocator;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Location;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.index.strtree.STRtree;

/**
 * Rounds the vertices of a coverage to 9 decimals of a degree, about 0.1 mm.
 *
 * <p>Each vertex is rounded once, so cells still match. Where rounding made a cell invalid, which
 * takes vertices and edges within 0.2 mm of each other, all edges are noded on the rounded grid and
 * each face goes to the cell in which it lay; a cell thinner than the grid can vanish, and one with
 * a neck thinner than the grid falls in two.
 */
final class Rounding {
  private static final double STEPS_PER_DEGREE = 1e9;

  private Rounding() {}

  static Coverage round(Coverage exact) {
    Vertices vertices = new Vertices(exact.vertices());
    boolean[] moved = vertices.round();
    return CellCheck.allValid(vertices, exact.cells(), Rings.Place.LON_LAT, v -> moved[v])
        ? new Coverage(vertices, exact.cells())
        : mend(exact, vertices);
  }

  private static Coverage mend(Coverage exact, Vertices vertices) {
    List<Cell> cells = exact.cells();
    Arrangement arrangement = new Arrangement(vertices, Rings.Place.LON_LAT, STEPS_PER_DEGREE);
    STRtree tree = new STRtree();
    for (int i = 0; i < cells.size(); i++) {
      for (int[] ring : cells.get(i).rings) {
        arrangement.addRing(ring);
      }
      Polygon polygon = exact.inOffsetFrame(cells.get(i));
      tree.insert(
          polygon.getEnvelopeInternal(), new Located(i, new IndexedPointInAreaLocator(polygon)));
    }
    Map<Integer, List<int[][]>> faces = new TreeMap<>();
    for (Arrangement.Face face : arrangement.faces()) {
      Coordinate inside = vertices.frame().toOffset(face.inside.x, face.inside.y);
      for (Object candidate : tree.query(new Envelope(inside))) {
        Located located = (Located) candidate;
        if (located.locator().locate(inside) != Location.EXTERIOR) {
          faces.computeIfAbsent(located.cell(), key -> new ArrayList<>()).add(face.rings);
          break;
        }
      }
    }
    List<Cell> mended = new ArrayList<>();
    faces.forEach(
        (cell, polygons) ->
            FaceJoiner.join(vertices, polygons)
                .forEach(rings -> mended.add(cells.get(cell).withRings(rings))));
    vertices.round();
    return new Coverage(vertices, mended);
  }

  private record Located(int cell, IndexedPointInAreaLocator locator) {}
}
