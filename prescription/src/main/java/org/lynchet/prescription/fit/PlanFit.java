package org.lynchet.prescription.fit;

import java.util.ArrayList;
import java.util.List;
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
                borderRows(plan, i)));
      }
    }
    List<Implement> machines = new ArrayList<>();
    for (Machine machine : plan.machines().values()) {
      if (machine instanceof Sprayer sprayer) {
        machines.add(
            new Implement(
                sprayer.name(),
                Work.SPRAY,
                sprayer.boom(),
                sprayer.section(),
                sprayer.crops(),
                tracks(sprayer.wheels())));
      } else if (machine instanceof Combine combine) {
        machines.add(
            new Implement(
                combine.name(),
                Work.COVER,
                combine.header(),
                null,
                combine.crops(),
                tracks(combine.wheels())));
      } else if (machine instanceof Toolbar toolbar) {
        machines.add(
            new Implement(
                toolbar.name(),
                Work.COVER,
                toolbar.width(),
                null,
                toolbar.crops(),
                tracks(toolbar.wheels())));
      }
    }
    return new FitRequest(strips, machines, plan.fit().maxStripWidth(), plan.fit().tolerance());
  }

  /** Border rows of both sides, where the neighbour in the pattern is of another crop. */
  private static int borderRows(Plan plan, int index) {
    PlannedStrip strip = plan.strips().get(index);
    PlannedStrip.Border border = strip.border();
    if (border == null) {
      return 0;
    }
    int count = plan.strips().size();
    String left = plan.strips().get((index + count - 1) % count).crop();
    String right = plan.strips().get((index + 1) % count).crop();
    int sides =
        (border.sides().left() && !left.equals(strip.crop()) ? 1 : 0)
            + (border.sides().right() && !right.equals(strip.crop()) ? 1 : 0);
    return sides * border.rows();
  }

  private static @Nullable Tracks tracks(@Nullable Wheels wheels) {
    return wheels == null ? null : new Tracks(wheels.trackWidth(), wheels.tyreWidth());
  }
}
