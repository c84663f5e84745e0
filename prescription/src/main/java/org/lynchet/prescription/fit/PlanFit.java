package org.lynchet.prescription.fit;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.lynchet.prescription.fit.FitRequest.Implement;
import org.lynchet.prescription.fit.FitRequest.StripChoice;
import org.lynchet.prescription.fit.FitRequest.Tracks;
import org.lynchet.prescription.fit.FitRequest.Work;
import org.lynchet.prescription.machine.Combine;
import org.lynchet.prescription.machine.Machine;
import org.lynchet.prescription.machine.Planter;
import org.lynchet.prescription.machine.Sprayer;
import org.lynchet.prescription.machine.Toolbar;
import org.lynchet.prescription.machine.Wheels;
import org.lynchet.prescription.plan.Plan;
import org.lynchet.prescription.plan.PlannedStrip;
import org.lynchet.prescription.quantity.Length;
import org.lynchet.prescription.quantity.LengthUnit;

/** Asks which strip widths suit the machines of a plan. */
public final class PlanFit {
  private PlanFit() {}

  /** The request that a plan makes: its pattern, its machines, its choices. */
  public static FitRequest request(Plan plan) {
    List<StripChoice> strips = new ArrayList<>();
    int count = plan.strips().size();
    for (int i = 0; i < count; i++) {
      PlannedStrip strip = plan.strips().get(i);
      if (plan.machines().get(strip.plantedBy()) instanceof Planter planter) {
        strips.add(
            new StripChoice(
                strip.crop(),
                planter.name(),
                planter.rows(),
                planter.rowSpacing(),
                borderRows(plan, i),
                strip.passes()));
      }
    }
    List<Implement> machines =
        plan.machines().values().stream().flatMap(m -> implement(m).stream()).toList();
    return new FitRequest(strips, machines, plan.fit().maxStripWidth(), plan.fit().tolerance());
  }

  /** What a machine does on strips; nothing for a planter, which makes them. */
  private static Optional<Implement> implement(Machine machine) {
    if (machine instanceof Sprayer sprayer) {
      return implement(sprayer, Work.SPRAY, sprayer.section(), sprayer.crops(), sprayer.wheels());
    }
    if (machine instanceof Combine combine) {
      return implement(combine, Work.HARVEST, null, combine.crops(), combine.wheels());
    }
    if (machine instanceof Toolbar toolbar) {
      return implement(toolbar, Work.COVER, null, toolbar.crops(), toolbar.wheels());
    }
    return Optional.empty();
  }

  private static Optional<Implement> implement(
      Machine machine,
      Work work,
      @Nullable Length section,
      List<String> crops,
      @Nullable Wheels wheels) {
    Length width = new Length(machine.workingWidthMetres(), LengthUnit.METRE);
    Tracks tracks = wheels == null ? null : new Tracks(wheels.trackWidth(), wheels.tyreWidth());
    return Optional.of(new Implement(machine.name(), work, width, section, crops, tracks));
  }

  /**
   * Border rows of both sides, where the neighbour in the pattern is of another crop: as many as
   * the plan says or, where it says nothing of them, the outside row of each side.
   */
  private static int borderRows(Plan plan, int index) {
    PlannedStrip strip = plan.strips().get(index);
    int count = plan.strips().size();
    String left = plan.strips().get((index + count - 1) % count).crop();
    String right = plan.strips().get((index + 1) % count).crop();
    PlannedStrip.Border border = strip.border();
    boolean onLeft = border == null || border.sides().left();
    boolean onRight = border == null || border.sides().right();
    int sides =
        (onLeft && !left.equals(strip.crop()) ? 1 : 0)
            + (onRight && !right.equals(strip.crop()) ? 1 : 0);
    return sides * (border == null ? 1 : border.rows());
  }
}
