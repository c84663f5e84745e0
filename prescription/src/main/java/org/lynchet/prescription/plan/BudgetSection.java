package org.lynchet.prescription.plan;

import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import org.lynchet.prescription.quantity.AreaUnit;
import org.lynchet.prescription.quantity.GrainUnit;
import org.lynchet.prescription.quantity.GrainYield;
import org.lynchet.prescription.quantity.Price;
import org.lynchet.prescription.quantity.Spread;

/** Reads the section {@code budget}. */
final class BudgetSection {
  private BudgetSection() {}

  static PlannedBudget read(KeyReader plan) {
    return plan.find("budget", KeyReader.keys(BudgetSection::budget)).orElse(PlannedBudget.NONE);
  }

  private static Optional<PlannedBudget> budget(KeyReader keys) {
    PlannedBudget none = PlannedBudget.NONE;
    return Optional.of(
        new PlannedBudget(
            keys.find("currency", NameText::name).orElse(none.currency()),
            keys.find(
                    "crops",
                    KeyReader.names(NameText::crop, crop -> KeyReader.keys(BudgetSection::market)))
                .orElse(none.crops()),
            keys.find("seed", KeyReader.names(NameText::product, product -> MoneyText.SEED_PRICE))
                .map(BudgetSection::amounts)
                .orElse(none.seedPrices()),
            keys.find("machine-cost", SpreadReader.of(MoneyText.HOURLY_COST, Price::amount))
                .orElse(null),
            keys.find("extra-costs", ValueReader.listOf(KeyReader.keys(BudgetSection::extra)))
                .orElse(none.extraCosts())));
  }

  private static Map<String, Double> amounts(Map<String, Price> prices) {
    Map<String, Double> amounts = new LinkedHashMap<>();
    prices.forEach((product, price) -> amounts.put(product, price.amount()));
    return amounts;
  }

  private static Optional<CropMarket> market(KeyReader keys) {
    Set<String> units = new HashSet<>();
    Optional<Spread> price =
        keys.get(
            "price",
            SpreadReader.of(noting(units, MoneyText.GRAIN_PRICE, Price::unit), Price::amount));
    Optional<GrainYield> grown = keys.get("yield", MoneyText.YIELD);
    Optional<Spread> change =
        keys.find("yield-change", SpreadReader.of(MoneyText.CHANGE, share -> share));
    if (price.isEmpty() || grown.isEmpty()) {
      return Optional.empty();
    }
    GrainUnit unit = grown.get().unit();
    if (!units.equals(Set.of("/" + unit.symbol()))) {
      keys.fault(
          "price",
          "the price is for another unit than the yield",
          "prices in /" + unit.symbol() + " with a yield in " + unit.yieldSymbol(),
          "write both in bushels or both in tonnes");
      return Optional.empty();
    }
    return Optional.of(
        new CropMarket(unit, price.get(), grown.get().amount(), change.orElse(null)));
  }

  private static <T> ValueReader<T> noting(
      Set<String> units, ValueReader<T> reader, Function<T, String> unit) {
    return (node, faults) -> {
      Optional<T> value = reader.read(node, faults);
      value.map(unit).ifPresent(units::add);
      return value;
    };
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
}
