package org.lynchet.prescription.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.lynchet.prescription.defaults.Defaults;
import org.lynchet.prescription.defaults.Defaults.Sourced;
import org.lynchet.prescription.plan.Plan;

/** Lists the model behind light, yield and time: everything below {@code model} of the defaults. */
final class ModelAssumptions {
  private static final String FOLDER = "model.";

  /** Only where the plan has border rows. */
  private static final String SHORT = "short-stature-yield";

  /** How a key of a length ends. */
  private static final String METRES = "-metres";

  /** By the last name of a key, what a grower can do; the rest is fixed. */
  private static final Map<String, String> CHANGES =
      Map.of(
          SHORT,
          "budget.crops.NAME.yield-change, for lynchet budget",
          "filling-and-unloading",
          "budget.extra-costs adds what it costs");

  private ModelAssumptions() {}

  static List<Assumption> of(Plan plan) {
    boolean borders = plan.strips().stream().anyMatch(strip -> strip.border() != null);
    List<Assumption> all = new ArrayList<>();
    for (Sourced value : Defaults.get().all()) {
      String name = value.key().replaceFirst("^.*\\.", "");
      if (value.key().startsWith(FOLDER) && (borders || !name.equals(SHORT))) {
        boolean isLength = name.endsWith(METRES);
        all.add(
            new Assumption(
                name.replace(METRES, "")
                    .replace('-', ' ')
                    .replace("short stature", "short-stature"),
                isLength ? value.value() + " m" : value.value(),
                value.source(),
                CHANGES.getOrDefault(name, Assumption.FIXED)));
      }
    }
    return all;
  }
}
