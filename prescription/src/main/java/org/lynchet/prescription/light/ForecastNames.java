package org.lynchet.prescription.light;

import java.util.LinkedHashSet;
import java.util.Set;
import org.lynchet.prescription.fault.Faults;
import org.lynchet.prescription.plan.Plan;
import org.lynchet.prescription.plan.PlannedHeadland;
import org.lynchet.prescription.plan.PlannedStrip;

/** Checks that a forecast's canopies and responses are of something that the plan names. */
public final class ForecastNames {
  private final Plan plan;
  private final Faults faults;
  private final Set<String> crops = new LinkedHashSet<>();
  private final Set<String> products = new LinkedHashSet<>();

  private ForecastNames(Plan plan, Faults faults) {
    this.plan = plan;
    this.faults = faults;
    for (PlannedStrip strip : plan.strips()) {
      crops.add(strip.crop());
      products.add(strip.centre().product());
      PlannedStrip.Border border = strip.border();
      if (border != null) {
        products.add(border.seeding().product());
      }
    }
    PlannedHeadland headland = plan.headland();
    if (headland != null) {
      crops.add(headland.crop());
      products.add(headland.seeding().product());
    }
    products.addAll(plan.products().keySet());
  }

  /** Adds a fault for each name that the plan does not have. */
  public static void check(Plan plan, Faults faults) {
    new ForecastNames(plan, faults).check();
  }

  private void check() {
    Set<String> both = new LinkedHashSet<>(crops);
    both.addAll(products);
    check("canopies", "crop or product", plan.forecast().canopies().keySet(), both);
    check("response", "crop", plan.forecast().responses().keySet(), crops);
  }

  private void check(String section, String what, Set<String> named, Set<String> known) {
    for (String name : named) {
      if (!known.contains(name)) {
        faults.add(
            "the plan has no " + what + " '" + name + "'",
            plan.place("forecast." + section + "." + name),
            "a " + what + " of the plan: " + String.join(", ", known),
            "correct or remove it");
      }
    }
  }
}
