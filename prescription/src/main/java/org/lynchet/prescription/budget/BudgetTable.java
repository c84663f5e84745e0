package org.lynchet.prescription.budget;

import java.util.List;
import java.util.Locale;
import org.lynchet.prescription.fault.Warning;
import org.lynchet.prescription.plan.GrainDelivered;
import org.lynchet.prescription.quantity.AreaUnit;
import org.lynchet.prescription.quantity.Shrink;
import org.lynchet.prescription.quantity.Spread;
import org.lynchet.prescription.response.Cautions;

/** Shows the money of a field as tables of at most 100 columns. */
public final class BudgetTable {
  /** What to do about prices. */
  public static final String PRICES =
      "Prices and costs are those of the plan: check them before you decide.";

  private final FieldBudget field;
  private final StripBudget strips;
  private final AreaUnit area;
  private final TextLines text = new TextLines();

  private BudgetTable(FieldBudget field) {
    this.field = field;
    this.strips = field.strips();
    this.area = field.summary().areaUnit();
  }

  /** The tables, warnings and cautions; each line ends with a line feed. */
  public static String of(FieldBudget field) {
    BudgetTable table = new BudgetTable(field);
    table.head();
    table.crops();
    table.parts();
    MattersText.add(field.strips(), table.text);
    TimeText.add(field, table.text);
    SeedText.add(field, table.text);
    table.cautions();
    return table.text.toString();
  }

  private void head() {
    BudgetFacts facts = strips.facts();
    text.wrap(
        String.format(
            Locale.ROOT,
            "%s: %.2f %s, strips against separate blocks of the same areas; money in %s",
            field.plan().field().name(),
            facts.fieldSquareMetres() / area.squareMetres(),
            area.symbol(),
            facts.currency()));
    text.wrap(Verdict.of(strips, area));
    text.line("");
  }

  private void crops() {
    text.line(
        "%-12s %9s  %-22s %-22s %-26s",
        "CROP", area.symbol() + " STRIPS", "YIELD IN BLOCKS", "PRICE", "CHANGE OF YIELD");
    for (CropChange crop : strips.facts().crops()) {
      text.line(
          "%-12s %9.2f  %-22s %-22s %-26s",
          TextLines.cut(crop.crop(), 12),
          crop.stripSquareMetres() / area.squareMetres(),
          values(crop.yieldInBlocks(), "%.1f") + " " + crop.unit().yieldSymbol(),
          values(crop.price(), "%.2f") + " /" + crop.unit().symbol(),
          values(crop.yieldChange().times(100), "%+.1f")
              + " %"
              + (field.changes().forecast().contains(crop.crop()) ? " by light" : " of the plan"));
    }
    text.line("Three numbers: low, typical, high. One number is taken as certain.");
    for (CropChange crop : strips.facts().crops()) {
      field.delivered(crop.crop()).ifPresent(grain -> delivered(crop, grain));
    }
    text.line("");
  }

  private void delivered(CropChange crop, GrainDelivered grain) {
    Shrink shrink = grain.shrink();
    boolean known = shrink.standard() > 0;
    text.wrap(
        String.format(
            Locale.ROOT,
            "%s: %s %s%s %s %s%s%s",
            crop.crop(),
            values(grain.yield(), "%.1f"),
            grain.unit().yieldSymbol(),
            known ? percent(" at %.1f %% moisture", shrink.moisture()) : "",
            "sell as " + values(crop.yieldInBlocks(), "%.1f"),
            crop.unit().yieldSymbol(),
            known ? percent(" at %.1f %%", shrink.standard()) : "",
            percent(": shrink %.2f %%", shrink.share())
                + (shrink.handlingLoss() > 0
                    ? percent(", with %.2f %% lost in handling", shrink.handlingLoss())
                    : "")));
  }

  private static String percent(String form, double share) {
    return number(form, 100 * share);
  }

  private static String values(Spread spread, String form) {
    return spread.low() == spread.high()
        ? number(form, spread.typical())
        : number(form, spread.low())
            + " "
            + number(form, spread.typical())
            + " "
            + number(form, spread.high());
  }

  private static String number(String form, double value) {
    return String.format(Locale.ROOT, form, value + 0.0);
  }

  private void parts() {
    String currency = TextLines.cut(strips.facts().currency(), 10);
    text.line(
        "%-30s %34s  %30s",
        "PARTIAL BUDGET", "WHOLE FIELD " + currency, "PER " + area.symbol() + " " + currency);
    text.line(
        "%-30s %10s %11s %11s  %9s %10s %9s",
        "", "low", "typical", "high", "low", "typical", "high");
    for (BudgetPart part : BudgetPart.values()) {
      List<NetItem> items = strips.items().stream().filter(item -> item.part() == part).toList();
      text.line("%s", part.words() + (items.isEmpty() ? ": none" : ""));
      items.forEach(item -> row("  " + item.item(), item.change()));
    }
    row("net", strips.net());
    text.wrap(
        "+ is gained, - is lost; what can be either stands where it typically does. Low and high net"
            + " take every number at its worst and at its best together. Headland is alike in both.");
    text.line("");
  }

  private void row(String item, Spread field) {
    Spread per = field.times(area.squareMetres() / strips.facts().fieldSquareMetres());
    text.line(
        "%-30s %+10.2f %+11.2f %+11.2f  %+9.2f %+10.2f %+9.2f",
        TextLines.cut(item, 30),
        field.low() + 0.0,
        field.typical() + 0.0,
        field.high() + 0.0,
        per.low() + 0.0,
        per.typical() + 0.0,
        per.high() + 0.0);
  }

  private void cautions() {
    for (Warning warning : field.warnings()) {
      text.wrap("Warning " + warning.code() + ": " + warning.text());
      text.line("");
    }
    text.line("%s", PRICES);
    text.add(Cautions.text(field.plan().forecast().season()));
  }
}
