package org.lynchet.prescription.plan;

import org.lynchet.formats.PlainDecimal;
import org.lynchet.prescription.machine.Planter;
import org.lynchet.prescription.machine.Planter.RateLimits;
import org.lynchet.prescription.quantity.SeedingRate;

/** Checks that a planter can set a rate. */
final class RateLimitCheck {
  /** Rates in different units are equal within this part of the rate: rounding, not a decision. */
  private static final double ROUNDING = 1e-12;

  private RateLimitCheck() {}

  /** Adds a fault if a rate other than 0 is outside the planter's limits. */
  static void check(SeedingRate rate, PlanNode node, Planter planter, PlanFaults faults) {
    RateLimits limits = planter.rateLimits();
    if (limits == null || rate.seeds() == 0) {
      return;
    }
    double seeds = rate.perSquareMetre();
    if (seeds < limits.min().perSquareMetre() * (1 - ROUNDING)
        || seeds > limits.max().perSquareMetre() * (1 + ROUNDING)) {
      faults.add(
          node.place(),
          node.kind()
              + inSeeds(rate, node)
              + " is outside the rate-limits of planter "
              + Shown.quoted(planter.name()),
          "0, or " + text(limits.min()) + " to " + text(limits.max()),
          "change the rate, or the planter's rate-limits");
    }
  }

  /** The seeds, where a stand is written. */
  private static String inSeeds(SeedingRate rate, PlanNode node) {
    return node.kind().contains("plants") ? ", " + text(rate) + "," : "";
  }

  private static String text(SeedingRate rate) {
    return PlainDecimal.of(rate.seeds()) + " " + rate.unit();
  }
}
