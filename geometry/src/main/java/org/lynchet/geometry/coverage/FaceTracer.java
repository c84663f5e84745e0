package org.lynchet.geometry.coverage;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.locationtech.jts.algorithm.CGAlgorithmsDD;
import org.locationtech.jts.algorithm.PointLocation;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Location;

/**
 * Finds the faces between chains of noded edges by walking around them: at each chain's end the
 * walk goes on along the first chain clockwise from the one it came by, and so keeps one face on
 * its left.
 *
 * <p>A walk that goes counter-clockwise is the outer ring of a face. One that goes clockwise goes
 * around all that hangs together with it, and is a hole in the face in which that lies, or nothing
 * if it lies in none. It gives up, and a polygonizer takes over, where a walk meets itself: along a
 * chain with the same face on both sides, or in a vertex.
 */
final class FaceTracer {
  /** With more holes than this an index finds the faces around them sooner. */
  private static final int FEW_HOLES = 16;

  /**
   * A ring whose area is a lesser share of the products that it adds up from may turn either way.
   */
  private static final double CERTAIN = 1e-12;

  /** Half chains 2c and 2c + 1 are chain c forward and backward. */
  private final List<int[]> chains;

  private final Coordinate[] nodes;

  /** The half chain after each around the face on its left; the ring that it belongs to. */
  private final int[] next;

  private final int[] ringOf;
  private final List<int[]> rings = new ArrayList<>();

  private FaceTracer(List<int[]> chains, Coordinate[] nodes) {
    this.chains = chains;
    this.nodes = nodes;
    this.next = new int[2 * chains.size()];
    this.ringOf = new int[2 * chains.size()];
  }

  /**
   * Finds them.
   *
   * @param chains noded, each of at least one edge; a closed one has its first vertex at its end
   * @param nodes where each vertex is
   * @return every bounded face, an outer ring, counter-clockwise, and holes, clockwise; or nothing
   *     if something is not simple
   */
  static Optional<List<int[][]>> faces(List<int[]> chains, Coordinate[] nodes) {
    FaceTracer tracer = new FaceTracer(chains, nodes);
    return tracer.link() && tracer.trace() ? tracer.assemble() : Optional.empty();
  }

  private int origin(int half) {
    int[] chain = chains.get(half / 2);
    return half % 2 == 0 ? chain[0] : chain[chain.length - 1];
  }

  private int second(int half) {
    int[] chain = chains.get(half / 2);
    return half % 2 == 0 ? chain[1] : chain[chain.length - 2];
  }

  /** Finds what follows each half chain; false if two set out in the same direction. */
  private boolean link() {
    Integer[] halves = new Integer[next.length];
    Arrays.setAll(halves, h -> h);
    Arrays.sort(halves, Comparator.comparingInt(this::origin).thenComparing(this::byDirection));
    int from = 0;
    for (int i = 1; i <= halves.length; i++) {
      if (i == halves.length || origin(halves[i]) != origin(halves[from])) {
        for (int k = from; k < i; k++) {
          // Counter-clockwise in this order: the one before is the next clockwise.
          next[halves[k] ^ 1] = halves[k == from ? i - 1 : k - 1];
        }
        from = i;
      } else if (byDirection(halves[i - 1], halves[i]) == 0) {
        return false;
      }
    }
    return true;
  }

  /** Puts half chains with one origin in counter-clockwise order from left to right. */
  private int byDirection(int a, int b) {
    Coordinate at = nodes[origin(a)];
    Coordinate p = nodes[second(a)];
    Coordinate q = nodes[second(b)];
    boolean isUpperP = p.y > at.y || (p.y == at.y && p.x > at.x);
    boolean isUpperQ = q.y > at.y || (q.y == at.y && q.x > at.x);
    return isUpperP != isUpperQ
        ? (isUpperP ? -1 : 1)
        : CGAlgorithmsDD.orientationIndex(at.x, at.y, q.x, q.y, p.x, p.y);
  }

  /** Walks around all faces; false if a walk meets itself. */
  private boolean trace() {
    Arrays.fill(ringOf, -1);
    int[] ringAt = new int[nodes.length];
    Arrays.fill(ringAt, -1);
    for (int start = 0; start < next.length; start++) {
      if (ringOf[start] < 0) {
        VertexList ring = new VertexList();
        int half = start;
        do {
          if (ringAt[origin(half)] == rings.size() || ringOf[half ^ 1] == rings.size()) {
            return false;
          }
          ringAt[origin(half)] = rings.size();
          ringOf[half] = rings.size();
          addChain(half, ring);
          half = next[half];
        } while (half != start);
        rings.add(ring.toArray());
      }
    }
    return true;
  }

  /** Adds the vertices of a half chain but its last. */
  private void addChain(int half, VertexList ring) {
    int[] chain = chains.get(half / 2);
    if (half % 2 == 0) {
      for (int i = 0; i < chain.length - 1; i++) {
        ring.add(chain[i]);
      }
    } else {
      for (int i = chain.length - 1; i > 0; i--) {
        ring.add(chain[i]);
      }
    }
  }

  private Optional<List<int[][]>> assemble() {
    double[] areas = new double[rings.size()];
    int holes = 0;
    for (int r = 0; r < areas.length; r++) {
      areas[r] = area(rings.get(r));
      if (Double.isNaN(areas[r])) {
        return Optional.empty();
      }
      holes += areas[r] < 0 ? 1 : 0;
    }
    if (holes > FEW_HOLES) {
      return Optional.empty();
    }
    int[] part = holes == 1 ? new int[0] : partOf();
    int[] around = new int[areas.length];
    for (int r = 0; r < areas.length; r++) {
      around[r] = areas[r] > 0 || holes == 1 ? -1 : ringAround(r, areas, part);
    }
    List<int[][]> faces = new ArrayList<>(areas.length);
    for (int r = 0; r < areas.length; r++) {
      if (areas[r] > 0) {
        List<int[]> face = new ArrayList<>(1);
        face.add(rings.get(r));
        for (int hole = 0; hole < areas.length; hole++) {
          if (areas[hole] < 0 && around[hole] == r) {
            face.add(rings.get(hole));
          }
        }
        faces.add(face.toArray(new int[0][]));
      }
    }
    return Optional.of(faces);
  }

  /** Twice the area of a ring, NaN if rounding could hide which way it turns. */
  private double area(int[] ring) {
    Coordinate origin = nodes[ring[0]];
    double twice = 0;
    double products = 0;
    double px = 0;
    double py = 0;
    for (int vertex : ring) {
      double qx = nodes[vertex].x - origin.x;
      double qy = nodes[vertex].y - origin.y;
      twice += px * qy - qx * py;
      products += Math.abs(px * qy) + Math.abs(qx * py);
      px = qx;
      py = qy;
    }
    return Math.abs(twice) > CERTAIN * ring.length * products ? twice : Double.NaN;
  }

  /** The smallest outer ring around what a clockwise ring goes around, or below 0 for none. */
  private int ringAround(int hole, double[] areas, int[] part) {
    Coordinate at = nodes[rings.get(hole)[0]];
    int smallest = -1;
    for (int r = 0; r < areas.length; r++) {
      if (areas[r] > 0
          && part[r] != part[hole]
          && (smallest < 0 || areas[r] < areas[smallest])
          && PointLocation.locateInRing(at, closed(rings.get(r))) == Location.INTERIOR) {
        smallest = r;
      }
    }
    return smallest;
  }

  private Coordinate[] closed(int[] ring) {
    Coordinate[] line = new Coordinate[ring.length + 1];
    for (int i = 0; i < line.length; i++) {
      line[i] = nodes[ring[i % ring.length]];
    }
    return line;
  }

  /** For each ring the least of those that hang together with it, from face to face. */
  private int[] partOf() {
    int[] part = new int[rings.size()];
    Arrays.setAll(part, r -> r);
    boolean more = true;
    while (more) {
      more = false;
      for (int half = 0; half < ringOf.length; half++) {
        int other = part[ringOf[half ^ 1]];
        if (other < part[ringOf[half]]) {
          part[ringOf[half]] = other;
          more = true;
        }
      }
    }
    return part;
  }
}
