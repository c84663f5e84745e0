package org.lynchet.prescription.driving;

import java.io.Serializable;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * Which product goes into the hopper of each row unit, for passes driven in one way.
 *
 * <p>A unit is loaded with the product that it should plant over the greatest length of row; with
 * as much of two, with the one that it meets first. Rows outside the field ask for nothing.
 *
 * @param products the product of each row unit, 1..n
 * @param exceptions where a row unit would plant another product than the plan's, in the order of
 *     driving
 * @param passes how many passes are driven
 */
public record LoadingChart(List<String> products, List<Misplanted> exceptions, int passes)
    implements Serializable {
  /** One excepted pass in so many is few: edge strips, not the way the strips are made. */
  private static final int FEW = 4;

  /** Copies the lists. */
  public LoadingChart {
    products = List.copyOf(products);
    exceptions = List.copyOf(exceptions);
  }

  /**
   * Rows of one pass that the chart would plant with another product than the plan's.
   *
   * @param pass number of the pass
   * @param strip number of its strip
   * @param units the row units
   * @param wanted the plan's product
   * @param loaded the chart's
   * @param rowMetres the length of the rows together
   */
  public record Misplanted(
      int pass, int strip, List<Integer> units, String wanted, String loaded, double rowMetres)
      implements Serializable {

    /** Copies the list. */
    public Misplanted {
      units = List.copyOf(units);
    }
  }

  /** How far a chart serves the field. */
  public enum Serves {
    /** Every row gets the plan's product. */
    EVERY_PASS,
    /** A quarter of the passes at most are planted differently somewhere. */
    MOST_PASSES,
    /** More are: there is no loading for this way of driving. */
    TOO_FEW_PASSES
  }

  /** The chart of trips with the same planter, at least one. */
  static LoadingChart of(List<Trip> trips) {
    int units = trips.get(0).pass().products().size();
    List<String> products = new ArrayList<>();
    for (int unit = 1; unit <= units; unit++) {
      products.add(product(unit, trips));
    }
    List<Misplanted> exceptions = new ArrayList<>();
    trips.forEach(trip -> addExceptions(trip, products, exceptions));
    return new LoadingChart(products, exceptions, trips.size());
  }

  private static String product(int unit, List<Trip> trips) {
    Map<String, Double> metres = new LinkedHashMap<>();
    trips.forEach(trip -> metres.merge(trip.productOf(unit), trip.metresOf(unit), Double::sum));
    String most = trips.get(0).productOf(unit);
    for (Map.Entry<String, Double> one : metres.entrySet()) {
      if (one.getValue() > metres.getOrDefault(most, 0.0)) {
        most = one.getKey();
      }
    }
    return most;
  }

  private static void addExceptions(Trip trip, List<String> products, List<Misplanted> exceptions) {
    Map<List<String>, List<Integer>> found = new LinkedHashMap<>();
    for (int unit = 1; unit <= products.size(); unit++) {
      String wanted = trip.productOf(unit);
      String loaded = products.get(unit - 1);
      if (!wanted.equals(loaded) && trip.metresOf(unit) > 0) {
        found.computeIfAbsent(List.of(wanted, loaded), key -> new ArrayList<>()).add(unit);
      }
    }
    found.forEach(
        (pair, units) ->
            exceptions.add(
                new Misplanted(
                    trip.pass().number(),
                    trip.pass().strip(),
                    units,
                    pair.get(0),
                    pair.get(1),
                    units.stream().mapToDouble(trip::metresOf).sum())));
  }

  /** How many passes are planted differently somewhere. */
  public int exceptedPasses() {
    return (int) exceptions.stream().mapToInt(Misplanted::pass).distinct().count();
  }

  /** How far it serves the field. */
  public Serves serves() {
    int excepted = exceptedPasses();
    if (excepted == 0) {
      return Serves.EVERY_PASS;
    }
    return excepted * FEW <= passes ? Serves.MOST_PASSES : Serves.TOO_FEW_PASSES;
  }
}
