package org.lynchet.prescription.plan;

import java.util.Arrays;
import org.lynchet.prescription.quantity.GrainUnit;
import org.lynchet.prescription.quantity.GrainYield;
import org.lynchet.prescription.quantity.Price;

/** Reads prices, costs, yields and changes of yield. */
final class MoneyText {
  /** About what a bushel weighs: the range of yields in pounds is so many times that of others. */
  private static final double POUNDS = 50;

  /** What grain sells for. */
  static final ValueReader<Price> GRAIN_PRICE = price(UnitKind.GRAIN_PRICE, 0.01);

  /** What a unit of seed costs. */
  static final ValueReader<Price> SEED_PRICE = price(UnitKind.SEED_PRICE, 0);

  /** What an hour of a machine costs. */
  static final ValueReader<Price> HOURLY_COST = price(UnitKind.HOURLY_COST, 0);

  /** What an area or the whole field costs. */
  static final ValueReader<Price> COST = price(UnitKind.COST, 0);

  /** A yield of grain. */
  static final ValueReader<GrainYield> YIELD =
      new QuantityText<>(
          UnitKind.YIELD,
          (amount, symbol) -> new GrainYield(amount, grainUnit(symbol)),
          grown -> grown.unit() == GrainUnit.POUND ? grown.amount() / POUNDS : grown.amount(),
          0.1,
          1000,
          "0.1 to 1000, in pounds 5 to 50000");

  /** A change of yield as a share of it. */
  static final ValueReader<Double> CHANGE =
      new QuantityText<>(
          UnitKind.PERCENT,
          (number, unit) -> number / 100,
          share -> share,
          -0.9,
          2,
          "-90 % to 200 %");

  private MoneyText() {}

  private static ValueReader<Price> price(UnitKind kind, double least) {
    return new QuantityText<>(
        kind, Price::new, Price::amount, least, 1e7, (least == 0 ? "0" : "0.01") + " to 10000000");
  }

  /** The unit that a price of grain is for. */
  static GrainUnit grainUnit(Price price) {
    return Arrays.stream(GrainUnit.values())
        .filter(unit -> price.unit().equals("/" + unit.symbol()))
        .findFirst()
        .orElseThrow();
  }

  private static GrainUnit grainUnit(String yieldSymbol) {
    return Arrays.stream(GrainUnit.values())
        .filter(unit -> unit.yieldSymbol().equals(yieldSymbol))
        .findFirst()
        .orElseThrow();
  }
}
