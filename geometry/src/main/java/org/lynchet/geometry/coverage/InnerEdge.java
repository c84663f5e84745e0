package org.lynchet.geometry.coverage;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.CoordinateList;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.LineString;
import org.locationtech.jts.geom.LinearRing;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.geom.util.GeometryEditor;

/**
 * Draws the inner edge of a headland: the places of a field at one distance from its boundary.
 *
 * <p>The buffer of JTS gives its course. Where the boundary turns by less than 0.05 radian it
 * leaves arcs out, and so comes too near by up to width x 0.05^2 / 2: 23 mm of 18 m. So every
 * vertex is then moved to the true distance, and edges that stray at their middle or quarters are
 * halved.
 */
final class InnerEdge {
  /**
   * How far, in metres, an edge may be from the true distance where it is tried: a fifth of 1 cm.
   */
  private static final double STRAY = 0.002;

  /** No edge is halved below this length, in metres. */
  private static final double SHORTEST = 0.05;

  /** How far, in metres, thinning of a dense boundary may move the course. */
  private static final double THINNING = 0.004;

  /** A place farther than this share of the width from its distance does not follow the line. */
  private static final double ASTRAY = 0.02;

  /** The same in metres, if that is more. */
  private static final double LEAST_ASTRAY = 0.05;

  /** Places are looked for a little beyond, so that rounding does not hide any. */
  private static final double BEYOND = 1 + 1e-9;

  /** An edge is halved only if both halves are shorter by this much. */
  private static final double SHRINKS = 0.9;

  private final NearestEdge boundary;
  private final double width;

  /** How far a place may be from its distance and yet follow the line. */
  private final double astray;

  /** How far off the boundary is looked for. */
  private final double reach;

  private InnerEdge(Geometry boundary, double width) {
    this.boundary = new NearestEdge(boundary);
    this.width = width;
    this.astray = Math.max(ASTRAY * width, LEAST_ASTRAY);
    this.reach = BEYOND * (width + astray);
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
    Geometry drawn = StagedBuffer.of(thinned(area, widthMetres), -widthMetres);
    return drawn.isEmpty() ? drawn : new InnerEdge(area.getBoundary(), widthMetres).settle(drawn);
  }

  /**
   * What lies in a hole or within a distance of it.
   *
   * @param hole its ring with the field on the left
   * @param widthMetres above 0
   * @return polygons, in the same way not always valid
   */
  static Geometry around(Polygon hole, double widthMetres) {
    Geometry drawn = StagedBuffer.of(thinned(hole, widthMetres), widthMetres);
    return new InnerEdge(hole.getBoundary(), widthMetres).settle(drawn);
  }

  /**
   * What lies within a distance of a line, on both sides of it and round its ends.
   *
   * @param line a line that is not closed, the field on its left
   * @param widthMetres above 0
   * @return polygons, in the same way not always valid
   */
  static Geometry around(LineString line, double widthMetres) {
    Coordinate[] at = line.getCoordinates();
    if (!StagedBuffer.isDense(line, widthMetres)) {
      return new InnerEdge(line, widthMetres).settle(StagedBuffer.of(line, widthMetres));
    }
    int[] kept = ThinnedBoundary.kept(at, widthMetres, THINNING);
    Coordinate[] left = Arrays.stream(kept).mapToObj(i -> at[i]).toArray(Coordinate[]::new);
    Geometry drawn = StagedBuffer.of(Rings.FACTORY.createLineString(left), widthMetres);
    List<Polygon> parts = new ArrayList<>(deepPockets(at, kept, widthMetres));
    parts.addAll(Rings.polygons(new InnerEdge(line, widthMetres).settle(drawn)));
    return Rings.multiPolygon(parts);
  }

  /** What thinning closed and a line over the mouth is too far from to cover. */
  private static List<Polygon> deepPockets(Coordinate[] line, int[] kept, double width) {
    List<Polygon> pockets = new ArrayList<>();
    for (int k = 1; k < kept.length; k++) {
      Coordinate[] pocket = Arrays.copyOfRange(line, kept[k - 1], kept[k] + 2);
      pocket[pocket.length - 1] = pocket[0];
      if (Arrays.stream(pocket).anyMatch(at -> at.distance(pocket[0]) > width / 2)
          && pocket.length > 3) {
        pockets.add(Rings.FACTORY.createPolygon(pocket));
      }
    }
    return pockets;
  }

  private static Geometry thinned(Geometry area, double width) {
    return StagedBuffer.isDense(area, width) ? ThinnedBoundary.of(area, width, THINNING) : area;
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
    double length = distance(from, to);
    if (length < SHORTEST) {
      return;
    }
    Coordinate middle = between(from, to, 0.5);
    Coordinate moved = settled(middle);
    // Where the middle is nearer to another side it moves away from both ends: no place for a
    // vertex.
    boolean halves = Math.max(distance(moved, from), distance(moved, to)) < SHRINKS * length;
    if (halves
        && (distance(moved, middle) > STRAY || strays(from, to, 0.25) || strays(from, to, 0.75))) {
      addBetween(from, moved, result);
      result.add(moved, false);
      addBetween(moved, to, result);
    }
  }

  /** Whether a place on the way from one to another is off the true distance. */
  private boolean strays(Coordinate from, Coordinate to, double t) {
    double off = Math.abs(boundary.distance(between(from, to, t), reach) - width);
    return off > STRAY && off <= astray;
  }

  /**
   * That of coordinates themselves also allows for overflow, which costs more than all the rest.
   */
  private static double distance(Coordinate a, Coordinate b) {
    double dx = b.x - a.x;
    double dy = b.y - a.y;
    return Math.sqrt(dx * dx + dy * dy);
  }

  private static Coordinate between(Coordinate from, Coordinate to, double t) {
    return new Coordinate(from.x + t * (to.x - from.x), from.y + t * (to.y - from.y));
  }

  /** The place moved away from the nearest place of the boundary, to the true distance. */
  private Coordinate settled(Coordinate at) {
    Coordinate near = boundary.to(at, reach);
    if (near == null) {
      return at;
    }
    double distance = distance(near, at);
    if (distance == 0 || Math.abs(distance - width) > astray) {
      return at;
    }
    double t = width / distance;
    return new Coordinate(near.x + t * (at.x - near.x), near.y + t * (at.y - near.y));
  }
}
