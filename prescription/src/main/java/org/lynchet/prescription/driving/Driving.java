package org.lynchet.prescription.driving;

import java.io.Serializable;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.lynchet.prescription.machine.Machine;
import org.lynchet.prescription.machine.Planter;
import org.lynchet.prescription.machine.Planter.Hoppers;
import org.lynchet.prescription.plan.Plan;
import org.lynchet.prescription.plan.PlannedHeadland;
import org.lynchet.prescription.plan.PlannedStrip;
import org.lynchet.prescription.zone.DrivenPass;
import org.lynchet.prescription.zone.FieldLayout;

/**
 * How a field is driven.
 *
 * @param planters by planter in the plan's order, then by crop from left to right; planters without
 *     a pass are left out
 * @param others sprayers and combines, likewise
 */
public record Driving(List<PlanterDriving> planters, List<FieldDriving> others)
    implements Serializable {

  /** Copies the lists. */
  public Driving {
    planters = List.copyOf(planters);
    others = List.copyOf(others);
  }

  /** Planters, then sprayers and combines. */
  public List<CropDriving> all() {
    return Stream.<CropDriving>concat(planters.stream(), others.stream()).toList();
  }

  /** Works out how a field laid out is driven. */
  public static Driving of(FieldLayout layout) {
    List<PlanterDriving> planters = new ArrayList<>();
    for (Machine machine : layout.plan().machines().values()) {
      if (machine instanceof Planter planter) {
        passes(layout, planter)
            .map(DrivenPass::crop)
            .distinct()
            .forEach(crop -> planters.add(of(layout, planter, crop)));
      }
    }
    return new Driving(planters, FieldMachines.of(layout));
  }

  private static PlanterDriving of(FieldLayout layout, Planter planter, String crop) {
    List<DrivenPass> driven =
        passes(layout, planter).filter(pass -> pass.crop().equals(crop)).toList();
    List<PlantedPass> passes = driven.stream().map(pass -> PlantedPass.of(pass, layout)).toList();
    List<DrivingPlan> plans = DrivingPlan.backAndForth(passes, planter.handling());
    DrivingPlan chosen = DrivingPlan.best(plans);
    List<DrivingPlan> others =
        plans.stream().filter(other -> !other.order().equals(chosen.order())).toList();
    Plan plan = layout.plan();
    return new PlanterDriving(
        planter,
        crop,
        driven.stream().mapToDouble(DrivenPass::rowLengthMetres).sum()
            * planter.rowSpacing().metres(),
        chosen,
        others,
        planter.hoppers() == Hoppers.CENTRAL
            ? null
            : Loading.of(
                chosen,
                withOneWay(others, passes, planter),
                strips(plan, planter, crop),
                headlandProduct(plan.headland(), planter, crop)));
  }

  /** Driving one way turns most, so it is never chosen; but it may be the only way to load. */
  private static List<DrivingPlan> withOneWay(
      List<DrivingPlan> others, List<PlantedPass> passes, Planter planter) {
    List<DrivingPlan> all = new ArrayList<>(others);
    if (passes.size() > 1) {
      all.add(DrivingPlan.of(PassOrder.ONE_WAY, passes, planter.handling()));
    }
    return all;
  }

  private static Stream<DrivenPass> passes(FieldLayout layout, Planter planter) {
    return layout.passes().stream().filter(pass -> pass.machine().equals(planter.name()));
  }

  private static List<PlannedStrip> strips(Plan plan, Planter planter, String crop) {
    return plan.strips().stream()
        .filter(strip -> strip.plantedBy().equals(planter.name()) && strip.crop().equals(crop))
        .toList();
  }

  private static @Nullable String headlandProduct(
      @Nullable PlannedHeadland headland, Planter planter, String crop) {
    return headland != null
            && headland.plantedBy().equals(planter.name())
            && headland.crop().equals(crop)
        ? headland.seeding().product()
        : null;
  }
}
