package org.lynchet.prescription.report;

import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import org.lynchet.prescription.budget.CropChange;
import org.lynchet.prescription.budget.NetItem;
import org.lynchet.prescription.budget.StripBudget;
import org.lynchet.prescription.budget.Swing;
import org.lynchet.prescription.quantity.AreaUnit;
import org.lynchet.prescription.quantity.Spread;

/** Writes the budget with its ranges, the break-evens, and what each number does alone. */
final class MoneySection {
  private static final int SWINGS = 6;

  private final StripBudget budget;
  private final AreaUnit area;
  private final Html html;

  private MoneySection(StripBudget budget, AreaUnit area, Html html) {
    this.budget = budget;
    this.area = area;
    this.html = html;
  }

  static void write(StripBudget budget, AreaUnit area, Html html) {
    new MoneySection(budget, area, html).write();
  }

  private void write() {
    String currency = budget.facts().currency();
    html.open("section", "class", "money");
    html.element("h2", "Money, strips against separate blocks");
    html.open("div", "class", "pair").open("div");
    List<String> columns = List.of(currency + " for the field", "Low", "Typical", "High");
    html.open("table").head(columns).open("tbody");
    for (NetItem item : budget.items()) {
      amounts(columns, item.item(), item.change(), 0, "item");
    }
    amounts(columns, "Net", budget.net(), 0, "sum");
    amounts(columns, "Net, " + currency + "/" + area.symbol(), budget.netPer(area), 2, "sum");
    html.close().close();
    html.open("ul");
    budget.facts().crops().forEach(this::breakEven);
    html.close().close().open("div");
    html.element("h3", "What one number does alone, the strongest first");
    swings(currency);
    html.close().close().close();
  }

  private void amounts(
      List<String> columns, String name, Spread spread, int decimals, String kind) {
    html.row(
        columns,
        List.of(
            name,
            NumberWords.signed(spread.low(), decimals),
            NumberWords.signed(spread.typical(), decimals),
            NumberWords.signed(spread.high(), decimals)),
        kind);
  }

  private void breakEven(CropChange crop) {
    StringBuilder words = new StringBuilder();
    OptionalDouble change = budget.breakEvenYieldChange(crop.crop());
    if (change.isPresent()) {
      words
          .append("Strips pay what blocks do, all else typical, where ")
          .append(crop.crop())
          .append(" changes by ")
          .append(NumberWords.percent(change.getAsDouble()));
      OptionalDouble price = budget.breakEvenPrice(crop.crop());
      if (price.isPresent()) {
        words.append(
            String.format(
                Locale.ROOT,
                ", or where it brings %.2f %s/%s",
                price.getAsDouble(),
                budget.facts().currency(),
                crop.unit().symbol()));
      }
      html.element("li", words.append('.').toString());
    }
  }

  private void swings(String currency) {
    List<String> columns = List.of("Number", "From", "To", "Net from, " + currency, "Net to");
    html.open("table").head(columns).open("tbody");
    budget.swings().stream()
        .limit(SWINGS)
        .filter(swing -> swing.width() > 0)
        .forEach(swing -> swing(columns, swing));
    html.close().close();
  }

  private void swing(List<String> columns, Swing swing) {
    html.row(
        columns,
        List.of(
            swing.input().words(),
            swing.words(swing.counted().low()),
            swing.words(swing.counted().high()),
            NumberWords.signed(swing.netAtLow(), 0),
            NumberWords.signed(swing.netAtHigh(), 0)),
        "swing");
  }
}
