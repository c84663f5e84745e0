package org.lynchet.prescription.light;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.lynchet.prescription.machine.Planter;
import org.lynchet.prescription.plan.Plan;
import org.lynchet.prescription.plan.PlannedGuidance.AbLineIs;
import org.lynchet.prescription.plan.PlannedStrip;

/** Lays out the rows of one period of a plan's pattern, from its first strip at the AB line. */
final class PlanRows {
  private final Plan plan;
  private final PlanCanopies canopies;
  private final List<CanopyRow> rows = new ArrayList<>();
  private double edgeMetres;

  PlanRows(Plan plan, PlanCanopies canopies) {
    this.plan = plan;
    this.canopies = canopies;
  }

  /** The rows whose canopies are known. */
  List<CanopyRow> rows() {
    List<PlannedStrip> strips = plan.strips();
    for (int i = 0; i < strips.size(); i++) {
      if (plan.machines().get(strips.get(i).plantedBy()) instanceof Planter planter) {
        if (i == 0 && plan.guidance().abLineIs() == AbLineIs.PASS_CENTRE) {
          edgeMetres = -planter.rows() * planter.rowSpacing().metres() / 2;
        }
        add(i, planter);
      }
    }
    return rows;
  }

  private void add(int index, Planter planter) {
    PlannedStrip strip = plan.strips().get(index);
    int count = strip.passes() * planter.rows();
    double spacing = planter.rowSpacing().metres();
    for (int row = 1; row <= count; row++) {
      String product = product(index, row, count);
      Optional<CanopyTraits> canopy = canopies.find(strip.crop(), product);
      if (canopy.isPresent()) {
        double offset = edgeMetres + (row - 0.5) * spacing;
        rows.add(
            new CanopyRow(index + 1, strip.crop(), product, row, offset, spacing, canopy.get()));
      }
    }
    edgeMetres += count * spacing;
  }

  private String product(int index, int row, int count) {
    PlannedStrip strip = plan.strips().get(index);
    PlannedStrip.Border border = strip.border();
    if (border == null) {
      return strip.centre().product();
    }
    boolean left = border.sides().left() && row <= border.rows() && isOther(index, -1);
    boolean right = border.sides().right() && row > count - border.rows() && isOther(index, 1);
    return left || right ? border.seeding().product() : strip.centre().product();
  }

  /** Whether the strip to a side is of another crop. */
  private boolean isOther(int index, int step) {
    int count = plan.strips().size();
    String crop = plan.strips().get(Math.floorMod(index + step, count)).crop();
    return !crop.equals(plan.strips().get(index).crop());
  }
}
