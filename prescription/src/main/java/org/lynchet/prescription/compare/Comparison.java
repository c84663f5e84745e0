package org.lynchet.prescription.compare;

import java.io.Serializable;
import java.util.List;
import java.util.Optional;
import org.lynchet.prescription.budget.StripBudget;
import org.lynchet.prescription.plan.Plan;
import org.lynchet.prescription.quantity.AreaUnit;
import org.lynchet.prescription.quantity.LengthUnit;

/**
 * Candidates side by side.
 *
 * @param plan the plan
 * @param measure what they are ranked by
 * @param area the unit of area that is shown
 * @param length the unit of length that is shown
 * @param ranked outcomes, best first; of those alike the quicker, then the better fit
 * @param withoutCrop candidates that leave a crop of the pattern without a strip in the field; they
 *     are not ranked
 * @param separateBlocks candidates that give no crop more than one strip: what strips are held
 *     against, so they are not ranked
 * @param drivers what moves the measure, the strongest first
 * @param widths how many widths were compared
 * @param widthsThatFit how many fit the machines
 * @param plannedFits whether the plan's own widths fit
 */
public record Comparison(
    Plan plan,
    Measure measure,
    AreaUnit area,
    LengthUnit length,
    List<Outcome> ranked,
    List<Candidate> withoutCrop,
    List<Candidate> separateBlocks,
    List<Driver> drivers,
    int widths,
    int widthsThatFit,
    boolean plannedFits)
    implements Serializable {

  /** Copies the lists. */
  public Comparison {
    ranked = List.copyOf(ranked);
    withoutCrop = List.copyOf(withoutCrop);
    separateBlocks = List.copyOf(separateBlocks);
    drivers = List.copyOf(drivers);
  }

  /** The outcome of the plan as it stands, if it is ranked. */
  public Optional<Outcome> findPlanned() {
    return ranked.stream().filter(outcome -> outcome.candidate().planned()).findFirst();
  }

  /** What money is counted in; an empty text without a budget. */
  public String currency() {
    StripBudget budget = ranked.get(0).budget();
    return budget == null ? "" : budget.facts().currency();
  }

  /** The rank of an outcome, from 1. */
  public int rank(Outcome outcome) {
    return ranked.indexOf(outcome) + 1;
  }
}
