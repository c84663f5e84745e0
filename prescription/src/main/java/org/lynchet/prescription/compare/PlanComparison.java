package org.lynchet.prescription.compare;

import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.lynchet.prescription.budget.FieldBudget;
import org.lynchet.prescription.budget.StripBudget;
import org.lynchet.prescription.budget.YieldChanges;
import org.lynchet.prescription.fault.Faults;
import org.lynchet.prescription.fault.RejectedException;
import org.lynchet.prescription.light.LightMemory;
import org.lynchet.prescription.light.PlanLight;
import org.lynchet.prescription.plan.Plan;
import org.lynchet.prescription.plan.PlannedBudget;
import org.lynchet.prescription.quantity.AreaUnit;
import org.lynchet.prescription.quantity.LengthUnit;
import org.lynchet.prescription.quantity.Spread;
import org.lynchet.prescription.response.FieldForecast;
import org.lynchet.prescription.response.Responses;
import org.lynchet.prescription.response.YieldForecast.CropYield;
import org.lynchet.prescription.summary.Summary;
import org.lynchet.prescription.zone.FieldData;
import org.lynchet.prescription.zone.FieldLayout;

/** Compares the candidates of a plan on its field. */
public final class PlanComparison {
  private final Plan plan;
  private final FieldData field;
  private final Responses responses;
  private final Candidates candidates;

  private PlanComparison(Plan plan, FieldData field, Responses responses, Candidates candidates) {
    this.plan = plan;
    this.field = field;
    this.responses = responses;
    this.candidates = candidates;
  }

  /**
   * Compares on all processors.
   *
   * @throws RejectedException with every fault of what a forecast goes by, or if plan and field do
   *     not go together
   */
  public static Comparison of(Plan plan, FieldData field, Progress progress)
      throws RejectedException {
    return of(plan, field, Runtime.getRuntime().availableProcessors(), progress);
  }

  static Comparison of(Plan plan, FieldData field, int processors, Progress progress)
      throws RejectedException {
    Faults faults = new Faults();
    double heading = 0;
    try {
      heading = PlanLight.request(plan).headingDegrees();
    } catch (RejectedException rejected) {
      faults.addAll(rejected);
    }
    Responses responses = new Responses(Map.of());
    try {
      responses = Responses.of(plan);
    } catch (RejectedException rejected) {
      faults.addAll(rejected);
    }
    faults.throwIfAny();
    Candidates candidates = Candidates.of(plan, heading);
    return new PlanComparison(plan, field, responses, candidates).compare(processors, progress);
  }

  private Comparison compare(int processors, Progress progress) throws RejectedException {
    LightMemory memory = new LightMemory();
    int steps = candidates.list().size();
    try (ParallelSteps parallel = new ParallelSteps(processors, steps, progress)) {
      return rank(parallel.each(candidates.list(), candidate -> outcome(candidate, memory)));
    }
  }

  private Outcome outcome(Candidate candidate, LightMemory memory) throws RejectedException {
    FieldLayout layout = layout(plan, field, candidate);
    Summary summary = Summary.of(layout);
    FieldFacts facts = FieldFacts.of(layout, summary);
    FieldForecast light = FieldForecast.of(layout, responses, memory);
    return new Outcome(candidate, light, facts, budget(layout, summary, light));
  }

  /** The money, with the change of yield that is forecast for these strips. */
  private @Nullable StripBudget budget(FieldLayout layout, Summary summary, FieldForecast light)
      throws RejectedException {
    if (plan.budget().equals(PlannedBudget.NONE)) {
      return null;
    }
    Map<String, Spread> changes = new LinkedHashMap<>();
    for (CropYield crop : light.crops()) {
      changes.put(crop.crop(), crop.relativeYield().plus(-1));
    }
    return FieldBudget.of(layout, summary, new YieldChanges(changes, List.copyOf(changes.keySet())))
        .strips();
  }

  /**
   * The field laid out as a candidate has it.
   *
   * @throws RejectedException if plan and field do not go together
   */
  public static FieldLayout layout(Plan plan, FieldData field, Candidate candidate)
      throws RejectedException {
    double turn = candidate.turnDegrees();
    return FieldLayout.of(
        candidate.of(plan),
        turn == 0 ? field : field.withFrame(field.frame().turned(Math.toRadians(turn))));
  }

  private void refuseNone(List<Outcome> strips) throws RejectedException {
    if (strips.isEmpty()) {
      Faults faults = new Faults();
      faults.add(
          "the field is too narrow for strips: on no width and heading has every crop a strip in it,"
              + " and one of them a second",
          plan.file() + " strips",
          "strips that are narrower than a third of the field inside its headland",
          "plant blocks, or plan fewer headland passes or narrower machines");
      faults.throwIfAny();
    }
  }

  private Comparison rank(List<Outcome> outcomes) throws RejectedException {
    List<Outcome> every = outcomes.stream().filter(one -> one.facts().hasEveryCrop()).toList();
    List<Outcome> strips = every.stream().filter(one -> !one.light().isSeparateBlocks()).toList();
    refuseNone(strips);
    AreaUnit area = strips.get(0).facts().area();
    LengthUnit length = area == AreaUnit.ACRE ? LengthUnit.FOOT : LengthUnit.METRE;
    Measure measure =
        strips.stream().allMatch(one -> one.budget() != null) ? Measure.NET : Measure.LAND;
    Comparator<Outcome> best =
        Comparator.comparingDouble((Outcome one) -> -measure.rounded(one, area))
            .thenComparingDouble(one -> Math.rint(one.facts().hours() * 100));
    return new Comparison(
        plan,
        measure,
        area,
        length,
        strips.stream().sorted(best).toList(),
        outcomes.stream()
            .filter(one -> !one.facts().hasEveryCrop())
            .map(Outcome::candidate)
            .toList(),
        every.stream()
            .filter(one -> one.light().isSeparateBlocks())
            .map(Outcome::candidate)
            .toList(),
        Driver.of(strips, measure, area, length),
        candidates.widths(),
        candidates.widthsThatFit(),
        candidates.plannedFits());
  }
}
