package org.lynchet.prescription.compare;

import java.io.Serializable;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import org.lynchet.prescription.quantity.AreaUnit;
import org.lynchet.prescription.quantity.LengthUnit;

/**
 * How far one of widths, heading and border rows moves the measure: the typical measure, averaged
 * over all outcomes with the same choice of it.
 *
 * @param name what is chosen
 * @param worst the choice with the lowest mean
 * @param worstMean its mean
 * @param best the choice with the highest mean
 * @param bestMean its mean
 */
public record Driver(String name, String worst, double worstMean, String best, double bestMean)
    implements Serializable {

  /** How far apart the two are. */
  public double reach() {
    return bestMean - worstMean;
  }

  /** The drivers of outcomes, the strongest first; what has one choice only drives nothing. */
  static List<Driver> of(
      List<Outcome> outcomes, Measure measure, AreaUnit area, LengthUnit length) {
    Map<String, Function<Candidate, String>> choices = new LinkedHashMap<>();
    choices.put("widths", candidate -> candidate.widthWords(length));
    choices.put("heading", Candidate::headingWords);
    choices.put("border rows", Candidate::borderPlain);
    List<Driver> drivers = new ArrayList<>();
    choices.forEach(
        (name, choice) -> {
          List<Map.Entry<String, Double>> means = means(outcomes, measure, area, choice);
          if (means.size() > 1) {
            Map.Entry<String, Double> worst = means.get(0);
            Map.Entry<String, Double> best = means.get(means.size() - 1);
            drivers.add(
                new Driver(name, worst.getKey(), worst.getValue(), best.getKey(), best.getValue()));
          }
        });
    drivers.sort(Comparator.comparingDouble(Driver::reach).reversed());
    return drivers;
  }

  /** The mean of each choice, rising. */
  private static List<Map.Entry<String, Double>> means(
      List<Outcome> outcomes, Measure measure, AreaUnit area, Function<Candidate, String> choice) {
    Map<String, List<Double>> values = new LinkedHashMap<>();
    for (Outcome outcome : outcomes) {
      values
          .computeIfAbsent(choice.apply(outcome.candidate()), any -> new ArrayList<>())
          .add(measure.of(outcome, area).typical());
    }
    List<Map.Entry<String, Double>> means = new ArrayList<>();
    values.forEach(
        (name, all) ->
            means.add(
                Map.entry(
                    name, all.stream().mapToDouble(Double::doubleValue).average().orElseThrow())));
    means.sort(Map.Entry.comparingByValue());
    return means;
  }
}
