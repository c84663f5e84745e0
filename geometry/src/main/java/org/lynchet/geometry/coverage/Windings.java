package org.lynchet.geometry.coverage;

import java.util.ArrayDeque;
import java.util.Arrays;
import java.util.Deque;
import java.util.List;

/**
 * Tells which areas each face of an arrangement lies in.
 *
 * <p>How often an area's rings wind around a face follows from its neighbour: going from the right
 * of an edge to its left adds one for each time that the rings walk the edge forward and takes one
 * off for each time that they walk it backward. Outside everything it is 0. No place is tested, so
 * thin faces are as safe as others. A face is in an area that winds around it at least once.
 */
final class Windings {
  private static final int[] NOWHERE = {};

  /** The last entry of each directed edge. */
  private final EdgeMap lastOfEdge = new EdgeMap(1024);

  /** Entries: an area whose ring walks the edge, and the entry before of the same edge. */
  private int[] area = new int[1024];

  private int[] before = new int[1024];
  private int size;

  /** Adds an edge of a ring that has the area on its left. */
  void add(int from, int to, int ofArea) {
    if (size == area.length) {
      area = Arrays.copyOf(area, size * 2);
      before = Arrays.copyOf(before, size * 2);
    }
    area[size] = ofArea;
    before[size] = lastOfEdge.put(from, to, size);
    size++;
  }

  /**
   * Finds the areas.
   *
   * @param faces all bounded faces, each an outer ring, counter-clockwise, and holes, clockwise
   * @return for each face the areas that it lies in, rising
   */
  int[][] areasOf(List<int[][]> faces) {
    EdgeMap faceLeftOf = new EdgeMap(faces.size() * 4);
    for (int f = 0; f < faces.size(); f++) {
      for (int[] ring : faces.get(f)) {
        for (int i = 0; i < ring.length; i++) {
          faceLeftOf.put(ring[i], ring[(i + 1) % ring.length], f);
        }
      }
    }
    int[][] winding = new int[faces.size()][];
    Deque<Integer> reached = new ArrayDeque<>();
    for (int f = 0; f < winding.length; f++) {
      if (winding[f] == null && enterFromOutside(f, faces, faceLeftOf, winding)) {
        reached.add(f);
        while (!reached.isEmpty()) {
          spread(reached.remove(), faces, faceLeftOf, winding, reached);
        }
      }
    }
    int[][] areas = new int[winding.length][];
    for (int f = 0; f < areas.length; f++) {
      areas[f] = areasIn(winding[f]);
    }
    return areas;
  }

  private boolean enterFromOutside(
      int face, List<int[][]> faces, EdgeMap faceLeftOf, int[][] winding) {
    for (int[] ring : faces.get(face)) {
      for (int i = 0; i < ring.length; i++) {
        int u = ring[i];
        int v = ring[(i + 1) % ring.length];
        if (faceLeftOf.get(v, u) == EdgeMap.ABSENT) {
          winding[face] = leftOf(u, v, NOWHERE);
          return true;
        }
      }
    }
    return false;
  }

  private void spread(
      int face, List<int[][]> faces, EdgeMap faceLeftOf, int[][] winding, Deque<Integer> reached) {
    for (int[] ring : faces.get(face)) {
      for (int i = 0; i < ring.length; i++) {
        int u = ring[i];
        int v = ring[(i + 1) % ring.length];
        int other = faceLeftOf.get(v, u);
        if (other != EdgeMap.ABSENT && winding[other] == null) {
          winding[other] = leftOf(v, u, winding[face]);
          reached.add(other);
        }
      }
    }
  }

  /** The windings on the left of an edge from those on its right. */
  private int[] leftOf(int from, int to, int[] right) {
    int[] left = right;
    for (int e = lastOfEdge.get(from, to); e != EdgeMap.ABSENT; e = before[e]) {
      left = plus(left, area[e], 1);
    }
    for (int e = lastOfEdge.get(to, from); e != EdgeMap.ABSENT; e = before[e]) {
      left = plus(left, area[e], -1);
    }
    return left;
  }

  /** Adds to one area's winding; windings are pairs of area and number, areas rising, none 0. */
  private static int[] plus(int[] windings, int area, int number) {
    int at = 0;
    while (at < windings.length && windings[at] < area) {
      at += 2;
    }
    boolean present = at < windings.length && windings[at] == area;
    boolean goes = present && windings[at + 1] + number == 0;
    int[] result = new int[windings.length + (present ? goes ? -2 : 0 : 2)];
    System.arraycopy(windings, 0, result, 0, at);
    int rest = present ? at + 2 : at;
    System.arraycopy(
        windings, rest, result, result.length - (windings.length - rest), windings.length - rest);
    if (!goes) {
      result[at] = area;
      result[at + 1] = present ? windings[at + 1] + number : number;
    }
    return result;
  }

  private static int[] areasIn(int[] windings) {
    int[] areas = new int[windings.length / 2];
    int count = 0;
    for (int i = 0; i < windings.length; i += 2) {
      if (windings[i + 1] > 0) {
        areas[count++] = windings[i];
      }
    }
    return Arrays.copyOf(areas, count);
  }
}
