package org.lynchet.prescription.plan;

import java.io.Serializable;
import java.time.LocalDate;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.lynchet.prescription.defaults.Defaults;
import org.lynchet.prescription.quantity.Length;
import org.lynchet.prescription.quantity.Spread;
import org.lynchet.prescription.quantity.Time;

/**
 * What a forecast of light and yield goes by.
 *
 * @param season how much water the season brings
 * @param clearness the sun's energy as a share of what a cloudless sky lets through, January to
 *     December; empty for the defaults
 * @param step time between two suns, or null for a sampling that comes to the same
 * @param canopies how canopies grow, by crop or product, in the plan's order
 * @param responses change of yield for a change of absorbed light, as shares of each, 0 or more; by
 *     crop, in the plan's order
 */
public record ForecastChoices(
    Season season,
    List<Double> clearness,
    @Nullable Time step,
    Map<String, PlannedCanopy> canopies,
    Map<String, Spread> responses)
    implements Serializable {

  /** The season of the defaults {@code forecast}, and nothing else told. */
  public static final ForecastChoices DEFAULT =
      new ForecastChoices(
          Season.valueOf(Defaults.get().text("forecast.season").toUpperCase(Locale.ROOT)),
          List.of(),
          null,
          Map.of(),
          Map.of());

  /** Copies lists and maps, keeping their order. */
  public ForecastChoices {
    clearness = List.copyOf(clearness);
    canopies = Collections.unmodifiableMap(new LinkedHashMap<>(canopies));
    responses = Collections.unmodifiableMap(new LinkedHashMap<>(responses));
  }

  /** How much water a season brings. */
  public enum Season {
    DRY,
    NORMAL,
    WET
  }

  /**
   * How a canopy grows; null is what the plan does not say.
   *
   * @param height the tallest
   * @param leafAreaIndex the largest leaf area on the whole ground
   * @param extinction share k of Beer's law
   * @param planting the day of planting
   * @param maturity the day of maturity
   * @param leaf how leaf area comes and goes
   */
  public record PlannedCanopy(
      @Nullable Length height,
      @Nullable Double leafAreaIndex,
      @Nullable Double extinction,
      @Nullable LocalDate planting,
      @Nullable LocalDate maturity,
      LeafCurve leaf)
      implements Serializable {

    /** A canopy whose leaf area comes and goes as that of its crop. */
    public PlannedCanopy(
        @Nullable Length height,
        @Nullable Double leafAreaIndex,
        @Nullable Double extinction,
        @Nullable LocalDate planting,
        @Nullable LocalDate maturity) {
      this(height, leafAreaIndex, extinction, planting, maturity, LeafCurve.NONE);
    }
  }
}
