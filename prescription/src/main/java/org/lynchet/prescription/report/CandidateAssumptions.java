package org.lynchet.prescription.report;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.lynchet.prescription.defaults.Defaults;
import org.lynchet.prescription.plan.Plan;
import org.lynchet.prescription.quantity.Length;
import org.lynchet.prescription.response.BorderChoice;

/** Lists what candidates there are, and by what rule border rows are proposed. */
final class CandidateAssumptions {
  private final Plan plan;
  private final Defaults defaults = Defaults.get();
  private final List<Assumption> all = new ArrayList<>();

  private CandidateAssumptions(Plan plan) {
    this.plan = plan;
  }

  static List<Assumption> of(Plan plan) {
    CandidateAssumptions candidates = new CandidateAssumptions(plan);
    candidates.addWidths();
    candidates.addHeadings();
    candidates.addBorders();
    return candidates.all;
  }

  private void addWidths() {
    addLength(
        "widest strip",
        plan.fit().maxStripWidth(),
        plan.fit().toldMaxStripWidth(),
        "fit.max-strip-width-feet",
        "fit.max-strip-width");
    addLength(
        "how far a machine may be off, a pass",
        plan.fit().tolerance(),
        plan.fit().toldTolerance(),
        "fit.tolerance-inches",
        "fit.tolerance");
  }

  private void addLength(
      String what, Length length, @Nullable Length told, String byDefault, String key) {
    String value = plan.shownUnits().written(length);
    all.add(
        told == null
            ? new Assumption(what, value, defaults.source(byDefault), key)
            : Assumption.ofPlan(what, value, key));
  }

  private void addHeadings() {
    String further =
        plan.compare().headingsDegrees().stream()
            .map(NumberWords::plain)
            .collect(Collectors.joining(", "));
    String key = "compare.headings";
    all.add(
        new Assumption(
            "headings tried",
            "the plan's own, " + defaults.text("compare.headings-degrees") + " degrees",
            defaults.source("compare.headings-degrees"),
            key));
    if (!further.isEmpty()) {
      all.add(Assumption.ofPlan("further headings", further + " degrees", key));
    }
  }

  private void addBorders() {
    if (plan.strips().stream().allMatch(strip -> strip.border() == null)) {
      return;
    }
    Integer told = plan.compare().borderRows();
    all.add(
        told == null
            ? new Assumption(
                "border rows tried",
                "none to as many as the plan has",
                "a choice, no source",
                "compare.border-rows")
            : Assumption.ofPlan("border rows tried", "none to " + told, "compare.border-rows"));
    all.add(
        new Assumption(
            "border rows that lynchet light proposes",
            BorderChoice.RULE + ", " + BorderChoice.NO_GAIN,
            defaults.source("border.share-of-largest-gain"),
            "strips.border says what is planted"));
  }
}
