package org.lynchet.prescription.budget;

import java.util.List;
import java.util.TreeMap;
import java.util.function.DoubleBinaryOperator;
import java.util.stream.Collectors;

/**
 * Yields at the rates that were tested, and nothing between them.
 *
 * @param means each rate with the mean of its yields, in rising order of rates, at least two
 */
public record TestedRates(List<Observation> means) implements SeedingResponse {

  /** Copies the list. */
  public TestedRates {
    means = List.copyOf(means);
  }

  static TestedRates of(List<Observation> observations) {
    return new TestedRates(
        observations.stream()
            .collect(
                Collectors.groupingBy(
                    Observation::rate,
                    TreeMap::new,
                    Collectors.averagingDouble(Observation::yield)))
            .entrySet()
            .stream()
            .map(mean -> new Observation(mean.getKey(), mean.getValue()))
            .toList());
  }

  @Override
  public double agronomicOptimum() {
    return best((rate, yield) -> yield).rate();
  }

  @Override
  public double highestYield() {
    return best((rate, yield) -> yield).yield();
  }

  /** The tested rate that leaves most; the lowest of several alike. */
  @Override
  public double economicOptimum(double priceRatio) {
    return best((rate, yield) -> yield - priceRatio * rate).rate();
  }

  private Observation best(DoubleBinaryOperator value) {
    return means.stream()
        .reduce(
            (a, b) ->
                value.applyAsDouble(b.rate(), b.yield()) > value.applyAsDouble(a.rate(), a.yield())
                    ? b
                    : a)
        .orElseThrow();
  }

  @Override
  public double leastTested() {
    return means.get(0).rate();
  }

  @Override
  public double mostTested() {
    return means.get(means.size() - 1).rate();
  }
}
