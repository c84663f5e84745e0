package org.lynchet.prescription.zone;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.lynchet.geometry.coverage.Headland;
import org.lynchet.geometry.coverage.HeadlandEnds;
import org.lynchet.geometry.guidance.Guidance;
import org.lynchet.geometry.strip.PatternStrip;
import org.lynchet.geometry.strip.StripPattern;
import org.lynchet.prescription.machine.Planter;
import org.lynchet.prescription.plan.Plan;
import org.lynchet.prescription.plan.PlannedGuidance.AbLineIs;
import org.lynchet.prescription.plan.PlannedHeadland;
import org.lynchet.prescription.plan.PlannedStrip;

/** Turns the strips and the headland of a plan into geometry. */
public final class PlanPattern {
  private PlanPattern() {}

  /** The pattern of the plan's strips, in their order, placed on the guidance line. */
  public static StripPattern of(Plan plan) {
    List<PatternStrip> strips = new ArrayList<>();
    for (PlannedStrip strip : plan.strips()) {
      Planter planter = planter(plan, strip.plantedBy());
      PlannedStrip.Border border = strip.border();
      strips.add(
          new PatternStrip(
              strip.crop(),
              strip.passes(),
              planter.rows(),
              planter.rowSpacing().metres(),
              border != null && border.sides().left() ? border.rows() : 0,
              border != null && border.sides().right() ? border.rows() : 0));
    }
    return plan.guidance().abLineIs() == AbLineIs.PASS_CENTRE
        ? StripPattern.fromPassCentre(strips)
        : StripPattern.fromStripEdge(strips);
  }

  /**
   * The headland of the plan, or null for none.
   *
   * @param guidance the line that rows run along
   */
  public static @Nullable Headland headland(Plan plan, Guidance guidance) {
    PlannedHeadland headland = plan.headland();
    if (headland == null) {
      return null;
    }
    Double endAngle = headland.endAngleDegrees();
    return new Headland(
        headland.passes() * planter(plan, headland.plantedBy()).workingWidthMetres(),
        headland.aroundHoles(),
        endAngle == null ? null : new HeadlandEnds(endAngle, guidance));
  }

  /** The planter of that name; a plan that was read has it. */
  public static Planter planter(Plan plan, String name) {
    if (plan.machines().get(name) instanceof Planter planter) {
      return planter;
    }
    throw new IllegalArgumentException("no planter " + name);
  }
}
