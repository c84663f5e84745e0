package org.lynchet.prescription.compare;

import java.util.ArrayList;
import java.util.List;
import org.lynchet.prescription.fit.FitRequest;
import org.lynchet.prescription.fit.PlanFit;
import org.lynchet.prescription.fit.StripFit;
import org.lynchet.prescription.plan.PlacementChoices;
import org.lynchet.prescription.plan.Plan;
import org.lynchet.prescription.plan.PlannedStrip;
import org.lynchet.prescription.quantity.ShownUnits;

/** Says what was compared, and what was left out. */
public final class Notes {
  private Notes() {}

  /** The notes, a sentence or two each. */
  public static List<String> of(Comparison comparison) {
    List<String> notes = new ArrayList<>();
    if (comparison.measure() == Measure.LAND) {
      notes.add(
          "The plan has no budget, so candidates are ranked by the land equivalent ratio: the land"
              + " that separate blocks need for the same harvest. Prices, seed and time are not in"
              + " it; add the section budget to rank by money.");
    }
    if (comparison.plan().budget().crops().values().stream()
        .anyMatch(market -> market.yieldChange() != null)) {
      notes.add(
          "The plan's own yield-change is of its own strips; candidates differ, so that all of them"
              + " are compared by the forecast instead.");
    }
    if (comparison.widths() < comparison.widthsThatFit()) {
      notes.add(
          "The "
              + comparison.widths()
              + " best of "
              + comparison.widthsThatFit()
              + " widths that fit were compared, in the order of lynchet fit; fewer headings or"
              + " border rows leave room for more.");
    }
    if (comparison.widthsThatFit() == 0) {
      notes.add(nothingFits(comparison.plan()));
    } else if (!comparison.plannedFits()) {
      notes.add(
          "The plan's own widths do not fit the machines and are not among the candidates; see"
              + " lynchet fit.");
    }
    if (comparison.plan().strips().stream().map(PlannedStrip::border).allMatch(b -> b == null)) {
      notes.add(
          "The plan names no border product, so no border rows were compared; lynchet light tells"
              + " what a short-stature product would change.");
    }
    if (!comparison.withoutCrop().isEmpty()) {
      notes.add(
          comparison.withoutCrop().size() == 1
              ? "1 candidate leaves a crop without a strip in the field and is not ranked."
              : comparison.withoutCrop().size()
                  + " candidates leave a crop without a strip in the field and are not ranked.");
    }
    if (!comparison.separateBlocks().isEmpty()) {
      notes.add(
          comparison.separateBlocks().size()
              + " candidates give no crop a second strip in the field: they are separate blocks, and"
              + " are not ranked.");
    }
    if (comparison.plan().guidance().placement().kind() == PlacementChoices.Kind.BEST) {
      notes.add("The best placement is not looked for here: plan the candidate that you choose.");
    }
    notes.add(
        "Yields are of the strips that the field has. Beyond its sides lies open ground, or the rows"
            + " of a headland all around. Separate blocks stand side by side, one for each crop, in"
            + " the pattern's order and with the same rows beside them.");
    notes.add(
        "Hours are driving over the strips, in the row and turning, of all machines; filling and"
            + " waiting are not in them. On every heading the pattern begins at A.");
    return notes;
  }

  private static String nothingFits(Plan plan) {
    FitRequest request = PlanFit.request(plan);
    ShownUnits units = plan.shownUnits();
    return "No strips up to "
        + units.written(request.maxStripWidth())
        + " (fit.max-strip-width) are whole passes of every machine to "
        + units.written(request.tolerance())
        + " (fit.tolerance), so that the plan's own widths are compared as they stand: "
        + String.join("; ", StripFit.planned(request).reasons())
        + ". Change passes, machines or these keys; lynchet fit shows the nearest miss.";
  }
}
