package org.lynchet.prescription.plan;

import java.util.LinkedHashSet;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import org.lynchet.prescription.quantity.GrainUnit;
import org.lynchet.prescription.quantity.GrainYield;
import org.lynchet.prescription.quantity.Price;
import org.lynchet.prescription.quantity.Shrink;
import org.lynchet.prescription.quantity.Spread;

/** Reads what one crop brings, price and yield in one unit of grain; yields may be in pounds. */
final class MarketReader {
  private final String crop;
  private final Map<String, GrainReader> grains;
  private final Set<GrainUnit> sold = new LinkedHashSet<>();
  private final Set<GrainUnit> grown = new LinkedHashSet<>();

  private MarketReader(String crop, Map<String, GrainReader> grains) {
    this.crop = crop;
    this.grains = grains;
  }

  /**
   * A reader of one crop's market.
   *
   * @param grains takes how the crop's grain is sold
   */
  static ValueReader<CropMarket> of(String crop, Map<String, GrainReader> grains) {
    return (node, faults) ->
        KeyReader.keys(new MarketReader(crop, grains)::market).read(node, faults);
  }

  private Optional<CropMarket> market(KeyReader keys) {
    Optional<Spread> price =
        keys.get(
            "price",
            SpreadReader.of(
                noting(MoneyText.GRAIN_PRICE, MoneyText::grainUnit, sold), Price::amount));
    Optional<Spread> yields =
        keys.get(
            "yield",
            SpreadReader.of(noting(MoneyText.YIELD, GrainYield::unit, grown), GrainYield::amount));
    Optional<Spread> change =
        keys.find("yield-change", SpreadReader.of(MoneyText.CHANGE, share -> share));
    GrainReader grain = GrainReader.of(crop, keys);
    grains.put(crop, grain);
    Optional<Shrink> shrink = grain.shrink(keys).map(MarketReader::delivered);
    if (price.isEmpty() || yields.isEmpty() || shrink.isEmpty()) {
      return Optional.empty();
    }
    GrainUnit unit = sold.iterator().next();
    GrainUnit from = grown.iterator().next();
    if (sold.size() > 1 || grown.size() > 1 || !grain.canTake(from, unit)) {
      keys.faultOfAll(
          "price and yield are in different units of grain",
          "all in bushels, as 4.20 /bu and 186 bu/ac, or all in tonnes, as 165 /t and 11.7 t/ha;"
              + " yields of crops whose bushel has a weight that is known also in lb/ac",
          "write both in one of the two");
      return Optional.empty();
    }
    boolean asSold = from == unit && !keys.has("moisture") && !keys.has("handling-loss");
    return Optional.of(
        new CropMarket(
            unit,
            price.get(),
            yields.get().times(grain.factor(from, unit) * shrink.get().kept()),
            change.orElse(null),
            asSold ? null : new GrainDelivered(yields.get(), from, shrink.get())));
  }

  /** Grain drier than it is sold is paid by its weight. */
  private static Shrink delivered(Shrink shrink) {
    return new Shrink(
        Math.max(shrink.moisture(), shrink.standard()), shrink.standard(), shrink.handlingLoss());
  }

  private static <T> ValueReader<T> noting(
      ValueReader<T> reader, Function<T, GrainUnit> unit, Set<GrainUnit> units) {
    return (node, faults) -> {
      Optional<T> value = reader.read(node, faults);
      value.map(unit).ifPresent(units::add);
      return value;
    };
  }
}
