package org.lynchet.geometry.coverage;

import java.util.List;
import org.locationtech.jts.geom.Coordinate;

/**
 * Finds which segments of some lines may touch which others when all are rounded to a grid; the
 * rest, most of them, need not be noded.
 *
 * <p>A segment stands alone if its box keeps clear of those of all others but the neighbours on its
 * line, is longer than rounding can undo, and does not turn back from its neighbours.
 */
final class TouchingSegments {
  /**
   * How many grid steps must lie between boxes: each of two rounded places moves by half a step.
   */
  private static final double CLEAR_STEPS = 4;

  /** More comparisons for each segment than this, and all may touch. */
  private static final int MANY = 200;

  /** More pairs for each segment than this, and all may touch. */
  private static final int MANY_PAIRS = 16;

  private final double clear;
  private final int size;
  private final double[] minX;
  private final double[] maxX;
  private final double[] minY;
  private final double[] maxY;

  /** The number of the segment before and after on its line; its own where there is none. */
  private final int[] before;

  private final int[] after;

  /** Two segments each, one after the other. */
  private final VertexList pairs = new VertexList();

  /** Segments shorter than rounding can undo. */
  private final VertexList tooShort = new VertexList();

  private boolean areTooMany;

  private TouchingSegments(List<Coordinate[]> lines, double step) {
    clear = CLEAR_STEPS * step;
    size = lines.stream().mapToInt(line -> line.length - 1).sum();
    minX = new double[size];
    maxX = new double[size];
    minY = new double[size];
    maxY = new double[size];
    before = new int[size];
    after = new int[size];
    int first = 0;
    for (Coordinate[] line : lines) {
      add(line, first);
      first += line.length - 1;
    }
  }

  /**
   * Finds them.
   *
   * @param lines each of at least one segment; segments are numbered from 0, line by line
   * @param step the distance of neighbours on the grid
   */
  static TouchingSegments of(List<Coordinate[]> lines, double step) {
    TouchingSegments segments = new TouchingSegments(lines, step);
    if (segments.size > 1) {
      segments.sweep();
    }
    return segments;
  }

  /** How many segments there are. */
  int size() {
    return size;
  }

  /** Whether touching segments are so many that they were not all found. */
  boolean areTooMany() {
    return areTooMany;
  }

  /** Pairs of segments that may touch, one after the other; neighbours if they turn back. */
  VertexList pairs() {
    return pairs;
  }

  /** Segments that may touch both neighbours on their line, being so short. */
  VertexList tooShort() {
    return tooShort;
  }

  /** The segment before one on its line; itself if there is none. */
  int before(int segment) {
    return before[segment];
  }

  /** The segment after one on its line; itself if there is none. */
  int after(int segment) {
    return after[segment];
  }

  private void add(Coordinate[] line, int first) {
    int count = line.length - 1;
    boolean isClosed = line[0].equals2D(line[count]);
    for (int i = 0; i < count; i++) {
      int s = first + i;
      minX[s] = Math.min(line[i].x, line[i + 1].x);
      maxX[s] = Math.max(line[i].x, line[i + 1].x);
      minY[s] = Math.min(line[i].y, line[i + 1].y);
      maxY[s] = Math.max(line[i].y, line[i + 1].y);
      before[s] = i > 0 ? s - 1 : isClosed ? first + count - 1 : s;
      after[s] = i + 1 < count ? s + 1 : isClosed ? first : s;
    }
    for (int i = 0; i < count; i++) {
      int s = first + i;
      if (maxX[s] - minX[s] < clear && maxY[s] - minY[s] < clear) {
        tooShort.add(s);
      } else if (after[s] != s && turnsBack(line, i, after[s] - first)) {
        addPair(s, after[s]);
      }
    }
  }

  private void addPair(int segment, int other) {
    pairs.add(segment);
    pairs.add(other);
  }

  private static boolean turnsBack(Coordinate[] line, int i, int j) {
    double ahead =
        (line[i + 1].x - line[i].x) * (line[j + 1].x - line[j].x)
            + (line[i + 1].y - line[i].y) * (line[j + 1].y - line[j].y);
    return ahead <= 0;
  }

  private void sweep() {
    SlabOrder order = SlabOrder.of(minX, maxX, minY, maxY, size);
    int[] last = order.last();
    int[] active = new int[size];
    int count = 0;
    long left = (long) MANY * size;
    for (int segment : order.inOrder()) {
      int slab = order.first(segment, clear);
      int still = 0;
      left -= count;
      for (int a = 0; a < count; a++) {
        int other = active[a];
        if (last[other] >= slab) {
          active[still++] = other;
          if (areNear(segment, other) && before[segment] != other && after[segment] != other) {
            addPair(segment, other);
          }
        }
      }
      active[still++] = segment;
      count = still;
      if (left < 0 || pairs.size() > 2 * MANY_PAIRS * size) {
        areTooMany = true;
        return;
      }
    }
  }

  private boolean areNear(int i, int j) {
    return minX[i] - maxX[j] <= clear
        && minX[j] - maxX[i] <= clear
        && minY[i] - maxY[j] <= clear
        && minY[j] - maxY[i] <= clear;
  }
}
