package org.lynchet.prescription.budget;

import org.lynchet.prescription.quantity.AreaUnit;
import org.lynchet.prescription.quantity.Spread;
import org.lynchet.prescription.sheet.CsvText;

/**
 * Writes a budget as CSV (RFC 4180).
 *
 * <p>Columns: part, item, unit, low, typical, high, net_at_low, net_at_high. Part is one of
 * added-returns, reduced-costs, reduced-returns, added-costs and net, with what the item does to
 * the net, once for the whole field and once for an area; or it is input, with the number's own
 * values and what its low and high value alone make of the field's net. Of those that bring a net,
 * the last two columns are empty. Changes of yield are in per cent.
 */
public final class BudgetCsv {
  private static final int CENTS = 2;
  private static final int DECIMALS = 4;

  private final StripBudget budget;
  private final AreaUnit area;
  private final CsvText csv = new CsvText();

  private BudgetCsv(StripBudget budget, AreaUnit area) {
    this.budget = budget;
    this.area = area;
  }

  /** The CSV text. */
  public static String of(StripBudget budget, AreaUnit area) {
    return new BudgetCsv(budget, area).write();
  }

  private String write() {
    csv.cells("part", "item", "unit", "low", "typical", "high", "net_at_low", "net_at_high");
    csv.endRow();
    for (BudgetPart part : BudgetPart.values()) {
      budget.items().stream()
          .filter(item -> item.part() == part)
          .forEach(item -> money(part.key(), item.item(), item.change()));
    }
    money("net", "", budget.net());
    for (Swing swing : budget.swings()) {
      csv.cells("input", swing.input().words(), swing.unit());
      values(swing.counted(), DECIMALS);
      csv.cell(swing.netAtLow(), CENTS).cell(swing.netAtHigh(), CENTS).endRow();
    }
    return csv.toString();
  }

  private void money(String part, String item, Spread change) {
    String currency = budget.facts().currency();
    csv.cells(part, item, currency);
    values(change, CENTS);
    csv.cells("", "").endRow();
    csv.cells(part, item, currency + "/" + area.symbol());
    values(change.times(area.squareMetres() / budget.facts().fieldSquareMetres()), CENTS);
    csv.cells("", "").endRow();
  }

  private void values(Spread spread, int decimals) {
    csv.cell(spread.low() + 0.0, decimals);
    csv.cell(spread.typical() + 0.0, decimals);
    csv.cell(spread.high() + 0.0, decimals);
  }
}
