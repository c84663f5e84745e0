package org.lynchet.prescription.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.lynchet.prescription.defaults.Defaults;
import org.lynchet.prescription.plan.Plan;
import org.lynchet.prescription.plan.Product;
import org.lynchet.prescription.summary.SeedOrder;

/** Lists how many seeds a unit has, and how many of them become plants, where that is known. */
final class SeedAssumptions {
  private SeedAssumptions() {}

  static List<Assumption> of(Plan plan, List<SeedOrder> seed) {
    List<Assumption> parts = new ArrayList<>();
    for (SeedOrder order : seed) {
      Integer seeds = order.seedsPerUnit();
      if (seeds != null) {
        Product product = plan.products().get(order.product());
        boolean told = product != null && product.seedsPerUnit() != null;
        parts.add(
            new Assumption(
                order.product(),
                String.format(Locale.ROOT, "%,d", seeds),
                told ? Assumption.PLAN : Defaults.get().source("seeds-per-unit." + order.crop()),
                ""));
      }
    }
    List<Assumption> all = new ArrayList<>();
    plan.products().values().forEach(product -> stand(product).ifPresent(all::add));
    all.addAll(Assumption.joined(parts, "seeds in a unit, ", "products.NAME.seeds-per-unit"));
    return all;
  }

  private static Optional<Assumption> stand(Product product) {
    return product
        .standingShare()
        .map(
            share ->
                Assumption.ofPlan(
                    product.name() + ", seeds whose plants stand, %",
                    String.format(Locale.ROOT, "%.1f", 100 * share),
                    "products." + product.name() + ".germination, field-survival"));
  }
}
