package org.lynchet.geometry.coverage;

import java.util.Arrays;
import java.util.function.IntPredicate;
import org.locationtech.jts.algorithm.CGAlgorithmsDD;
import org.locationtech.jts.algorithm.Orientation;

/**
 * Holds the edges of some rings with their extents in arrays, and tells which of them meet.
 *
 * <p>Edges are numbered from 0, ring by ring. It can be filled again and again.
 */
final class RingEdges {
  private int[] vertex = new int[64];
  private int[] next = new int[64];
  private double[] x = new double[64];
  private double[] y = new double[64];
  private double[] minX = new double[64];
  private double[] maxX = new double[64];
  private double[] minY = new double[64];
  private double[] maxY = new double[64];
  private boolean[] isNew = new boolean[64];
  private int size;
  private int newEdges;

  /** Takes the edges of rings in; those at a new vertex are new. */
  void fill(Vertices vertices, int[][] rings, Rings.Place place, IntPredicate isNewVertex) {
    double[] firsts = vertices.firsts(place);
    double[] seconds = vertices.seconds(place);
    size = 0;
    for (int[] ring : rings) {
      ensureCapacity(size + ring.length);
      int first = size;
      for (int i = 0; i < ring.length; i++) {
        int v = ring[i];
        int following = i + 1 < ring.length ? i + 1 : 0;
        vertex[size] = v;
        next[size] = first + following;
        x[size] = firsts[v];
        y[size] = seconds[v];
        isNew[size] = isNewVertex.test(v) || isNewVertex.test(ring[following]);
        size++;
      }
    }
    measure();
  }

  private void measure() {
    newEdges = 0;
    for (int e = 0; e < size; e++) {
      int to = next[e];
      boolean isRightward = x[e] < x[to];
      minX[e] = isRightward ? x[e] : x[to];
      maxX[e] = isRightward ? x[to] : x[e];
      boolean isUpward = y[e] < y[to];
      minY[e] = isUpward ? y[e] : y[to];
      maxY[e] = isUpward ? y[to] : y[e];
      newEdges += isNew[e] ? 1 : 0;
    }
  }

  private void ensureCapacity(int capacity) {
    if (capacity > x.length) {
      int length = Math.max(capacity, x.length * 2);
      vertex = Arrays.copyOf(vertex, length);
      next = Arrays.copyOf(next, length);
      x = Arrays.copyOf(x, length);
      y = Arrays.copyOf(y, length);
      minX = Arrays.copyOf(minX, length);
      maxX = Arrays.copyOf(maxX, length);
      minY = Arrays.copyOf(minY, length);
      maxY = Arrays.copyOf(maxY, length);
      isNew = Arrays.copyOf(isNew, length);
    }
  }

  int size() {
    return size;
  }

  /** How many edges are new. */
  int newEdges() {
    return newEdges;
  }

  boolean isNew(int edge) {
    return isNew[edge];
  }

  /** The order in which they begin; there is at least one. */
  SlabOrder order() {
    return SlabOrder.of(minX, maxX, minY, maxY, size);
  }

  /** Whether an edge meets another; those that are new and come before are not asked again. */
  boolean meetsAny(int edge) {
    double left = minX[edge];
    double right = maxX[edge];
    double low = minY[edge];
    double high = maxY[edge];
    for (int j = 0; j < size; j++) {
      boolean apart = minX[j] > right || maxX[j] < left || minY[j] > high || maxY[j] < low;
      if (!apart && j != edge && (j > edge || !isNew[j]) && meet(edge, j)) {
        return true;
      }
    }
    return false;
  }

  /** Whether two edges meet anywhere but where one follows the other. */
  boolean meet(int i, int j) {
    if (minX[i] > maxX[j] || maxX[i] < minX[j] || minY[i] > maxY[j] || maxY[i] < minY[j]) {
      return false;
    }
    boolean follows = vertex[next[i]] == vertex[j];
    boolean precedes = vertex[next[j]] == vertex[i];
    if (follows || precedes) {
      return (follows && precedes) || (follows ? foldsBack(i, j) : foldsBack(j, i));
    }
    return side(i, j) * side(i, next[j]) <= 0 && side(j, i) * side(j, next[i]) <= 0;
  }

  /** On which side of an edge the beginning of another lies. */
  private int side(int edge, int other) {
    int to = next[edge];
    return CGAlgorithmsDD.orientationIndex(x[edge], y[edge], x[to], y[to], x[other], y[other]);
  }

  /** Whether an edge comes back over the one before. */
  private boolean foldsBack(int before, int edge) {
    int at = next[before];
    int to = next[edge];
    double ahead = (x[at] - x[before]) * (x[to] - x[at]) + (y[at] - y[before]) * (y[to] - y[at]);
    return ahead <= 0
        && CGAlgorithmsDD.orientationIndex(x[before], y[before], x[at], y[at], x[to], y[to])
            == Orientation.COLLINEAR;
  }
}
