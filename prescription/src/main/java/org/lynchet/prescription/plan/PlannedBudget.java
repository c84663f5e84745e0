package org.lynchet.prescription.plan;

import java.io.Serializable;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.lynchet.prescription.defaults.Defaults;
import org.lynchet.prescription.quantity.Spread;

/**
 * The money of a plan, all in one currency.
 *
 * @param currency its sign or code, only shown
 * @param crops what crops bring, by crop; may lack crops of the pattern
 * @param seedPrices money for a unit of seed, by product; may lack products
 * @param machineCost money for an hour of a machine with its driver, or null if not told
 * @param toldSprayings how often the sprayer drives over each crop in a season, or null if not told
 * @param extraCosts what else strips cost more
 * @param seedingTrials what products yielded at several seeding rates, by product
 */
public record PlannedBudget(
    String currency,
    Map<String, CropMarket> crops,
    Map<String, Double> seedPrices,
    @Nullable Spread machineCost,
    @Nullable Integer toldSprayings,
    List<ExtraCost> extraCosts,
    Map<String, SeedingTrials> seedingTrials)
    implements Serializable {

  /** Nothing told: the defaults {@code budget}. */
  public static final PlannedBudget NONE =
      new PlannedBudget(
          Defaults.get().text("budget.currency"),
          Map.of(),
          Map.of(),
          null,
          null,
          List.of(),
          Map.of());

  /** Copies maps and lists, keeping their order. */
  public PlannedBudget {
    crops = Collections.unmodifiableMap(new LinkedHashMap<>(crops));
    seedPrices = Collections.unmodifiableMap(new LinkedHashMap<>(seedPrices));
    extraCosts = List.copyOf(extraCosts);
    seedingTrials = Collections.unmodifiableMap(new LinkedHashMap<>(seedingTrials));
  }

  /** How often the sprayer drives over each crop in a season; by default where it is not told. */
  public int sprayings() {
    return toldSprayings == null ? Defaults.get().whole("budget.sprayings") : toldSprayings;
  }
}
