package org.lynchet.prescription.compare;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.function.UnaryOperator;
import org.jspecify.annotations.Nullable;
import org.lynchet.prescription.plan.Plan;
import org.lynchet.prescription.plan.PlannedStrip;
import org.lynchet.prescription.plan.PlannedStrip.Border;
import org.lynchet.prescription.plan.PlannedStrip.Sides;
import org.lynchet.prescription.zone.PlanPattern;

/**
 * Lists the border rows that are tried on given strips: none, those of the plan, and the plan's
 * border product on fewer or more rows, on both sides or one. A strip without border rows in the
 * plan gets none, and no side gets any that the plan leaves without.
 */
final class BorderChoices {
  private final Plan plan;
  private final int most;

  BorderChoices(Plan plan) {
    this.plan = plan;
    Integer asked = plan.compare().borderRows();
    this.most =
        asked != null
            ? asked
            : plan.strips().stream().mapToInt(BorderChoices::plannedRows).max().orElse(0);
  }

  private static int plannedRows(PlannedStrip strip) {
    Border border = strip.border();
    return border == null ? 0 : border.rows();
  }

  /** Every choice once, on strips of so many passes; none first. */
  List<List<PlannedStrip>> on(List<Integer> passes) {
    Set<List<PlannedStrip>> choices = new LinkedHashSet<>();
    choices.add(strips(passes, border -> null));
    choices.add(strips(passes, border -> border));
    for (int rows = 1; rows <= most; rows++) {
      for (Sides sides : Sides.values()) {
        int count = rows;
        choices.add(strips(passes, border -> with(border, count, sides)));
      }
    }
    return List.copyOf(choices);
  }

  private List<PlannedStrip> strips(List<Integer> passes, UnaryOperator<@Nullable Border> choice) {
    List<PlannedStrip> strips = new ArrayList<>();
    for (int i = 0; i < passes.size(); i++) {
      PlannedStrip planned = plan.strips().get(i);
      Border border = planned.border() == null ? null : choice.apply(planned.border());
      int rows = passes.get(i) * PlanPattern.planter(plan, planned.plantedBy()).rows();
      strips.add(
          new PlannedStrip(
              planned.crop(),
              planned.plantedBy(),
              passes.get(i),
              planned.centre(),
              border == null ? null : narrowed(border, rows)));
    }
    return strips;
  }

  private static @Nullable Border with(@Nullable Border planned, int rows, Sides sides) {
    if (planned == null || (planned.sides() != Sides.BOTH && sides != planned.sides())) {
      return null;
    }
    return new Border(rows, sides, planned.seeding());
  }

  /** Not more rows than the strip has. */
  private static @Nullable Border narrowed(Border border, int rows) {
    int most = border.sides() == Sides.BOTH ? rows / 2 : rows;
    return most == 0
        ? null
        : new Border(Math.min(border.rows(), most), border.sides(), border.seeding());
  }
}
