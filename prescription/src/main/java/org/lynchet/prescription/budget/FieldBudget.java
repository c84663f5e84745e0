package org.lynchet.prescription.budget;

import java.io.Serializable;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.lynchet.prescription.driving.FieldTime;
import org.lynchet.prescription.fault.Faults;
import org.lynchet.prescription.fault.RejectedException;
import org.lynchet.prescription.fault.Warning;
import org.lynchet.prescription.plan.CropMarket;
import org.lynchet.prescription.plan.GrainDelivered;
import org.lynchet.prescription.plan.Plan;
import org.lynchet.prescription.summary.Summary;
import org.lynchet.prescription.zone.FieldLayout;

/**
 * The money of one field laid out.
 *
 * @param plan the plan
 * @param summary what the layout comes to
 * @param changes how yields change
 * @param times the times of the machines
 * @param strips strips against separate blocks
 * @param seed seed to order, by product
 * @param rates seeding rates that pay best by the plan's trials
 */
public record FieldBudget(
    Plan plan,
    Summary summary,
    YieldChanges changes,
    List<FieldTime> times,
    StripBudget strips,
    List<SeedCost> seed,
    List<RateAdvice> rates)
    implements Serializable {

  /** Copies the lists. */
  public FieldBudget {
    times = List.copyOf(times);
    seed = List.copyOf(seed);
    rates = List.copyOf(rates);
  }

  /**
   * The money of a layout, its yields forecast where the plan does not tell them.
   *
   * @throws RejectedException with every number that the plan lacks, and every fault of the
   *     forecast
   */
  public static FieldBudget of(FieldLayout layout, Summary summary) throws RejectedException {
    Faults faults = new Faults();
    Optional<YieldChanges> changes = Optional.empty();
    try {
      changes = Optional.of(YieldChanges.of(layout));
    } catch (RejectedException rejected) {
      faults.addAll(rejected);
    }
    FieldBudget budget = of(layout, summary, changes, faults);
    faults.throwIfAny();
    return budget;
  }

  /**
   * The money of a layout whose changes of yield are known.
   *
   * @param summary what the layout comes to
   * @param changes of every crop of the strips
   * @throws RejectedException with every number that the plan lacks
   */
  public static FieldBudget of(FieldLayout layout, Summary summary, YieldChanges changes)
      throws RejectedException {
    Faults faults = new Faults();
    FieldBudget budget = of(layout, summary, Optional.of(changes), faults);
    faults.throwIfAny();
    return budget;
  }

  private static FieldBudget of(
      FieldLayout layout, Summary summary, Optional<YieldChanges> known, Faults faults) {
    Plan plan = layout.plan();
    SeedPrices prices = new SeedPrices(plan, summary, faults);
    YieldChanges changes = known.orElse(new YieldChanges(Map.of(), List.of()));
    List<FieldTime> times = FieldTime.of(layout, summary.driving());
    BudgetFacts facts = new LayoutFacts(layout, prices, faults).facts(changes.byCrop(), times);
    return new FieldBudget(
        plan,
        summary,
        changes,
        times,
        StripBudget.of(facts),
        SeedCost.of(summary, plan.budget()),
        new TrialRates(plan, summary, prices, faults).rates());
  }

  /** A warning for each rate that pays best but was not tested. */
  public List<Warning> warnings() {
    return rates.stream()
        .filter(RateAdvice::isOutsideTrials)
        .map(
            rate ->
                new Warning(
                    Warning.Code.RATE_NOT_TESTED,
                    "the rate that pays best for "
                        + rate.product()
                        + " is outside of what the trials tested, "
                        + rate.testedWords()
                        + ": they say nothing about it; stay within, or test it"))
        .toList();
  }

  /** The yield of a crop as the plan says it, if not as it is sold. */
  public Optional<GrainDelivered> delivered(String crop) {
    return Optional.ofNullable(plan.budget().crops().get(crop)).map(CropMarket::delivered);
  }

  /** How often a machine drives in a season. */
  public int trips(FieldTime time) {
    return LayoutFacts.trips(time, plan);
  }
}
