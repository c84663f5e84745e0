package org.lynchet.geometry.coverage;

import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.CoordinateList;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.LineString;
import org.locationtech.jts.geom.LinearRing;
import org.locationtech.jts.geom.util.GeometryEditor;
import org.locationtech.jts.operation.buffer.BufferOp;
import org.locationtech.jts.operation.buffer.BufferParameters;
import org.locationtech.jts.operation.distance.IndexedFacetDistance;

/**
 * Draws the inner edge of a headland: the places of a field at one distance from its boundary.
 *
 * <p>The buffer of JTS gives its course. Where the boundary turns by less than 0.05 radian it
 * leaves arcs out, and so comes too near by up to width x 0.05^2 / 2: 23 mm of 18 m. So every
 * vertex is then moved to the true distance, and edges whose middle strays are halved.
 */
final class InnerEdge {
  /** How far, in metres, the middle of an edge may be from the true distance: a fifth of 1 cm. */
  private static final double STRAY = 0.002;

  /** No edge is halved below this length, in metres. */
  private static final double SHORTEST = 0.05;

  /** Segments of a quarter of a circle; those of wide headlands are halved further where needed. */
  private static final int QUADRANT_SEGMENTS = 32;

  /** How far the buffer may simplify its input, as a share of its width: 0.2 mm of 20 m. */
  private static final double SIMPLIFY_FACTOR = 1e-5;

  /** A boundary of more vertices is thinned first: its arcs took over 512 MB. */
  private static final int MANY_VERTICES = 20_000;

  /** How far, in metres, thinning may move the course. */
  private static final double THIN_MANY = 0.006;

  /** An edge is halved only if both halves are shorter by this much. */
  private static final double SHRINKS = 0.9;

  private final IndexedFacetDistance boundary;
  private final double width;

  private InnerEdge(Geometry boundary, double width) {
    this.boundary = new IndexedFacetDistance(boundary);
    this.width = width;
  }

  /**
   * What is left inside a headland.
   *
   * @param area a valid polygon or multipolygon, the area on the left of its rings
   * @param widthMetres above 0
   * @return polygons whose rings may touch or cross by millimetres where the area is about two
   *     headlands wide
   */
  static Geometry inside(Geometry area, double widthMetres) {
    Geometry shown =
        area.getNumPoints() > MANY_VERTICES
            ? ThinnedBoundary.of(area, widthMetres, THIN_MANY)
            : area;
    Geometry drawn = drawn(shown, -widthMetres);
    return drawn.isEmpty() ? drawn : new InnerEdge(area.getBoundary(), widthMetres).settle(drawn);
  }

  /**
   * What lies within a distance of a line, on both sides of it and round its ends.
   *
   * @param line a line, closed or not
   * @param widthMetres above 0
   * @return polygons, in the same way not always valid
   */
  static Geometry around(LineString line, double widthMetres) {
    return new InnerEdge(line, widthMetres).settle(drawn(line, widthMetres));
  }

  private static Geometry drawn(Geometry around, double distance) {
    BufferParameters parameters = new BufferParameters(QUADRANT_SEGMENTS);
    parameters.setSimplifyFactor(SIMPLIFY_FACTOR);
    return BufferOp.bufferOp(around, distance, parameters);
  }

  private Geometry settle(Geometry drawn) {
    return new GeometryEditor()
        .edit(
            drawn,
            new GeometryEditor.CoordinateOperation() {
              @Override
              public Coordinate[] edit(Coordinate[] line, Geometry component) {
                return component instanceof LinearRing ? settled(line) : line;
              }
            });
  }

  private Coordinate[] settled(Coordinate[] ring) {
    CoordinateList result = new CoordinateList();
    Coordinate first = settled(ring[0]);
    Coordinate from = first;
    result.add(first, false);
    for (int i = 1; i < ring.length; i++) {
      Coordinate to = i + 1 < ring.length ? settled(ring[i]) : first;
      addBetween(from, to, result);
      result.add(to, false);
      from = to;
    }
    return result.size() > 3 ? result.toCoordinateArray() : ring;
  }

  private void addBetween(Coordinate from, Coordinate to, CoordinateList result) {
    Coordinate middle = new Coordinate((from.x + to.x) / 2, (from.y + to.y) / 2);
    double length = from.distance(to);
    if (length < SHORTEST) {
      return;
    }
    Coordinate moved = settled(middle);
    // Where the middle is nearer to another side it moves away from both ends: no place for a
    // vertex.
    boolean between = Math.max(moved.distance(from), moved.distance(to)) < SHRINKS * length;
    if (between && moved.distance(middle) > STRAY) {
      addBetween(from, moved, result);
      result.add(moved, false);
      addBetween(moved, to, result);
    }
  }

  /** The place moved away from the nearest place of the boundary, to the true distance. */
  private Coordinate settled(Coordinate at) {
    Coordinate near = boundary.nearestPoints(Rings.FACTORY.createPoint(at))[0];
    double distance = near.distance(at);
    if (distance == 0) {
      return at;
    }
    double t = width / distance;
    return new Coordinate(near.x + t * (at.x - near.x), near.y + t * (at.y - near.y));
  }
}
