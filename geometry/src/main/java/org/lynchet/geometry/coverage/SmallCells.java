package org.lynchet.geometry.coverage;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.Collection;
import java.util.Collections;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.PriorityQueue;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.ToDoubleFunction;
import java.util.function.ToIntFunction;

/**
 * Joins cells below a minimum area to the neighbour in their strip with which they share the
 * longest edge, the smallest first.
 */
final class SmallCells {
  private final Vertices vertices;
  private final List<Cell> cells;
  private final ToDoubleFunction<Cell> minimumOf;
  private final int[] strips;
  private final double[] areas;
  private final boolean[] wasSmall;

  /**
   * Shared lengths of each cell that was small at first, by neighbour; the neighbours of others are
   * never asked for. Cells that were joined to another are gone from them.
   */
  private final List<Map<Integer, Double>> shared;

  /** The cells that others were joined to, with all that they are made of now, and those others. */
  private final Map<Integer, List<Integer>> members = new HashMap<>();

  private final BitSet withMembers = new BitSet();

  private int joined;
  private double joinedArea;
  private int kept;

  /**
   * Gets ready to join.
   *
   * @param minimumOf the area in square metres below which a cell is small
   * @param stripOf the strip of a cell
   */
  SmallCells(
      Vertices vertices,
      List<Cell> cells,
      ToDoubleFunction<Cell> minimumOf,
      ToIntFunction<Cell> stripOf) {
    this.vertices = vertices;
    this.cells = cells;
    this.minimumOf = minimumOf;
    this.strips = new int[cells.size()];
    this.areas = new double[cells.size()];
    this.wasSmall = new boolean[cells.size()];
    this.shared = new ArrayList<>(Collections.nCopies(cells.size(), Map.of()));
    for (int i = 0; i < areas.length; i++) {
      strips[i] = stripOf.applyAsInt(cells.get(i));
      areas[i] = Rings.area(vertices, cells.get(i).rings);
    }
  }

  /** Joins; the coverage and what was done. */
  SmallCellsJoined join() {
    PriorityQueue<Integer> small =
        new PriorityQueue<>(
            Comparator.comparingDouble((Integer i) -> areas[i]).thenComparing(i -> i));
    for (int i = 0; i < areas.length; i++) {
      if (isSmall(i)) {
        small.add(i);
      }
    }
    if (small.isEmpty()) {
      return new SmallCellsJoined(new Coverage(vertices, cells), 0, 0, 0);
    }
    findNeighbours(small);
    while (!small.isEmpty()) {
      joinOne(small.remove(), small);
    }
    return new SmallCellsJoined(new Coverage(vertices, rebuild()), joined, joinedArea, kept);
  }

  private boolean isSmall(int cell) {
    return areas[cell] < minimumOf.applyAsDouble(cells.get(cell));
  }

  /** Finds who shares edges with whom in the strips of small cells. */
  private void findNeighbours(Collection<Integer> small) {
    Set<Integer> stripsOfSmall = new HashSet<>();
    for (int cell : small) {
      stripsOfSmall.add(strips[cell]);
      shared.set(cell, new TreeMap<>());
      wasSmall[cell] = true;
    }
    Neighbours.forEachSharedEdge(
        vertices,
        cells,
        cell -> wasSmall[cell],
        cell -> !wasSmall[cell] && stripsOfSmall.contains(strips[cell]),
        (cell, other, length) -> {
          if (strips[cell] == strips[other]) {
            addShared(cell, other, length);
            addShared(other, cell, length);
          }
        });
  }

  private void addShared(int cell, int other, double length) {
    if (wasSmall[cell]) {
      shared.get(cell).merge(other, length, Double::sum);
    }
  }

  private List<Integer> membersOf(int cell) {
    withMembers.set(cell);
    return members.computeIfAbsent(cell, key -> new ArrayList<>(List.of(key)));
  }

  private void joinOne(int cell, PriorityQueue<Integer> small) {
    Map<Integer, Double> neighbours = shared.get(cell);
    if (neighbours.isEmpty()) {
      kept++;
      return;
    }
    int into = -1;
    double longest = -1;
    for (Map.Entry<Integer, Double> neighbour : neighbours.entrySet()) {
      if (neighbour.getValue() > longest) {
        longest = neighbour.getValue();
        into = neighbour.getKey();
      }
    }
    joined++;
    joinedArea += areas[cell];
    boolean waiting = small.remove(into);
    areas[into] += areas[cell];
    membersOf(into).addAll(membersOf(cell));
    membersOf(cell).clear();
    for (Map.Entry<Integer, Double> neighbour : neighbours.entrySet()) {
      int other = neighbour.getKey();
      if (wasSmall[other]) {
        shared.get(other).remove(cell);
      }
      if (other != into) {
        addShared(other, into, neighbour.getValue());
        addShared(into, other, neighbour.getValue());
      }
    }
    if (waiting && isSmall(into)) {
      small.add(into);
    }
  }

  private List<Cell> rebuild() {
    List<Cell> result = new ArrayList<>(areas.length);
    for (int i = 0; i < areas.length; i++) {
      if (!withMembers.get(i)) {
        result.add(cells.get(i));
      } else if (!membersOf(i).isEmpty()) {
        List<int[][]> faces = new ArrayList<>();
        membersOf(i).forEach(member -> faces.add(cells.get(member).rings));
        for (int[][] rings : FaceJoiner.join(vertices, Rings.Place.OFFSET, faces)) {
          result.add(cells.get(i).withRings(rings));
        }
      }
    }
    return result;
  }
}
