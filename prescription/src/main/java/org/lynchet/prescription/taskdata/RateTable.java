package org.lynchet.prescription.taskdata;

import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import org.lynchet.formats.PlainDecimal;
import org.lynchet.prescription.quantity.SeedingRate;
import org.lynchet.prescription.zone.FieldLayout;
import org.lynchet.prescription.zone.Zone;

/** Tells which rates task data says otherwise than the plan, since it carries whole steps only. */
public final class RateTable {
  private RateTable() {}

  /** One line for each product and rate of the plan; the rate meant, and the rate sent. */
  public static String of(FieldLayout layout) {
    Map<String, Set<SeedingRate>> rates = new LinkedHashMap<>();
    for (Zone zone : layout.zones()) {
      rates.computeIfAbsent(zone.product(), p -> new LinkedHashSet<>()).add(zone.rate());
    }
    StringBuilder text = new StringBuilder();
    rates.forEach((product, meant) -> meant.forEach(rate -> line(text, product, rate)));
    return text.toString();
  }

  private static void line(StringBuilder text, String product, SeedingRate meant) {
    SentRate sent = SentRate.of(meant);
    text.append(
        String.format(
            Locale.ROOT,
            "  %-24s %14s %-10s sent as %.2f (DDI 000B value %d)\n",
            product,
            PlainDecimal.of(meant.seeds()),
            meant.unit(),
            sent.rate(meant.per()).seeds(),
            sent.raw()));
  }
}
