package org.lynchet.prescription.plan;

import java.util.LinkedHashSet;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import org.lynchet.prescription.quantity.GrainUnit;
import org.lynchet.prescription.quantity.GrainYield;
import org.lynchet.prescription.quantity.Price;
import org.lynchet.prescription.quantity.Spread;

/** Reads what one crop brings, price and yield in one unit of grain. */
final class MarketReader {
  static final ValueReader<CropMarket> MARKET =
      (node, faults) -> KeyReader.keys(new MarketReader()::market).read(node, faults);

  private final Set<GrainUnit> units = new LinkedHashSet<>();

  private MarketReader() {}

  private Optional<CropMarket> market(KeyReader keys) {
    Optional<Spread> price =
        keys.get(
            "price",
            SpreadReader.of(noting(MoneyText.GRAIN_PRICE, MoneyText::grainUnit), Price::amount));
    Optional<Spread> grown =
        keys.get(
            "yield",
            SpreadReader.of(noting(MoneyText.YIELD, GrainYield::unit), GrainYield::amount));
    Optional<Spread> change =
        keys.find("yield-change", SpreadReader.of(MoneyText.CHANGE, share -> share));
    if (price.isEmpty() || grown.isEmpty()) {
      return Optional.empty();
    }
    if (units.size() > 1) {
      keys.faultOfAll(
          "price and yield are in different units of grain",
          "all in bushels, as 4.20 /bu and 186 bu/ac, or all in tonnes, as 165 /t and 11.7 t/ha",
          "write both in one of the two");
      return Optional.empty();
    }
    return Optional.of(
        new CropMarket(units.iterator().next(), price.get(), grown.get(), change.orElse(null)));
  }

  private <T> ValueReader<T> noting(ValueReader<T> reader, Function<T, GrainUnit> unit) {
    return (node, faults) -> {
      Optional<T> value = reader.read(node, faults);
      value.map(unit).ifPresent(units::add);
      return value;
    };
  }
}
