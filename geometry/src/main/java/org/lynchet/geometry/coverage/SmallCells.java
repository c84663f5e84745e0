package org.lynchet.geometry.coverage;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.PriorityQueue;
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
  private final ToIntFunction<Cell> stripOf;

  /** Shared lengths by cell; cells that were joined to another are gone from it. */
  private final List<Map<Integer, Double>> shared = new ArrayList<>();

  private final double[] areas;
  private final List<List<Integer>> members = new ArrayList<>();
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
    this.stripOf = stripOf;
    this.areas = cells.stream().mapToDouble(c -> Rings.area(vertices, c.rings)).toArray();
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
    findNeighbours();
    while (!small.isEmpty()) {
      joinOne(small.remove(), small);
    }
    return new SmallCellsJoined(new Coverage(vertices, rebuild()), joined, joinedArea, kept);
  }

  private boolean isSmall(int cell) {
    return areas[cell] < minimumOf.applyAsDouble(cells.get(cell));
  }

  private void findNeighbours() {
    for (int i = 0; i < areas.length; i++) {
      shared.add(new TreeMap<>());
      members.add(new ArrayList<>(List.of(i)));
    }
    Neighbours.forEachSharedEdge(
        vertices,
        cells,
        (cell, other, length) -> {
          if (stripOf.applyAsInt(cells.get(cell)) == stripOf.applyAsInt(cells.get(other))) {
            shared.get(cell).merge(other, length, Double::sum);
            shared.get(other).merge(cell, length, Double::sum);
          }
        });
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
    members.get(into).addAll(members.get(cell));
    members.get(cell).clear();
    for (Map.Entry<Integer, Double> neighbour : neighbours.entrySet()) {
      Map<Integer, Double> theirs = shared.get(neighbour.getKey());
      theirs.remove(cell);
      if (neighbour.getKey() != into) {
        theirs.merge(into, neighbour.getValue(), Double::sum);
        shared.get(into).merge(neighbour.getKey(), neighbour.getValue(), Double::sum);
      }
    }
    if (waiting && isSmall(into)) {
      small.add(into);
    }
  }

  private List<Cell> rebuild() {
    List<Cell> result = new ArrayList<>();
    for (int i = 0; i < areas.length; i++) {
      if (members.get(i).size() == 1) {
        result.add(cells.get(i));
      } else if (!members.get(i).isEmpty()) {
        List<int[][]> faces = new ArrayList<>();
        members.get(i).forEach(member -> faces.add(cells.get(member).rings));
        for (int[][] rings : FaceJoiner.join(vertices, Rings.Place.OFFSET, faces)) {
          result.add(cells.get(i).withRings(rings));
        }
      }
    }
    return result;
  }
}
