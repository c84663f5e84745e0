package org.lynchet.prescription.budget;

import java.math.BigDecimal;
import java.util.Locale;
import java.util.stream.Collectors;
import org.lynchet.prescription.plan.Product;
import org.lynchet.prescription.quantity.AreaUnit;
import org.lynchet.prescription.summary.SeedOrder;
import org.lynchet.prescription.summary.ZoneTotal;

/** Tells seed to order, border and centre apart, and the rates that pay best. */
final class SeedText {
  private SeedText() {}

  static void add(FieldBudget field, TextLines text) {
    text.line(
        "%-18s %-10s %11s %11s %11s %8s %7s %11s",
        "SEED TO ORDER",
        "CROP",
        "BORDER",
        "CENTRE",
        "HEADLAND",
        "RESERVE",
        "UNITS",
        TextLines.cut(field.strips().facts().currency(), 11));
    for (SeedCost seed : field.seed()) {
      SeedOrder order = seed.order();
      Long units = order.units();
      BigDecimal cost = seed.cost();
      text.line(
          "%-18s %-10s %11.0f %11.0f %11.0f %8s %7s %11s",
          TextLines.cut(order.product(), 18),
          TextLines.cut(order.crop(), 10),
          seed.borderSeeds(),
          seed.centreSeeds(),
          seed.headlandSeeds(),
          String.format(Locale.ROOT, "%.1f %%", 100 * order.reserve()),
          units == null ? "-" : units.toString(),
          cost == null ? "-" : cost.toPlainString());
    }
    text.line("The budget counts the seeds that are planted; orders are whole units.");
    stands(field, text);
    text.line("");
    if (!field.rates().isEmpty()) {
      rates(field, text);
    }
  }

  /** Which stand comes of each rate, where the plan tells how many seeds stand. */
  private static void stands(FieldBudget field, TextLines text) {
    for (SeedCost seed : field.seed()) {
      Product product = field.plan().products().get(seed.order().product());
      if (product != null) {
        product.standingShare().ifPresent(share -> stand(product, share, field, text));
      }
    }
  }

  private static void stand(Product product, double share, FieldBudget field, TextLines text) {
    String rates =
        field.summary().zones().stream()
            .filter(zone -> zone.product().equals(product.name()))
            .map(ZoneTotal::rate)
            .distinct()
            .map(
                rate ->
                    String.format(
                        Locale.ROOT,
                        "%.0f %s stand as %.0f plants/%s",
                        rate.seeds(),
                        rate.unit(),
                        rate.seeds() * share,
                        rate.per().symbol()))
            .collect(Collectors.joining(", "));
    text.wrap(
        String.format(
            Locale.ROOT, "%s: %s, %.1f %% of the seeds", product.name(), rates, 100 * share));
  }

  private static void rates(FieldBudget field, TextLines text) {
    text.line(
        "%-18s %12s %14s %14s %-19s %-17s",
        "SEEDING RATE", "", "PAYS BEST", "YIELDS MOST", "  TESTED", "PLANNED");
    for (RateAdvice rate : field.rates()) {
      text.line(
          "%-18s %12s %14.0f %14.0f %-19s %-17s",
          TextLines.cut(rate.product(), 18),
          "seeds/" + rate.unit().per().symbol(),
          rate.economic().typical(),
          rate.response().agronomicOptimum(),
          "  " + rate.testedWords(),
          planned(rate));
    }
    text.wrap(
        "By the plan's trials of whole blocks ("
            + field.rates().stream()
                .map(rate -> rate.product() + ": " + rate.curve())
                .collect(Collectors.joining(", "))
            + "); border rows may answer otherwise.");
    text.line("");
  }

  private static String planned(RateAdvice rate) {
    AreaUnit area = rate.unit().per();
    return rate.planned().stream()
        .map(r -> String.format(Locale.ROOT, "%.0f", r.perSquareMetre() * area.squareMetres()))
        .collect(Collectors.joining(", "));
  }
}
