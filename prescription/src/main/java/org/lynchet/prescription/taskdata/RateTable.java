package org.lynchet.prescription.taskdata;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import org.lynchet.formats.PlainDecimal;
import org.lynchet.prescription.fault.Warning;
import org.lynchet.prescription.quantity.SeedingRate;
import org.lynchet.prescription.zone.FieldLayout;

/**
 * Tells which rates task data says otherwise than they were meant, since it has whole steps only.
 */
public final class RateTable {
  private RateTable() {}

  /** One line for each product and rate of the plan; the rate meant, and the rate sent. */
  public static String of(FieldLayout layout) {
    StringBuilder text = new StringBuilder();
    rates(PlantedField.of(layout))
        .forEach((product, meant) -> meant.forEach(rate -> line(text, product, rate)));
    return text.toString();
  }

  /** A warning of the rates of a field that are sent otherwise than they were meant, if any is. */
  public static List<Warning> warnings(PlantedField field) {
    List<String> changed = new ArrayList<>();
    rates(field)
        .forEach(
            (product, meant) ->
                meant.stream()
                    .filter(rate -> !isSame(rate))
                    .map(rate -> product + " " + shown(rate) + " as " + sent(rate))
                    .map(String::strip)
                    .forEach(changed::add));
    return changed.isEmpty()
        ? List.of()
        : List.of(
            new Warning(
                Warning.Code.VALUES_ROUNDED,
                "Task data has seeding rates in steps of 0.001 seeds/m2; sent: "
                    + String.join(", ", changed)
                    + "."));
  }

  private static Map<String, Set<SeedingRate>> rates(PlantedField field) {
    Map<String, Set<SeedingRate>> rates = new LinkedHashMap<>();
    for (PlantedArea area : field.areas()) {
      rates.computeIfAbsent(area.product(), p -> new LinkedHashSet<>()).add(area.rate());
    }
    return rates;
  }

  /** Apart from the digits that a table keeps. */
  private static boolean isSame(SeedingRate meant) {
    double sent = SentRate.of(meant).rate(meant.per()).seeds();
    return Math.abs(sent - meant.seeds()) <= 1e-6;
  }

  private static String shown(SeedingRate rate) {
    return PlainDecimal.of(rate.seeds()) + " " + rate.unit();
  }

  private static String sent(SeedingRate meant) {
    return String.format(Locale.ROOT, "%.2f", SentRate.of(meant).rate(meant.per()).seeds());
  }

  private static void line(StringBuilder text, String product, SeedingRate meant) {
    text.append(
        String.format(
            Locale.ROOT,
            "  %-24s %14s %-10s sent as %s (DDI 000B value %d)\n",
            product,
            PlainDecimal.of(meant.seeds()),
            meant.unit(),
            sent(meant),
            SentRate.of(meant).raw()));
  }
}
