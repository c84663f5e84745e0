package org.lynchet.prescription.driving;

import java.io.Serializable;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.lynchet.prescription.driving.LoadingChart.Serves;
import org.lynchet.prescription.plan.PlannedStrip;

/**
 * What goes into the hoppers of a planter with a hopper on each row unit.
 *
 * @param chosen the order chosen, and the chart for it
 * @param others the other orders, and the charts for them
 * @param advice what would make a chart possible where there is none for the order chosen
 * @param headlandProduct what the planter's headland passes get from every row unit, or null if it
 *     plants none with this crop
 */
public record Loading(
    Charted chosen, List<Charted> others, List<String> advice, @Nullable String headlandProduct)
    implements Serializable {

  /** Copies the lists. */
  public Loading {
    others = List.copyOf(others);
    advice = List.copyOf(advice);
  }

  /** A way of driving, and the chart for it. */
  public record Charted(DrivingPlan plan, LoadingChart chart) implements Serializable {

    static Charted of(DrivingPlan plan) {
      return new Charted(plan, LoadingChart.of(plan.trips()));
    }

    /** Whether the chart can be loaded by. */
    public boolean isUsable() {
      return chart.serves() != Serves.TOO_FEW_PASSES;
    }
  }

  /**
   * Charts all orders.
   *
   * @param strips the strips of the pattern that the planter plants with this crop
   */
  static Loading of(
      DrivingPlan chosen,
      List<DrivingPlan> others,
      List<PlannedStrip> strips,
      @Nullable String headlandProduct) {
    Charted charted = Charted.of(chosen);
    List<Charted> otherCharts = others.stream().map(Charted::of).toList();
    int rows = charted.chart().products().size();
    List<String> advice =
        charted.isUsable()
            ? List.of()
            : new LoadingAdvice(chosen.order(), rows, strips).of(otherCharts);
    return new Loading(charted, otherCharts, advice, headlandProduct);
  }

  /** The chart to load by: that of the order chosen or, if there is none, of another order. */
  public Optional<Charted> findUsable() {
    return chosen.isUsable() ? Optional.of(chosen) : findFewestExceptions(others);
  }

  /** Of the orders that a chart serves, the first with the fewest excepted passes. */
  static Optional<Charted> findFewestExceptions(List<Charted> orders) {
    return orders.stream()
        .filter(Charted::isUsable)
        .min(Comparator.comparingInt(one -> one.chart().exceptedPasses()));
  }

  /** The row units whose product in a chart is not the headland's. */
  public static List<Integer> unitsUnlike(@Nullable String product, LoadingChart chart) {
    List<Integer> units = new ArrayList<>();
    for (int unit = 1; product != null && unit <= chart.products().size(); unit++) {
      if (!product.equals(chart.products().get(unit - 1))) {
        units.add(unit);
      }
    }
    return units;
  }
}
