package org.lynchet.prescription.budget;

import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.lynchet.prescription.fault.Faults;
import org.lynchet.prescription.plan.Plan;
import org.lynchet.prescription.summary.SeedOrder;
import org.lynchet.prescription.summary.Summary;

/** Tells what seeds cost, and adds a fault once for each number that the plan lacks. */
final class SeedPrices {
  private final Plan plan;
  private final Map<String, SeedOrder> orders;
  private final Faults faults;
  private final Set<String> told = new TreeSet<>();

  SeedPrices(Plan plan, Summary summary, Faults faults) {
    this.plan = plan;
    this.orders =
        summary.seed().stream().collect(Collectors.toMap(SeedOrder::product, order -> order));
    this.faults = faults;
  }

  /** The cost of seeds; 0 for none, and for those whose price is missing. */
  double cost(String product, double seeds) {
    return seeds == 0 ? 0 : seeds * perSeed(product);
  }

  /** The cost of one seed, or 0 if the plan lacks a number. */
  double perSeed(String product) {
    Double price = plan.budget().seedPrices().get(product);
    SeedOrder order = orders.get(product);
    Integer perUnit = order == null ? null : order.seedsPerUnit();
    if (price != null && perUnit != null) {
      return price / perUnit;
    }
    if (told.add(product)) {
      if (price == null) {
        faults.add(
            "nothing is known of what seed of " + product + " costs",
            plan.place("budget.seed"),
            "the price of a unit of each product whose seed the budget weighs",
            "add budget.seed." + product + ": 280 /unit, with your price");
      }
      if (perUnit == null) {
        faults.add(
            "nothing is known of how many seeds a unit of " + product + " holds",
            plan.place("products." + product),
            "seeds-per-unit of each product whose seed the budget weighs",
            "add products." + product + ".seeds-per-unit");
      }
    }
    return 0;
  }
}
