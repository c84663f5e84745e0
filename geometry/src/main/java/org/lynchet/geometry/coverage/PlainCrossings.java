package org.lynchet.geometry.coverage;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.locationtech.jts.algorithm.CGAlgorithmsDD;
import org.locationtech.jts.algorithm.Distance;
import org.locationtech.jts.algorithm.RobustLineIntersector;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.PrecisionModel;

/**
 * Finds the nodes of segments that meet others only in plain ways, and tells which segments do not,
 * so that a noder has to see to them.
 *
 * <p>Seen on the grid, two segments meet plainly if they
 *
 * <ul>
 *   <li>are apart by more than the tolerance, 4 grid steps; or
 *   <li>are the same, in whatever direction; or
 *   <li>begin or end in the same vertex, and the other end of each is more than the tolerance from
 *       the other segment; or
 *   <li>cross, all ends more than the tolerance from the other segment, and their crossing is more
 *       than that from all else that either of them meets.
 * </ul>
 *
 * <p>Then snap rounding would do nothing but divide them in their crossings, rounded to the grid. A
 * vertex, or a crossing that is one, draws a segment to itself only from within a step of it. What
 * is farther than the tolerance from a segment does not, and stays on its side, as the pieces of a
 * segment stray from it by no more than a step. And from a common vertex two segments part for
 * good: the distance of the one from the other is convex along it, 0 in the vertex and more than
 * the tolerance in the first node beyond.
 */
final class PlainCrossings {
  /** Ends and crossings are clear of a segment if they are this many grid steps from it. */
  private static final double CLEAR_STEPS = 4;

  private final TouchingSegments segments;
  private final PrecisionModel grid;
  private final double clear;

  /** The ends of each segment, as they came and on the grid. */
  private final Coordinate[] from;

  private final Coordinate[] to;
  private final Coordinate[] gridFrom;
  private final Coordinate[] gridTo;

  private final boolean[] isDelicate;

  /** The first of the segments that are the same; found by following. */
  private final int[] same;

  /** What each segment crosses or has a vertex in common with. */
  private final @Nullable VertexList[] meets;

  private final @Nullable List<Coordinate>[] nodes;

  /** Pairs of segments that cross. */
  private final VertexList crossing = new VertexList();

  private final RobustLineIntersector intersector = new RobustLineIntersector();

  @SuppressWarnings("unchecked") // An array of lists cannot be made otherwise.
  private PlainCrossings(
      List<Coordinate[]> lines,
      List<Coordinate[]> onGrid,
      TouchingSegments segments,
      PrecisionModel grid) {
    this.segments = segments;
    this.grid = grid;
    this.clear = CLEAR_STEPS / grid.getScale();
    int size = segments.size();
    from = new Coordinate[size];
    to = new Coordinate[size];
    gridFrom = new Coordinate[size];
    gridTo = new Coordinate[size];
    isDelicate = new boolean[size];
    same = new int[size];
    meets = new VertexList[size];
    nodes = (List<Coordinate>[]) new List<?>[size];
    int s = 0;
    for (int l = 0; l < lines.size(); l++) {
      Coordinate[] line = lines.get(l);
      Coordinate[] rounded = onGrid.get(l);
      for (int i = 1; i < line.length; i++) {
        from[s] = line[i - 1];
        to[s] = line[i];
        gridFrom[s] = rounded[i - 1];
        gridTo[s] = rounded[i];
        same[s] = s;
        s++;
      }
    }
  }

  /**
   * Finds them.
   *
   * @param lines as they came
   * @param onGrid the same with each place rounded to the grid
   */
  static PlainCrossings of(
      List<Coordinate[]> lines,
      List<Coordinate[]> onGrid,
      TouchingSegments segments,
      PrecisionModel grid) {
    PlainCrossings crossings = new PlainCrossings(lines, onGrid, segments, grid);
    if (segments.areTooMany()) {
      Arrays.fill(crossings.isDelicate, true);
    } else {
      crossings.find();
    }
    return crossings;
  }

  /** Whether a noder has to see to a segment. */
  boolean isDelicate(int segment) {
    return isDelicate[segment];
  }

  /** The nodes of a segment that is not delicate, on the grid, in the order in which it runs. */
  List<Coordinate> nodes(int segment) {
    List<Coordinate> found = nodes[first(segment)];
    if (found == null) {
      return List.of();
    }
    List<Coordinate> sorted = new ArrayList<>(found);
    Coordinate start = from[segment];
    sorted.sort(Comparator.comparingDouble(node -> square(node, start)));
    return sorted;
  }

  private static double square(Coordinate a, Coordinate b) {
    return (a.x - b.x) * (a.x - b.x) + (a.y - b.y) * (a.y - b.y);
  }

  private void find() {
    VertexList tooShort = segments.tooShort();
    for (int i = 0; i < tooShort.size(); i++) {
      int s = tooShort.get(i);
      isDelicate[s] = true;
      isDelicate[segments.before(s)] = true;
      isDelicate[segments.after(s)] = true;
    }
    VertexList pairs = segments.pairs();
    for (int i = 0; i < pairs.size(); i += 2) {
      int a = pairs.get(i);
      int b = pairs.get(i + 1);
      if (areSame(a, b)) {
        int first = Math.min(first(a), first(b));
        same[first(a)] = first;
        same[first(b)] = first;
      }
    }
    for (int i = 0; i < pairs.size(); i += 2) {
      int a = pairs.get(i);
      int b = pairs.get(i + 1);
      if (same[a] == a && same[b] == b) {
        meet(a, b);
      }
    }
    for (int i = 0; i < crossing.size(); i += 2) {
      cross(crossing.get(i), crossing.get(i + 1));
    }
    spread();
  }

  private int first(int segment) {
    int at = segment;
    while (same[at] != at) {
      at = same[at];
    }
    return at;
  }

  private boolean areSame(int a, int b) {
    return gridFrom[a].equals2D(gridFrom[b])
        ? gridTo[a].equals2D(gridTo[b])
        : gridFrom[a].equals2D(gridTo[b]) && gridTo[a].equals2D(gridFrom[b]);
  }

  private void meet(int a, int b) {
    boolean fromA = isNear(gridFrom[a], b);
    boolean toA = isNear(gridTo[a], b);
    boolean fromB = isNear(gridFrom[b], a);
    boolean toB = isNear(gridTo[b], a);
    if (!(fromA || toA || fromB || toB)) {
      if (haveCrossing(a, b)) {
        meetsOf(a).add(b);
        meetsOf(b).add(a);
        crossing.add(a);
        crossing.add(b);
      }
    } else if (fromA != toA
        && fromB != toB
        && (fromA ? gridFrom[a] : gridTo[a]).equals2D(fromB ? gridFrom[b] : gridTo[b])) {
      meetsOf(a).add(b);
      meetsOf(b).add(a);
    } else {
      isDelicate[a] = true;
      isDelicate[b] = true;
    }
  }

  private boolean isNear(Coordinate at, int segment) {
    return Distance.pointToSegment(at, gridFrom[segment], gridTo[segment]) <= clear;
  }

  /** Whether segments cross whose ends are clear of each other. */
  private boolean haveCrossing(int a, int b) {
    return side(a, gridFrom[b]) != side(a, gridTo[b]) && side(b, gridFrom[a]) != side(b, gridTo[a]);
  }

  private int side(int segment, Coordinate at) {
    Coordinate start = gridFrom[segment];
    Coordinate end = gridTo[segment];
    return CGAlgorithmsDD.orientationIndex(start.x, start.y, end.x, end.y, at.x, at.y);
  }

  private VertexList meetsOf(int segment) {
    VertexList list = meets[segment];
    if (list == null) {
      list = new VertexList();
      meets[segment] = list;
    }
    return list;
  }

  private void cross(int a, int b) {
    intersector.computeIntersection(from[a], to[a], from[b], to[b]);
    if (intersector.getIntersectionNum() != 1) {
      isDelicate[a] = true;
      isDelicate[b] = true;
      return;
    }
    Coordinate node = new Coordinate(intersector.getIntersection(0));
    grid.makePrecise(node);
    if (!isClear(node, a, b) || !isClear(node, b, a)) {
      isDelicate[a] = true;
      isDelicate[b] = true;
    }
    addNode(a, node);
    addNode(b, node);
  }

  /** Whether a crossing with another is clear of all else that a segment meets. */
  private boolean isClear(Coordinate node, int segment, int other) {
    VertexList met = meetsOf(segment);
    for (int i = 0; i < met.size(); i++) {
      if (met.get(i) != other && isNear(node, met.get(i))) {
        return false;
      }
    }
    return true;
  }

  private void addNode(int segment, Coordinate node) {
    List<Coordinate> list = nodes[segment];
    if (list == null) {
      list = new ArrayList<>(2);
      nodes[segment] = list;
    }
    list.add(node);
  }

  /** What is the same as a delicate segment or crosses one is delicate too. */
  private void spread() {
    boolean more = true;
    while (more) {
      more = false;
      for (int s = 0; s < same.length; s++) {
        int first = first(s);
        if (isDelicate[s] != isDelicate[first]) {
          isDelicate[s] = true;
          isDelicate[first] = true;
          more = true;
        }
      }
      for (int i = 0; i < crossing.size(); i += 2) {
        int a = crossing.get(i);
        int b = crossing.get(i + 1);
        if (isDelicate[a] != isDelicate[b]) {
          isDelicate[a] = true;
          isDelicate[b] = true;
          more = true;
        }
      }
    }
  }
}
