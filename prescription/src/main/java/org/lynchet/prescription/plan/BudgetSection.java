package org.lynchet.prescription.plan;

import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.lynchet.prescription.plan.PlanNode.Listing;
import org.lynchet.prescription.quantity.AreaUnit;
import org.lynchet.prescription.quantity.Price;

/** Reads the section {@code budget}. */
final class BudgetSection {
  private static final int MOST_SPRAYINGS = 20;

  private final ValueReader<String> crop;
  private final ValueReader<String> product;
  private final ProductCrops uses;
  private final StandReader stands;
  private final Map<String, GrainReader> grains = new LinkedHashMap<>();
  private Map<String, CropMarket> markets = Map.of();

  private BudgetSection(
      ValueReader<String> crop,
      ValueReader<String> product,
      ProductCrops uses,
      StandReader stands) {
    this.crop = crop;
    this.product = product;
    this.uses = uses;
    this.stands = stands;
  }

  /**
   * Reads the section.
   *
   * @param strips the strips that could be read; if some could not, no name is judged
   * @param known the crops and products of the plan
   * @param stands reads rates of products
   */
  static PlannedBudget read(
      KeyReader plan, Optional<List<PlannedStrip>> strips, ProductCrops known, StandReader stands) {
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
                    "the products of the plan"),
                known,
                stands)
            : new BudgetSection(NameText::crop, NameText::product, known, stands);
    return plan.find("budget", KeyReader.keys(section::budget)).orElse(PlannedBudget.NONE);
  }

  private Optional<PlannedBudget> budget(KeyReader keys) {
    PlannedBudget none = PlannedBudget.NONE;
    markets =
        keys.find("crops", KeyReader.names(crop, name -> MarketReader.of(name, grains)))
            .orElse(none.crops());
    return Optional.of(
        new PlannedBudget(
            keys.find("currency", NameText::name).orElse(none.currency()),
            markets,
            keys.find("seed", KeyReader.names(product, name -> MoneyText.SEED_PRICE))
                .map(BudgetSection::amounts)
                .orElse(none.seedPrices()),
            keys.find("machine-cost", SpreadReader.of(MoneyText.HOURLY_COST, Price::amount))
                .orElse(null),
            keys.find("sprayings", NumberText.count(1, MOST_SPRAYINGS)).orElse(null),
            keys.find("extra-costs", ValueReader.listOf(KeyReader.keys(BudgetSection::extra)))
                .orElse(none.extraCosts()),
            keys.find("seeding-trials", KeyReader.names(product, this::trials))
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

  private ValueReader<SeedingTrials> trials(String name) {
    Optional<String> grownAs = uses.cropOf(name);
    GrainReader grain =
        grownAs
            .map(known -> grains.getOrDefault(known, GrainReader.of(known)))
            .orElse(GrainReader.UNKNOWN);
    CropMarket market = grownAs.map(markets::get).orElse(null);
    return new TrialReader(
            stands.of(grownAs.map(known -> name)), grain, market == null ? null : market.unit())
        ::read;
  }
}
