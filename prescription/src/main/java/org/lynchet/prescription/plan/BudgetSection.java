package org.lynchet.prescription.plan;

import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.lynchet.prescription.plan.PlanNode.Listing;
import org.lynchet.prescription.plan.PlannedBudget.TrialPlot;
import org.lynchet.prescription.quantity.AreaUnit;
import org.lynchet.prescription.quantity.GrainYield;
import org.lynchet.prescription.quantity.Price;
import org.lynchet.prescription.quantity.SeedingRate;

/** Reads the section {@code budget}. */
final class BudgetSection {
  private static final int MOST_SPRAYINGS = 20;

  /** Rates that a parabola needs. */
  private static final int FEWEST_RATES = 3;

  private final ValueReader<String> crop;
  private final ValueReader<String> product;

  private BudgetSection(ValueReader<String> crop, ValueReader<String> product) {
    this.crop = crop;
    this.product = product;
  }

  /**
   * Reads the section.
   *
   * @param strips the strips that could be read; if some could not, no name is judged
   * @param known the crops and products of the plan
   */
  static PlannedBudget read(
      KeyReader plan, Optional<List<PlannedStrip>> strips, ProductCrops known) {
    boolean allKnown =
        plan.node("strips").orElse(null) instanceof Listing written
            && strips.isPresent()
            && strips.get().size() == written.items().size();
    Set<String> crops =
        strips.stream()
            .flatMap(List::stream)
            .map(PlannedStrip::crop)
            .collect(Collectors.toCollection(LinkedHashSet::new));
    BudgetSection section =
        allKnown
            ? new BudgetSection(
                NameText.oneOf(NameText::crop, crops, "no strip is of ", "the crops of the strips"),
                NameText.oneOf(
                    NameText::product,
                    known.products(),
                    "the plan has no product ",
                    "the products of the plan"))
            : new BudgetSection(NameText::crop, NameText::product);
    return plan.find("budget", KeyReader.keys(section::budget)).orElse(PlannedBudget.NONE);
  }

  private Optional<PlannedBudget> budget(KeyReader keys) {
    PlannedBudget none = PlannedBudget.NONE;
    return Optional.of(
        new PlannedBudget(
            keys.find("currency", NameText::name).orElse(none.currency()),
            keys.find("crops", KeyReader.names(crop, name -> MarketReader.MARKET))
                .orElse(none.crops()),
            keys.find("seed", KeyReader.names(product, name -> MoneyText.SEED_PRICE))
                .map(BudgetSection::amounts)
                .orElse(none.seedPrices()),
            keys.find("machine-cost", SpreadReader.of(MoneyText.HOURLY_COST, Price::amount))
                .orElse(null),
            keys.find("sprayings", NumberText.count(1, MOST_SPRAYINGS)).orElse(null),
            keys.find("extra-costs", ValueReader.listOf(KeyReader.keys(BudgetSection::extra)))
                .orElse(none.extraCosts()),
            keys.find("seeding-trials", KeyReader.names(product, name -> BudgetSection::trials))
                .orElse(none.seedingTrials())));
  }

  private static Map<String, Double> amounts(Map<String, Price> prices) {
    Map<String, Double> amounts = new LinkedHashMap<>();
    prices.forEach((name, price) -> amounts.put(name, price.amount()));
    return amounts;
  }

  private static Optional<ExtraCost> extra(KeyReader keys) {
    Optional<String> item = keys.get("item", NameText::name);
    Optional<Price> cost = keys.get("cost", MoneyText.COST);
    return item.isPresent() && cost.isPresent()
        ? Optional.of(new ExtraCost(item.get(), cost.get().amount(), per(cost.get())))
        : Optional.empty();
  }

  private static @Nullable AreaUnit per(Price cost) {
    return List.of(AreaUnit.values()).stream()
        .filter(unit -> cost.unit().equals("/" + unit.symbol()))
        .findFirst()
        .orElse(null);
  }

  private static Optional<List<TrialPlot>> trials(PlanNode node, PlanFaults faults) {
    Optional<List<TrialPlot>> plots =
        ValueReader.listOf(KeyReader.keys(BudgetSection::plot)).read(node, faults);
    if (plots.isEmpty() || plots.get().size() < ((Listing) node).items().size()) {
      return Optional.empty();
    }
    if (distinct(plots.get(), plot -> plot.rate().perSquareMetre()) < FEWEST_RATES) {
      faults.add(
          node.place(),
          "the trials have fewer than three rates",
          "yields at three different rates or more",
          "add plots, or remove the trials");
      return Optional.empty();
    }
    if (distinct(plots.get(), plot -> plot.grown().unit()) > 1) {
      faults.add(
          node.place(),
          "the trials' yields are in different units",
          "yields in one unit",
          "write all in bushels or all in tonnes");
      return Optional.empty();
    }
    return plots;
  }

  private static long distinct(List<TrialPlot> plots, Function<TrialPlot, Object> value) {
    return plots.stream().map(value).distinct().count();
  }

  private static Optional<TrialPlot> plot(KeyReader keys) {
    Optional<SeedingRate> rate = keys.get("rate", QuantityText.RATE);
    Optional<GrainYield> grown = keys.get("yield", MoneyText.YIELD);
    return rate.isPresent() && grown.isPresent()
        ? Optional.of(new TrialPlot(rate.get(), grown.get()))
        : Optional.empty();
  }
}
