package org.lynchet.prescription.budget;

import java.io.Serializable;
import java.math.BigDecimal;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.lynchet.prescription.plan.PlannedBudget;
import org.lynchet.prescription.summary.SeedOrder;
import org.lynchet.prescription.summary.Summary;
import org.lynchet.prescription.summary.ZoneTotal;
import org.lynchet.prescription.zone.Zone;

/**
 * Seed of one product to order, told apart by where it goes, and what it costs.
 *
 * @param order the order, in whole units
 * @param borderSeeds seeds for border rows
 * @param centreSeeds seeds for centre rows
 * @param headlandSeeds seeds for the headland
 * @param cost of the whole units, or null if price or units are not known
 */
public record SeedCost(
    SeedOrder order,
    double borderSeeds,
    double centreSeeds,
    double headlandSeeds,
    @Nullable BigDecimal cost)
    implements Serializable {

  static List<SeedCost> of(Summary summary, PlannedBudget budget) {
    return summary.seed().stream().map(order -> of(order, summary.zones(), budget)).toList();
  }

  private static SeedCost of(SeedOrder order, List<ZoneTotal> zones, PlannedBudget budget) {
    Double price = budget.seedPrices().get(order.product());
    Long units = order.units();
    return new SeedCost(
        order,
        seeds(order, zones, Zone.Kind.BORDER),
        seeds(order, zones, Zone.Kind.CENTRE),
        seeds(order, zones, Zone.Kind.HEADLAND),
        price == null || units == null
            ? null
            : BudgetLine.of(order.product(), price * units).amount());
  }

  private static double seeds(SeedOrder order, List<ZoneTotal> zones, Zone.Kind kind) {
    return zones.stream()
        .filter(zone -> zone.product().equals(order.product()) && zone.kind() == kind)
        .mapToDouble(ZoneTotal::seeds)
        .sum();
  }
}
