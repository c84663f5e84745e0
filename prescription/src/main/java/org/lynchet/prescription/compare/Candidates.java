package org.lynchet.prescription.compare;

import java.io.Serializable;
import java.util.ArrayList;
import java.util.List;
import org.lynchet.prescription.fit.FitRequest;
import org.lynchet.prescription.fit.PlanFit;
import org.lynchet.prescription.fit.StripFit;
import org.lynchet.prescription.fit.StripWidth;
import org.lynchet.prescription.plan.Plan;
import org.lynchet.prescription.plan.PlannedStrip;

/**
 * Lists the candidates of a plan: widths in the order of {@code fit}, for each the headings, for
 * each the border rows.
 *
 * @param list the candidates, at least one; where no width fits, those of the plan's own widths
 * @param widths how many widths are among them
 * @param widthsThatFit how many widths fit the machines
 * @param plannedFits whether the plan's own widths are among those that fit
 */
record Candidates(List<Candidate> list, int widths, int widthsThatFit, boolean plannedFits)
    implements Serializable {

  /** More would take longer than one waits; the widths that fit worst are left out then. */
  static final int MOST = 400;

  Candidates {
    list = List.copyOf(list);
  }

  /**
   * The candidates.
   *
   * @param headingDegrees heading of the plan's AB line
   */
  static Candidates of(Plan plan, double headingDegrees) {
    FitRequest request = PlanFit.request(plan);
    List<List<StripWidth>> fitting =
        StripFit.search(request).candidates().stream()
            .filter(candidate -> candidate.fits())
            .map(candidate -> candidate.strips())
            .toList();
    List<List<StripWidth>> tried =
        fitting.isEmpty() ? List.of(StripFit.planned(request).strips()) : fitting;
    List<Double> turns = Headings.turns(headingDegrees, plan.compare().headingsDegrees());
    BorderChoices borders = new BorderChoices(plan);
    List<Candidate> list = new ArrayList<>();
    int widths = 0;
    for (List<StripWidth> width : tried) {
      List<List<PlannedStrip>> choices = borders.on(passes(width));
      if (widths > 0 && list.size() + turns.size() * choices.size() > MOST) {
        break;
      }
      widths++;
      for (double turn : turns) {
        double heading = ((headingDegrees + turn) % 360 + 360) % 360;
        for (List<PlannedStrip> strips : choices) {
          boolean planned = turn == 0 && strips.equals(plan.strips());
          list.add(new Candidate(width, strips, turn, heading, planned));
        }
      }
    }
    return new Candidates(
        list, widths, fitting.size(), fitting.stream().anyMatch(width -> isPlanned(plan, width)));
  }

  private static List<Integer> passes(List<StripWidth> strips) {
    return strips.stream().map(StripWidth::passes).toList();
  }

  private static boolean isPlanned(Plan plan, List<StripWidth> strips) {
    return passes(strips).equals(plan.strips().stream().map(PlannedStrip::passes).toList());
  }
}
