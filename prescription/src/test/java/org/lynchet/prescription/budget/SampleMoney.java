package org.lynchet.prescription.budget;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.lynchet.prescription.plan.CropMarket;
import org.lynchet.prescription.plan.ExtraCost;
import org.lynchet.prescription.plan.PlannedBudget;
import org.lynchet.prescription.plan.SeedingTrials;
import org.lynchet.prescription.plan.SeedingTrials.Curve;
import org.lynchet.prescription.plan.SeedingTrials.TrialPlot;
import org.lynchet.prescription.quantity.AreaUnit;
import org.lynchet.prescription.quantity.GrainUnit;
import org.lynchet.prescription.quantity.GrainYield;
import org.lynchet.prescription.quantity.SeedingRate;
import org.lynchet.prescription.quantity.Spread;

/** Builds the money of plans for tests, all invented. */
final class SampleMoney {
  private SampleMoney() {}

  /** Corn and soybean with changes of yield of their own. */
  static PlannedBudget whole() {
    return money(
        markets(new Spread(0.02, 0.05, 0.08), new Spread(-0.1, -0.06, -0.02)),
        Map.of("tall-108", 260.0, "short-106", 300.0),
        Map.of());
  }

  static Map<String, CropMarket> markets(@Nullable Spread corn, @Nullable Spread soybean) {
    Map<String, CropMarket> markets = new LinkedHashMap<>();
    markets.put(
        "corn",
        new CropMarket(GrainUnit.BUSHEL, new Spread(3.5, 4, 4.6), new Spread(170, 186, 200), corn));
    markets.put(
        "soybean",
        new CropMarket(
            GrainUnit.BUSHEL, new Spread(9.5, 10.5, 12), new Spread(47, 53, 58), soybean));
    return markets;
  }

  static PlannedBudget money(
      Map<String, CropMarket> markets,
      Map<String, Double> seed,
      Map<String, List<TrialPlot>> trials) {
    return new PlannedBudget(
        "USD",
        markets,
        seed,
        new Spread(100, 150, 200),
        2,
        List.of(new ExtraCost("scouting", 2, AreaUnit.ACRE), new ExtraCost("a marker", 99, null)),
        parabolas(trials));
  }

  private static Map<String, SeedingTrials> parabolas(Map<String, List<TrialPlot>> trials) {
    Map<String, SeedingTrials> parabolas = new LinkedHashMap<>();
    trials.forEach((name, plots) -> parabolas.put(name, new SeedingTrials(Curve.PARABOLA, plots)));
    return parabolas;
  }

  /** The whole money with trials of the tall corn product. */
  static PlannedBudget withTrials(TrialPlot... plots) {
    return money(whole().crops(), whole().seedPrices(), Map.of("tall-108", List.of(plots)));
  }

  static TrialPlot plot(double perAcre, double bushels) {
    return new TrialPlot(
        new SeedingRate(perAcre, AreaUnit.ACRE), new GrainYield(bushels, GrainUnit.BUSHEL));
  }
}
