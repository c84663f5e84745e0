package org.lynchet.geometry.coverage;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.LinearRing;

/**
 * Finds the runs of a boundary at which rows end.
 *
 * <ol>
 *   <li>The ring is judged without its fine detail: {@link SimpleRing} keeps within a quarter of
 *       the headland's width of it, so that a jagged line does not change from edge to edge.
 *   <li>Its edges steeper to the rows than the angle are ends, the others sides; neighbours of one
 *       kind make a run.
 *   <li>Runs shorter than the headland is wide are bridged, the shortest first: they become what
 *       lies on both sides of them. Only an end between two sides that run opposite ways stays
 *       however short, since there the field itself is narrow, and its rows do end. A ring that is
 *       less across than the headland is wide, such as a mast or a tree, is an end all around.
 * </ol>
 */
final class EndRuns {
  /** An edge at the angle itself, as far as that can be computed, is a side; in radians. */
  private static final double ANGLE_ROOM = 1e-9;

  private final Coordinate[] ring;
  private final int[] kept;
  private final HeadlandEnds ends;
  private final double width;

  private EndRuns(LinearRing ring, Headland headland, HeadlandEnds ends) {
    this.ring = ring.getCoordinates();
    this.width = headland.widthMetres();
    this.kept = SimpleRing.kept(this.ring, SimpleRing.distanceFor(this.ring, width));
    this.ends = ends;
  }

  /**
   * The runs of a ring.
   *
   * @param ring with the field on its left
   */
  static List<EndRun> of(LinearRing ring, Headland headland, HeadlandEnds ends) {
    return new EndRuns(ring, headland, ends).find();
  }

  /** Edges of the simple ring from one to another, both included, all of one kind. */
  private record Stretch(int first, int last, boolean end, double length) {
    Stretch with(Stretch next, boolean kind) {
      return new Stretch(first, next.last, kind, length + next.length);
    }
  }

  private List<EndRun> find() {
    if (extent() < width) {
      return List.of(new EndRun(List.of(ring), List.of()));
    }
    List<Stretch> stretches = new ArrayList<>();
    for (int edge = 0; edge < kept.length; edge++) {
      add(stretches, new Stretch(edge, edge, isEnd(edge), from(edge).distance(to(edge))));
    }
    joinOverStart(stretches);
    int bridged = shortest(stretches);
    while (bridged >= 0) {
      bridge(stretches, bridged);
      bridged = shortest(stretches);
    }
    return stretches.stream().filter(Stretch::end).map(s -> run(s, stretches.size() == 1)).toList();
  }

  private double extent() {
    Envelope box = new Envelope();
    Arrays.stream(ring).forEach(box::expandToInclude);
    return box.getDiameter();
  }

  private static void add(List<Stretch> stretches, Stretch next) {
    int last = stretches.size() - 1;
    if (last >= 0 && stretches.get(last).end == next.end) {
      stretches.set(last, stretches.get(last).with(next, next.end));
    } else {
      stretches.add(next);
    }
  }

  private static void joinOverStart(List<Stretch> stretches) {
    int last = stretches.size() - 1;
    if (last > 0 && stretches.get(0).end == stretches.get(last).end) {
      Stretch wrapped = stretches.remove(last);
      stretches.set(0, wrapped.with(stretches.get(0), wrapped.end));
    }
  }

  /** Which stretch is bridged next; -1 for none. */
  private int shortest(List<Stretch> stretches) {
    int shortest = -1;
    for (int i = 0; i < stretches.size() && stretches.size() > 1; i++) {
      Stretch one = stretches.get(i);
      if (one.length < width
          && (shortest < 0 || one.length < stretches.get(shortest).length)
          && (!one.end || isStep(one))) {
        shortest = i;
      }
    }
    return shortest;
  }

  /** Whether the sides before and after an end run the same way along the rows. */
  private boolean isStep(Stretch end) {
    return alongRows(end.first - 1) * alongRows(end.last + 1) > 0;
  }

  private static void bridge(List<Stretch> stretches, int bridged) {
    int count = stretches.size();
    boolean kind = !stretches.get(bridged).end;
    List<Stretch> result = new ArrayList<>();
    for (int i = 0; i < count; i++) {
      Stretch one = stretches.get((bridged + i) % count);
      add(result, i == 0 ? new Stretch(one.first, one.last, kind, one.length) : one);
    }
    joinOverStart(result);
    stretches.clear();
    stretches.addAll(result);
  }

  private EndRun run(Stretch stretch, boolean whole) {
    if (whole) {
      return new EndRun(List.of(ring), List.of());
    }
    int first = kept[Math.floorMod(stretch.first, kept.length)];
    int last = kept[Math.floorMod(stretch.last + 1, kept.length)];
    int edges = Math.floorMod(last - first, ring.length - 1);
    List<Coordinate> line =
        IntStream.rangeClosed(0, edges)
            .mapToObj(i -> ring[(first + i) % (ring.length - 1)])
            .toList();
    Coordinate start = chord(stretch.first, 1);
    Coordinate end = chord(stretch.last, -1);
    Coordinate inwardAtStart = new Coordinate(-start.y, start.x);
    Coordinate inwardAtEnd = new Coordinate(end.y, -end.x);
    return new EndRun(
        line,
        List.of(
            tip(line.get(0), opposite(start), inwardAtStart, isLeftTurn(stretch.first)),
            tip(line.get(edges), opposite(end), inwardAtEnd, isLeftTurn(stretch.last + 1))));
  }

  private EndRun.Tip tip(Coordinate at, Coordinate beyond, Coordinate inward, boolean convex) {
    Coordinate rows = rowsAt(at);
    boolean into = rows.x * inward.x + rows.y * inward.y > 0;
    return new EndRun.Tip(at, beyond, inward, into ? rows : opposite(rows), convex);
  }

  /**
   * Unit vector from the end of a run, over the headland's width, back along it; over less where
   * the run has teeth and the line from its end over several of them is no steeper to the rows than
   * a side.
   *
   * @param edge the run's edge there
   * @param step 1 to go forward from the run's start, -1 to go back from its end
   */
  private Coordinate chord(int edge, int step) {
    Coordinate start = step > 0 ? from(edge) : to(edge);
    int next = edge;
    Coordinate end = step > 0 ? to(next) : from(next);
    while (start.distance(end) < width && isEnd(next + step)) {
      next += step;
      Coordinate farther = step > 0 ? to(next) : from(next);
      if (!isSteep(start, farther, rowsAt(start))) {
        break;
      }
      end = farther;
    }
    double length = start.distance(end);
    return new Coordinate((end.x - start.x) / length, (end.y - start.y) / length);
  }

  private boolean isLeftTurn(int vertex) {
    Coordinate a = from(vertex - 1);
    Coordinate b = from(vertex);
    Coordinate c = to(vertex);
    return (b.x - a.x) * (c.y - b.y) - (b.y - a.y) * (c.x - b.x) > 0;
  }

  private boolean isEnd(int edge) {
    return isSteep(from(edge), to(edge), rowsOf(edge));
  }

  private boolean isSteep(Coordinate from, Coordinate to, Coordinate rows) {
    double across = (to.x - from.x) * rows.y - (to.y - from.y) * rows.x;
    double angle = Math.atan2(Math.abs(across), Math.abs(along(rows, from, to)));
    return angle > Math.toRadians(ends.angleDegrees()) + ANGLE_ROOM;
  }

  private double alongRows(int edge) {
    return along(rowsOf(edge), from(edge), to(edge));
  }

  private static double along(Coordinate rows, Coordinate from, Coordinate to) {
    return (to.x - from.x) * rows.x + (to.y - from.y) * rows.y;
  }

  private Coordinate rowsOf(int edge) {
    return rowsAt(new Coordinate((from(edge).x + to(edge).x) / 2, (from(edge).y + to(edge).y) / 2));
  }

  private Coordinate rowsAt(Coordinate at) {
    double direction = ends.rows().directionRadians(at.x, at.y);
    return new Coordinate(Math.sin(direction), Math.cos(direction));
  }

  private static Coordinate opposite(Coordinate direction) {
    return new Coordinate(-direction.x, -direction.y);
  }

  private Coordinate from(int edge) {
    return ring[kept[Math.floorMod(edge, kept.length)]];
  }

  private Coordinate to(int edge) {
    return from(edge + 1);
  }
}
