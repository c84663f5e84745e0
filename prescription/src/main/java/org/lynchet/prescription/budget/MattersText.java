package org.lynchet.prescription.budget;

import java.util.Locale;
import java.util.OptionalDouble;

/** Tells where strips break even and which numbers matter most. */
final class MattersText {
  private MattersText() {}

  static void add(StripBudget budget, TextLines text) {
    text.line("%-30s %26s %26s", "BREAK-EVEN, ALL ELSE TYPICAL", "change of yield", "price");
    for (CropChange crop : budget.facts().crops()) {
      text.line(
          "%-30s %26s %26s",
          TextLines.cut(crop.crop(), 30),
          change(budget.breakEvenYieldChange(crop.crop()))
              + String.format(
                  Locale.ROOT, " (typical %+.1f %%)", 100 * crop.yieldChange().typical()),
          price(budget.breakEvenPrice(crop.crop()))
              + String.format(
                  Locale.ROOT,
                  " (typical %.2f /%s)",
                  crop.price().typical(),
                  crop.unit().symbol()));
    }
    ratio(budget, text);
    text.line("");
    swings(budget, text);
  }

  private static void ratio(StripBudget budget, TextLines text) {
    CropChange gaining = budget.gaining();
    CropChange losing = budget.losing();
    if (gaining.crop().equals(losing.crop())) {
      return;
    }
    OptionalDouble ratio = budget.breakEvenPriceRatio(gaining.crop(), losing.crop());
    text.line(
        "%-57s %26s",
        "ratio of the prices, " + gaining.crop() + " to " + losing.crop(),
        (ratio.isPresent() ? String.format(Locale.ROOT, "%.3f", ratio.getAsDouble()) : "none")
            + String.format(
                Locale.ROOT,
                " (typical %.3f)",
                gaining.price().typical() / losing.price().typical()));
  }

  private static String change(OptionalDouble share) {
    return share.isPresent()
        ? String.format(Locale.ROOT, "%+.1f %%", 100 * share.getAsDouble())
        : "none";
  }

  private static String price(OptionalDouble price) {
    return price.isPresent() ? String.format(Locale.ROOT, "%.2f", price.getAsDouble()) : "none";
  }

  private static void swings(StripBudget budget, TextLines text) {
    text.line(
        "%-30s %14s %14s %13s %13s",
        "WHAT MATTERS MOST", "low", "high", "net at low", "net at high");
    for (Swing swing : budget.swings()) {
      boolean certain = swing.width() == 0;
      text.line(
          "%-30s %14s %14s %13s %13s",
          TextLines.cut(swing.input().words(), 30),
          swing.words(swing.counted().low()),
          certain ? "certain" : swing.words(swing.counted().high()),
          certain ? "" : money(swing.netAtLow()),
          certain ? "" : money(swing.netAtHigh()));
    }
    text.line("Each number alone at its low and high value; net of the whole field.");
    text.line("");
  }

  private static String money(double amount) {
    return String.format(Locale.ROOT, "%+.2f", amount + 0.0);
  }
}
