package org.lynchet.prescription.light;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.lynchet.prescription.defaults.Defaults;
import org.lynchet.prescription.fault.Faults;
import org.lynchet.prescription.plan.Plan;
import org.lynchet.prescription.plan.PlannedGuidance.Position;
import org.lynchet.prescription.quantity.Time;

/** Holds what goes for all rows of a plan: their place, heading, canopies and clearness. */
final class PlanSeason {
  private static final int MINUTES = 60;

  private final Plan plan;
  private final Position place;
  private final double headingDegrees;
  private final PlanCanopies canopies;

  /**
   * A season, with a fault for a latitude with polar days.
   *
   * @param place of the AB line
   * @param headingDegrees of the AB line, clockwise from true north
   */
  PlanSeason(Plan plan, Position place, double headingDegrees, Faults faults) {
    this.plan = plan;
    this.place = place;
    this.headingDegrees = headingDegrees;
    this.canopies = new PlanCanopies(plan, Defaults.get(), isSouth(), faults);
    if (Math.abs(place.latitudeDegrees()) > LightRequest.GREATEST_LATITUDE) {
      faults.add(
          String.format(
              Locale.ROOT,
              "the field lies at latitude %.4f, where the sun may not set or not rise",
              place.latitudeDegrees()),
          plan.place("guidance.ab-line"),
          "latitudes -66 to 66 degrees",
          "correct the AB line; there is no forecast of light for polar days");
    }
  }

  /** The canopies of its products. */
  PlanCanopies canopies() {
    return canopies;
  }

  /** Asks for the light of rows, sampled as the plan wants it. */
  LightRequest request(List<CanopyRow> rows) {
    Time step = plan.forecast().step();
    return request(
        rows, step == null ? Sampling.QUICK : Sampling.FULL.withMinutes(step.hours() * MINUTES));
  }

  /** Asks for the light of rows as one of many requests. */
  LightRequest requestOfMany(List<CanopyRow> rows) {
    Sampling many =
        Sampling.many(rows.stream().mapToDouble(CanopyRow::spacingMetres).min().orElseThrow());
    Time step = plan.forecast().step();
    return request(rows, step == null ? many : many.withMinutes(step.hours() * MINUTES));
  }

  private LightRequest request(List<CanopyRow> rows, Sampling sampling) {
    return new LightRequest(
        place.longitudeDegrees(),
        place.latitudeDegrees(),
        headingDegrees,
        rows,
        clearness(),
        sampling);
  }

  private boolean isSouth() {
    return place.latitudeDegrees() < 0;
  }

  private List<Double> clearness() {
    if (!plan.forecast().clearness().isEmpty()) {
      return plan.forecast().clearness();
    }
    List<Double> north = Defaults.get().numbers("clearness");
    List<Double> months = new ArrayList<>();
    for (int month = 0; month < north.size(); month++) {
      months.add(north.get((month + (isSouth() ? north.size() / 2 : 0)) % north.size()));
    }
    return months;
  }
}
