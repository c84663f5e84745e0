package org.lynchet.prescription.plan;

import java.time.LocalDate;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.lynchet.prescription.plan.ForecastChoices.PlannedCanopy;
import org.lynchet.prescription.plan.ForecastChoices.Season;
import org.lynchet.prescription.plan.PlanNode.Listing;
import org.lynchet.prescription.quantity.Length;
import org.lynchet.prescription.quantity.Spread;
import org.lynchet.prescription.quantity.Time;

/** Reads the section {@code forecast}. */
final class ForecastSection {
  private static final int MONTHS = 12;

  private static final ValueReader<Spread> RESPONSE =
      SpreadReader.of(NumberText.between(0, 3), answer -> answer);

  private ForecastSection() {}

  static ForecastChoices read(KeyReader plan) {
    return plan.find("forecast", KeyReader.keys(ForecastSection::choices))
        .orElse(ForecastChoices.DEFAULT);
  }

  private static Optional<ForecastChoices> choices(KeyReader keys) {
    Season season =
        keys.find("season", WordText.oneOf(Season.class)).orElse(ForecastChoices.DEFAULT.season());
    List<Double> clearness = keys.find("clearness", ForecastSection::clearness).orElse(List.of());
    Optional<Time> step = keys.find("step", QuantityText.STEP);
    Map<String, PlannedCanopy> canopies =
        keys.find("canopies", KeyReader.names(NameText::name, name -> canopy())).orElse(Map.of());
    Map<String, Spread> responses =
        keys.find("response", KeyReader.names(NameText::crop, name -> RESPONSE)).orElse(Map.of());
    return Optional.of(
        new ForecastChoices(season, clearness, step.orElse(null), canopies, responses));
  }

  /** One share for the whole year, or one for each month. */
  private static Optional<List<Double>> clearness(PlanNode node, PlanFaults faults) {
    if (!(node instanceof Listing list)) {
      return QuantityText.EFFICIENCY
          .read(node, faults)
          .map(share -> Collections.nCopies(MONTHS, share));
    }
    if (list.items().size() != MONTHS) {
      faults.add(
          node.place(),
          "the list has " + list.items().size() + " values",
          "one value, or twelve: January to December",
          "give each month its value");
      return Optional.empty();
    }
    return ValueReader.listOf(QuantityText.EFFICIENCY)
        .read(node, faults)
        .filter(shares -> shares.size() == MONTHS);
  }

  private static ValueReader<PlannedCanopy> canopy() {
    return KeyReader.keys(
        keys -> {
          Optional<Length> height = keys.find("height", QuantityText.HEIGHT);
          Optional<Double> leaf = keys.find("leaf-area-index", NumberText.between(0.1, 15));
          Optional<Double> extinction = keys.find("extinction", NumberText.between(0.1, 1.5));
          Optional<LocalDate> planting = keys.find("planting", DateText::read);
          Optional<LocalDate> maturity = keys.find("maturity", DateText::read);
          if (planting.isPresent()
              && maturity.isPresent()
              && !planting.get().isBefore(maturity.get())) {
            keys.fault(
                "maturity",
                "the season ends before it starts",
                "a day after planting, " + planting.get(),
                "correct one of the dates");
          }
          return Optional.of(
              new PlannedCanopy(
                  height.orElse(null),
                  leaf.orElse(null),
                  extinction.orElse(null),
                  planting.orElse(null),
                  maturity.orElse(null),
                  LeafCurveReader.read(keys)));
        });
  }
}
