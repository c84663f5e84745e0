package org.lynchet.geometry.sweep;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.DoubleStream;

/** Sweeps a line of constant offset over the edges of a field and makes runs of its stretches. */
final class Sweep {
  /**
   * Stretches that share less than this, in metres, do not hang together: below the steps of the
   * cutters, above rounding errors of some kilometres.
   */
  private static final double SHARED = 1e-7;

  private final List<Edge> edges;
  private final double[] offsets;
  private final double[] lengthBefore;
  private final double[] lengthAfter;
  private final List<OpenRun> runs = new ArrayList<>();
  private List<Stretch> before = new ArrayList<>();

  /** A stretch left of an offset and one right of it that hang together. */
  private record Pair(Stretch left, Stretch right) {}

  /**
   * Gets ready.
   *
   * @param edges the edges of valid polygons, at least three
   */
  Sweep(List<Edge> edges) {
    this.edges = edges.stream().sorted(Comparator.comparingDouble(Edge::left)).toList();
    this.offsets =
        edges.stream()
            .flatMapToDouble(edge -> DoubleStream.of(edge.left(), edge.right()))
            .sorted()
            .distinct()
            .toArray();
    this.lengthBefore = new double[offsets.length];
    this.lengthAfter = new double[offsets.length];
  }

  /** Sweeps. */
  SweptField sweep() {
    List<Edge> crossed = new ArrayList<>();
    int entered = 0;
    for (int i = 0; i < offsets.length; i++) {
      double at = offsets[i];
      crossed.removeIf(edge -> edge.right() <= at);
      while (entered < edges.size() && edges.get(entered).left() <= at) {
        crossed.add(edges.get(entered++));
      }
      double middle = i + 1 < offsets.length ? (at + offsets[i + 1]) / 2 : at;
      crossed.sort(Comparator.comparingDouble(edge -> edge.y(middle)));
      List<Stretch> after = stretches(crossed);
      lengthBefore[i] = length(before, at);
      lengthAfter[i] = length(after, at);
      step(at, after);
    }
    return new SweptField(
        runs.stream().map(OpenRun::closed).toList(),
        new AreaLeftOf(offsets, lengthBefore, lengthAfter));
  }

  private static List<Stretch> stretches(List<Edge> crossed) {
    List<Stretch> stretches = new ArrayList<>(crossed.size() / 2);
    for (int i = 0; i + 1 < crossed.size(); i += 2) {
      stretches.add(new Stretch(crossed.get(i), crossed.get(i + 1)));
    }
    return stretches;
  }

  /** Goes over an offset: runs end, go on or begin there. */
  private void step(double at, List<Stretch> after) {
    before.forEach(stretch -> stretch.partners = 0);
    List<Pair> pairs = pairs(at, after);
    for (Pair pair : pairs) {
      if (pair.left.partners == 1 && pair.right.partners == 1) {
        goOn(at, pair.left, pair.right);
      }
    }
    for (Stretch stretch : after) {
      if (stretch.run == Stretch.NO_RUN) {
        stretch.run = runs.size();
        runs.add(new OpenRun(at));
        mark(at, stretch);
      }
    }
    for (Pair pair : pairs) {
      if (!pair.left.goesOn) {
        runs.get(pair.left.run).addNext(pair.right.run);
      }
    }
    for (Stretch stretch : before) {
      if (!stretch.goesOn) {
        mark(at, stretch);
        runs.get(stretch.run).endAt(at);
      }
    }
    before = after;
  }

  private static double length(List<Stretch> stretches, double at) {
    double length = 0;
    for (Stretch stretch : stretches) {
      length += stretch.length(at);
    }
    return length;
  }

  private void goOn(double at, Stretch left, Stretch right) {
    left.goesOn = true;
    right.run = left.run;
    if (!left.lower.equals(right.lower) || !left.upper.equals(right.upper)) {
      mark(at, left);
      mark(at, right);
    }
  }

  private void mark(double at, Stretch stretch) {
    OpenRun run = runs.get(stretch.run);
    run.lower.add(at, -stretch.lower.y(at));
    run.upper.add(at, stretch.upper.y(at));
  }

  /** Which stretches left and right of an offset hang together; both lists rise along it. */
  private List<Pair> pairs(double at, List<Stretch> after) {
    List<Pair> pairs = new ArrayList<>();
    int i = 0;
    int j = 0;
    while (i < before.size() && j < after.size()) {
      Stretch left = before.get(i);
      Stretch right = after.get(j);
      double leftTop = left.upper.y(at);
      double rightTop = right.upper.y(at);
      double low = Math.max(left.lower.y(at), right.lower.y(at));
      if (Math.min(leftTop, rightTop) - low > SHARED) {
        left.partners++;
        right.partners++;
        pairs.add(new Pair(left, right));
      }
      if (leftTop < rightTop) {
        i++;
      } else {
        j++;
      }
    }
    return pairs;
  }
}
