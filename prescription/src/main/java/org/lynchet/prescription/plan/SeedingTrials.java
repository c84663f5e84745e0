package org.lynchet.prescription.plan;

import java.io.Serializable;
import java.util.List;
import java.util.Locale;
import org.lynchet.prescription.quantity.GrainYield;
import org.lynchet.prescription.quantity.SeedingRate;

/**
 * What one product yielded at several seeding rates.
 *
 * @param curve how yield is taken to answer between them
 * @param plots the plots
 */
public record SeedingTrials(Curve curve, List<TrialPlot> plots) implements Serializable {

  /** Copies the list. */
  public SeedingTrials {
    plots = List.copyOf(plots);
  }

  /** How yield answers a seeding rate. */
  public enum Curve {
    /** A parabola. */
    PARABOLA(3),
    /** The exponential model of Carmer and Jackobs (1965): it rises, and falls slowly. */
    EXPONENTIAL(3),
    /** No curve: the best of the rates that were tested. */
    TESTED_RATES(2);

    private final int fewestRates;

    Curve(int fewestRates) {
      this.fewestRates = fewestRates;
    }

    /** How many different rates it needs. */
    public int fewestRates() {
      return fewestRates;
    }

    /** The word in a plan. */
    @Override
    public String toString() {
      return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
  }

  /**
   * One plot of a trial.
   *
   * @param rate seeds per area as set on the planter
   * @param grown what it yielded, as it is sold
   */
  public record TrialPlot(SeedingRate rate, GrainYield grown) implements Serializable {}
}
