package org.lynchet.prescription.plan;

import java.io.Serializable;
import java.time.LocalDate;
import java.util.Locale;

/** A time of a crop's season: a day, or a share of the days from planting to maturity. */
public sealed interface SeasonTime extends Serializable {

  /** The share of the season that is over by then; below 0 before planting, above 1 when ripe. */
  double share(LocalDate planting, LocalDate maturity);

  /** Whether it is not before another one in any season; false of a day and a share. */
  boolean isSurelyNotBefore(SeasonTime other);

  /**
   * A day.
   *
   * @param date the day
   */
  record Day(LocalDate date) implements SeasonTime {
    @Override
    public double share(LocalDate planting, LocalDate maturity) {
      double season = maturity.toEpochDay() - planting.toEpochDay();
      return (date.toEpochDay() - planting.toEpochDay()) / season;
    }

    @Override
    public boolean isSurelyNotBefore(SeasonTime other) {
      return other instanceof Day day && !date.isBefore(day.date);
    }

    @Override
    public String toString() {
      return date.toString();
    }
  }

  /**
   * A share.
   *
   * @param share of the season, 0 to 1
   */
  record Share(double share) implements SeasonTime {
    @Override
    public double share(LocalDate planting, LocalDate maturity) {
      return share;
    }

    @Override
    public boolean isSurelyNotBefore(SeasonTime other) {
      return other instanceof Share later && share >= later.share;
    }

    @Override
    public String toString() {
      return String.format(Locale.ROOT, "%.1f %%", 100 * share).replace(".0 ", " ");
    }
  }
}
