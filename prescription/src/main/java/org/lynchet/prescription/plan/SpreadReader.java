package org.lynchet.prescription.plan;

import java.util.Optional;
import java.util.function.ToDoubleFunction;
import org.lynchet.prescription.plan.PlanNode.Mapping;
import org.lynchet.prescription.quantity.Spread;

/** Reads a number that is not known for sure: one value, or low, typical and high. */
final class SpreadReader {
  private SpreadReader() {}

  /**
   * A reader of spreads.
   *
   * @param one reads a single value
   * @param number a value's number
   */
  static <T> ValueReader<Spread> of(ValueReader<T> one, ToDoubleFunction<T> number) {
    return (node, faults) ->
        node instanceof Mapping
            ? KeyReader.keys(keys -> three(keys, one, number)).read(node, faults)
            : one.read(node, faults).map(number::applyAsDouble).map(Spread::exactly);
  }

  private static <T> Optional<Spread> three(
      KeyReader keys, ValueReader<T> one, ToDoubleFunction<T> number) {
    Optional<Double> low = keys.get("low", one).map(number::applyAsDouble);
    Optional<Double> typical = keys.get("typical", one).map(number::applyAsDouble);
    Optional<Double> high = keys.get("high", one).map(number::applyAsDouble);
    if (low.isEmpty() || typical.isEmpty() || high.isEmpty()) {
      return Optional.empty();
    }
    if (!(low.get() <= typical.get() && typical.get() <= high.get())) {
      keys.faultOfAll(
          "low, typical and high are not in rising order",
          "low at most typical, typical at most high",
          "correct their order");
      return Optional.empty();
    }
    return Optional.of(new Spread(low.get(), typical.get(), high.get()));
  }
}
