package org.lynchet.prescription.budget;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.lynchet.prescription.budget.SeedingResponse.Observation;
import org.lynchet.prescription.fault.Faults;
import org.lynchet.prescription.plan.CropMarket;
import org.lynchet.prescription.plan.Plan;
import org.lynchet.prescription.plan.SeedingTrials;
import org.lynchet.prescription.plan.SeedingTrials.TrialPlot;
import org.lynchet.prescription.quantity.AreaUnit;
import org.lynchet.prescription.quantity.SeedingRate;
import org.lynchet.prescription.summary.SeedOrder;
import org.lynchet.prescription.summary.Summary;
import org.lynchet.prescription.summary.ZoneTotal;
import org.lynchet.prescription.zone.Zone;

/** Finds the rates that pay best by a plan's seeding trials; of products that are planted only. */
final class TrialRates {
  private final Plan plan;
  private final Summary summary;
  private final SeedPrices seed;
  private final Faults faults;

  TrialRates(Plan plan, Summary summary, SeedPrices seed, Faults faults) {
    this.plan = plan;
    this.summary = summary;
    this.seed = seed;
    this.faults = faults;
  }

  /** By product, in the order of the seed to order. */
  List<RateAdvice> rates() {
    List<RateAdvice> rates = new ArrayList<>();
    for (SeedOrder order : summary.seed()) {
      SeedingTrials trials = plan.budget().seedingTrials().get(order.product());
      CropMarket market = plan.budget().crops().get(order.crop());
      if (trials != null && market != null) {
        rate(order, trials, market).ifPresent(rates::add);
      }
    }
    return rates;
  }

  private Optional<RateAdvice> rate(SeedOrder order, SeedingTrials trials, CropMarket market) {
    String where = plan.place("budget.seeding-trials." + order.product());
    double price = seed.perSeed(order.product());
    if (trials.plots().get(0).grown().unit() != market.unit()) {
      faults.add(
          "the trials' yields are in another unit than the price of " + order.crop(),
          where,
          "yields in " + market.unit().yieldSymbol(),
          "write them in that unit");
      return Optional.empty();
    }
    Optional<SeedingResponse> response =
        SeedingResponse.find(
            trials.curve(),
            trials.plots().stream().map(plot -> observation(plot, market)).toList());
    if (response.isEmpty()) {
      faults.add(
          "the curve through the trials has no highest yield, and so no best rate",
          where,
          "yields that rise less and less, or fall, towards high rates",
          "add plots at other rates, or remove the trials");
    }
    return response.map(
        found ->
            RateAdvice.of(
                order.product(),
                order.crop(),
                market.unit(),
                trials.curve(),
                found,
                price,
                market.price(),
                planned(order.product())));
  }

  private static Observation observation(TrialPlot plot, CropMarket market) {
    AreaUnit area = market.unit().per();
    return new Observation(
        plot.rate().perSquareMetre() * area.squareMetres(), plot.grown().amount());
  }

  private List<SeedingRate> planned(String product) {
    return summary.zones().stream()
        .filter(zone -> zone.product().equals(product) && zone.kind() != Zone.Kind.HEADLAND)
        .map(ZoneTotal::rate)
        .distinct()
        .sorted(Comparator.comparingDouble(SeedingRate::perSquareMetre))
        .toList();
  }
}
