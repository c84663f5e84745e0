package org.lynchet.prescription.report;

import java.util.ArrayList;
import java.util.List;
import org.lynchet.prescription.light.LightRequest;
import org.lynchet.prescription.plan.Plan;
import org.lynchet.prescription.summary.SeedOrder;

/** Lists what a comparison of a plan goes by. */
final class Assumptions {
  private Assumptions() {}

  /**
   * All of them: candidates, season, responses, canopies, the model, machines, money, seed.
   *
   * @param light as it was asked for, with what the place makes of defaults
   * @param seed to order
   */
  static List<Assumption> of(Plan plan, LightRequest light, List<SeedOrder> seed) {
    List<Assumption> all = new ArrayList<>();
    all.addAll(CandidateAssumptions.of(plan));
    all.addAll(SeasonAssumptions.of(plan, light));
    all.addAll(CanopyAssumptions.of(plan, light));
    all.addAll(ModelAssumptions.of(plan));
    all.addAll(MachineAssumptions.of(plan));
    all.addAll(MoneyAssumptions.of(plan));
    all.addAll(SeedAssumptions.of(plan, seed));
    return all;
  }
}
