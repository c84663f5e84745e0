package org.lynchet.geometry.coverage;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * Cuts regions along parallel lines, in time that grows with vertices plus crossings.
 *
 * <p>Every boundary edge meets a run of neighbouring cuts. The crossings on one cut, sorted along
 * it, are entries and exits by turns and pair up into intervals inside the region. The cells on
 * both sides of the cut take the very same vertices, one upward and one downward, so nothing needs
 * to be noded.
 *
 * <ol>
 *   <li>walk: each ring falls into chains, runs of vertices within one band, ended by crossings;
 *   <li>pair: on each cut, an exit on one side leads to the entry at the other end of the interval;
 *   <li>close: following chains and intervals gives the outer rings of cells;
 *   <li>place: rings that meet no cut are cells of their own, or holes in the cell around them.
 * </ol>
 *
 * <p>It gives up, and {@link NodedCutter} takes over, where a vertex lies within a micrometre of a
 * cut or crossings are not entries and exits by turns.
 */
final class ParallelCutter {
  /** A vertex this near to a cut, in metres, is on it: 0.001 mm, the exactness of strip edges. */
  static final double ON_CUT = 1e-6;

  /** Most cuts are crossed twice, by chains that end and chains that begin. */
  private static final int LIKELY_ON_CUT = 4;

  private static final Comparator<Crossing> ALONG_CUT =
      (a, b) ->
          a.region != b.region
              ? Integer.compare(a.region, b.region)
              : Double.compare(a.along, b.along);

  private final Vertices vertices;
  private final List<Region> regions;
  private final double[] cuts;
  private final EdgeMap crossingsOfEdge = new EdgeMap(8);

  /** The vertices of all chains, one chain after the other. */
  private final VertexList walked;

  private final List<Crossing> crossings = new ArrayList<>();
  private final List<Piece> pieces = new ArrayList<>();
  private final List<Piece> holes = new ArrayList<>();

  /**
   * A place where a ring crosses a cut, and the chain that begins there: the vertices of the ring
   * from this crossing to the next, both included, which lie within one band.
   */
  private static final class Crossing {
    final int region;
    final int cut;
    final boolean rightward;
    final double along;

    /** Where in {@link #walked} the chain begins and ends. */
    final int start;

    int end;

    /** The crossing before on the ring. */
    Crossing before = this;

    /** The crossing whose chain carries on, on the edge of the cell, where this one's ends. */
    @Nullable Crossing next;

    boolean closed;

    Crossing(int region, int cut, boolean rightward, double along, int start) {
      this.region = region;
      this.cut = cut;
      this.rightward = rightward;
      this.along = along;
      this.start = start;
    }

    int bandAfter() {
      return rightward ? cut + 1 : cut;
    }
  }

  /** A closed ring within one band, and later the holes in it. */
  private static final class Piece {
    final int region;
    final int band;
    final int[] ring;
    final List<int[]> holes = new ArrayList<>(0);

    Piece(int region, int band, int[] ring) {
      this.region = region;
      this.band = band;
      this.ring = ring;
    }
  }

  private ParallelCutter(Vertices vertices, List<Region> regions, double[] cuts) {
    this.vertices = vertices;
    this.regions = regions;
    this.cuts = cuts;
    this.walked = new VertexList(vertices.size() + LIKELY_ON_CUT * cuts.length + 1);
  }

  /**
   * Cuts.
   *
   * @param vertices gets the crossings added
   * @param regions headland is not cut, but gets the crossings on edges that it shares
   * @param cuts rising offsets
   * @return the cells, or nothing if something is too delicate
   */
  static Optional<List<Cell>> cut(Vertices vertices, List<Region> regions, double[] cuts) {
    ParallelCutter cutter = new ParallelCutter(vertices, regions, cuts);
    return cutter.walkAll() && cutter.pairAll() && cutter.closeAll()
        ? Optional.of(cutter.cells())
        : Optional.empty();
  }

  private boolean walkAll() {
    for (int r = 0; r < regions.size(); r++) {
      Region region = regions.get(r);
      for (int i = 0; i < region.rings.length && !region.label.headland(); i++) {
        if (!walk(r, region.rings[i], i > 0)) {
          return false;
        }
      }
    }
    return true;
  }

  /** Walks one ring; false if a vertex lies on a cut. */
  private boolean walk(int region, int[] ring, boolean hole) {
    int[] bands = new int[ring.length];
    int start = -1;
    for (int i = 0; i < ring.length; i++) {
      double x = vertices.x(ring[i]);
      int band = band(x, i == 0 ? 0 : bands[i - 1]);
      if ((band > 0 && x - cuts[band - 1] <= ON_CUT)
          || (band < cuts.length && cuts[band] - x <= ON_CUT)) {
        return false;
      }
      bands[i] = band;
      start = i > 0 && band != bands[i - 1] ? i - 1 : start;
    }
    if (start >= 0) {
      walkFrom(region, ring, bands, start);
    } else {
      (hole ? holes : pieces).add(new Piece(region, bands[0], ring));
    }
    return true;
  }

  /** The band of an offset, looked for from a band that is likely near. */
  private int band(double x, int near) {
    int band = near;
    while (band < cuts.length && cuts[band] <= x) {
      band++;
    }
    while (band > 0 && cuts[band - 1] > x) {
      band--;
    }
    return band;
  }

  /** Walks once round, beginning with the edge that leaves {@code start} across a cut. */
  private void walkFrom(int region, int[] ring, int[] bands, int start) {
    Crossing first = null;
    Crossing last = null;
    for (int step = 0; step < ring.length; step++) {
      int i = start + step < ring.length ? start + step : start + step - ring.length;
      int j = i + 1 < ring.length ? i + 1 : 0;
      boolean rightward = bands[j] > bands[i];
      int crossed = Math.abs(bands[j] - bands[i]);
      int vertex = crossed == 0 ? 0 : firstCrossing(ring[i], ring[j], bands[i], bands[j]);
      boolean reversed = vertex < 0;
      for (int k = 0; k < crossed; k++) {
        int at = reversed ? ~vertex - k : vertex + k;
        int cut = rightward ? bands[i] + k : bands[i] - 1 - k;
        if (last != null) {
          end(last, at);
        }
        Crossing crossing = new Crossing(region, cut, rightward, vertices.y(at), walked.size());
        crossing.before = last == null ? crossing : last;
        walked.add(at);
        crossings.add(crossing);
        last = crossing;
        first = first == null ? crossing : first;
      }
      walked.add(ring[j]);
    }
    if (first != null && last != null) {
      end(last, walked.get(first.start));
      first.before = last;
    }
  }

  /** Ends a crossing's chain with the vertex of the next crossing. */
  private void end(Crossing crossing, int vertex) {
    walked.add(vertex);
    crossing.end = walked.size();
  }

  /**
   * The first of the consecutive vertices in which an edge crosses cuts, made if the edge is new;
   * or the complement of the last of them if a neighbouring region has walked the edge the other
   * way.
   */
  private int firstCrossing(int u, int v, int uBand, int vBand) {
    if (regions.size() > 1) {
      int known = crossingsOfEdge.get(v, u);
      if (known != EdgeMap.ABSENT) {
        return ~(known + Math.abs(vBand - uBand) - 1);
      }
    }
    int first = vertices.size();
    int step = vBand > uBand ? 1 : -1;
    for (int band = uBand; band != vBand; band += step) {
      double x = cuts[step > 0 ? band : band - 1];
      double t = (x - vertices.x(u)) / (vertices.x(v) - vertices.x(u));
      vertices.add(x, vertices.y(u) + t * (vertices.y(v) - vertices.y(u)));
    }
    if (regions.size() > 1) {
      crossingsOfEdge.put(u, v, first);
    }
    return first;
  }

  private boolean pairAll() {
    Crossing[] sorted = new Crossing[crossings.size()];
    int[] end = sortByCut(sorted);
    int from = 0;
    for (int cut = 0; cut < cuts.length; cut++) {
      Arrays.sort(sorted, from, end[cut], ALONG_CUT);
      if ((end[cut] - from) % 2 != 0) {
        return false;
      }
      for (; from < end[cut]; from += 2) {
        Crossing low = sorted[from];
        Crossing high = sorted[from + 1];
        // The area lies left of the ring: above where it goes right, below where it goes left.
        if (low.region != high.region || !low.rightward || high.rightward) {
          return false;
        }
        low.before.next = high;
        high.before.next = low;
      }
    }
    return true;
  }

  /** Puts the crossings in the order of their cuts; returns where those of each cut end. */
  private int[] sortByCut(Crossing[] sorted) {
    int[] end = new int[cuts.length + 1];
    for (Crossing crossing : crossings) {
      end[crossing.cut + 1]++;
    }
    for (int cut = 0; cut < cuts.length; cut++) {
      end[cut + 1] += end[cut];
    }
    for (Crossing crossing : crossings) {
      sorted[end[crossing.cut]++] = crossing;
    }
    return end;
  }

  private boolean closeAll() {
    for (Crossing start : crossings) {
      if (!start.closed) {
        int length = close(start);
        if (length == 0) {
          return false;
        }
        pieces.add(new Piece(start.region, start.bandAfter(), ring(start, length)));
      }
    }
    for (Piece hole : holes) {
      if (!place(hole)) {
        return false;
      }
    }
    return true;
  }

  /** Follows chains until the first; how many vertices they have, or 0 if one leads nowhere. */
  private static int close(Crossing start) {
    int length = 0;
    Crossing at = start;
    do {
      at.closed = true;
      length += at.end - at.start;
      if (at.next == null) {
        return 0;
      }
      at = at.next;
    } while (at != start);
    return length;
  }

  /** The vertices of closed chains. */
  private int[] ring(Crossing start, int length) {
    int[] ring = new int[length];
    int size = 0;
    Crossing at = start;
    while (size < length && at != null) {
      walked.copy(at.start, at.end, ring, size);
      size += at.end - at.start;
      at = at.next;
    }
    return ring;
  }

  /** Gives a hole to the piece around it; false if none is. */
  private boolean place(Piece hole) {
    double x = vertices.x(hole.ring[0]);
    double y = vertices.y(hole.ring[0]);
    for (Piece piece : pieces) {
      if (piece.region == hole.region
          && piece.band == hole.band
          && Rings.contains(vertices, Rings.Place.OFFSET, piece.ring, x, y)) {
        piece.holes.add(hole.ring);
        return true;
      }
    }
    return false;
  }

  private List<Cell> cells() {
    List<Cell> cells = new ArrayList<>(pieces.size() + 1);
    for (Piece piece : pieces) {
      int[][] rings = new int[1 + piece.holes.size()][];
      rings[0] = piece.ring;
      for (int i = 1; i < rings.length; i++) {
        rings[i] = piece.holes.get(i - 1);
      }
      cells.add(new Cell(regions.get(piece.region).label, piece.band, rings));
    }
    for (Region region : regions) {
      if (region.label.headland()) {
        cells.add(new Cell(region.label, Cell.NO_BAND, withCrossings(region.rings)));
      }
    }
    return cells;
  }

  /** The rings of a region that is not cut, with the crossings on the edges that it shares. */
  private int[][] withCrossings(int[][] rings) {
    int[][] result = new int[rings.length][];
    for (int r = 0; r < rings.length; r++) {
      VertexList ring = new VertexList();
      int[] vertex = rings[r];
      int band = 0;
      for (int i = 0; i < vertex.length; i++) {
        int u = vertex[i];
        int v = vertex[(i + 1) % vertex.length];
        ring.add(u);
        int known = crossingsOfEdge.get(v, u);
        if (known != EdgeMap.ABSENT) {
          band = band(vertices.x(u), band);
          int count = Math.abs(band(vertices.x(v), band) - band);
          for (int k = count - 1; k >= 0; k--) {
            ring.add(known + k);
          }
        }
      }
      result[r] = ring.toArray();
    }
    return result;
  }
}
