package org.lynchet.prescription.placement;

import java.util.Locale;
import org.lynchet.prescription.plan.PlannedGuidance.Position;
import org.lynchet.prescription.quantity.AreaUnit;
import org.lynchet.prescription.quantity.Count;
import org.lynchet.prescription.quantity.LengthUnit;

/** Shows the chosen placement beside the plan's, term by term, in at most 100 columns. */
public final class PlacementTable {
  private final PlacementResult result;
  private final AreaUnit area;
  private final StringBuilder text = new StringBuilder();

  private PlacementTable(PlacementResult result, AreaUnit area) {
    this.result = result;
    this.area = area;
  }

  /**
   * The table, and the AB line to set on the terminal; each line ends with a line feed.
   *
   * @param area acres, with feet beside them, or hectares, with metres
   */
  public static String of(PlacementResult result, AreaUnit area) {
    return new PlacementTable(result, area).render();
  }

  private String render() {
    String unit = area.symbol();
    line(
        "%-24s %11s %13s %11s %13s %13s",
        "PLACEMENT", "PLAN'S", "COUNTS " + unit, "CHOSEN", "COUNTS " + unit, "LESS " + unit);
    for (Term term : Term.values()) {
      row(term);
    }
    double fixed = result.fixed().costSquareMetres();
    double chosen = result.chosen().costSquareMetres();
    line(
        "%-24s %11s %13s %11s %13s %13s",
        "together", "", inUnit(fixed), "", inUnit(chosen), inUnit(fixed - chosen));
    shares();
    line(
        "Chosen from %d placements on %s: %s.",
        result.placements(),
        Count.of(result.headings(), "heading"),
        result.isUnchanged() ? "none counts less than the plan's" : "the AB line moves");
    if (!result.isUnchanged()) {
      line("It is %s.", change());
      line("Set this AB line on the terminal; all files here go by it, not by the plan's:");
      line("  A: %s", position(result.a()));
      line("  B: %s", position(result.b()));
      line("  heading: %s degrees from true north", heading());
    }
    return text.toString();
  }

  private void row(Term term) {
    double fixed = term.costSquareMetres(result.fixed().terms(), result.weights());
    double chosen = term.costSquareMetres(result.chosen().terms(), result.weights());
    line(
        "%-24s %11s %13s %11s %13s %13s",
        term.words(),
        amount(term, result.fixed()),
        inUnit(fixed),
        amount(term, result.chosen()),
        inUnit(chosen),
        inUnit(fixed - chosen));
  }

  private String amount(Term term, Placement placement) {
    double amount = term.amount(placement.terms());
    return term.isArea()
        ? inUnit(amount) + " " + area.symbol()
        : String.format(Locale.ROOT, "%.0f", amount);
  }

  private void shares() {
    for (String crop : result.wantedShares().keySet()) {
      line(
          "  %-22s %11s %13s %11s   wanted %s",
          crop,
          percent(result.fixed().share(crop)),
          "",
          percent(result.chosen().share(crop)),
          percent(result.wantedShares().getOrDefault(crop, 0.0)));
    }
  }

  private String change() {
    double turn = result.chosen().turnDegrees();
    double shift = result.chosen().shiftMetres();
    String turned =
        turn == 0
            ? ""
            : String.format(
                Locale.ROOT,
                "turned %.4f degrees %s about A",
                Math.abs(turn),
                turn > 0 ? "clockwise" : "anticlockwise");
    String moved = shift == 0 ? "" : "moved " + moved(shift);
    return turned + (turned.isEmpty() || moved.isEmpty() ? "" : ", then ") + moved;
  }

  /** With 4 decimals, 360 written as 0. */
  private String heading() {
    double degrees = Math.rint(result.frame().headingDegrees() * 1e4) / 1e4 % 360;
    return String.format(Locale.ROOT, "%.4f", degrees);
  }

  private String moved(double shift) {
    String side = shift > 0 ? "right" : "left";
    double metres = Math.abs(shift);
    return area == AreaUnit.ACRE
        ? String.format(
            Locale.ROOT,
            "%.3f ft (%.4f m) to the %s",
            metres / LengthUnit.FOOT.metres(),
            metres,
            side)
        : String.format(Locale.ROOT, "%.4f m to the %s", metres, side);
  }

  private static String position(Position at) {
    return String.format(
        Locale.ROOT, "longitude %.9f, latitude %.9f", at.longitudeDegrees(), at.latitudeDegrees());
  }

  /** Without a minus before nothing. */
  private String inUnit(double squareMetres) {
    String number = String.format(Locale.ROOT, "%.2f", squareMetres / area.squareMetres());
    return number.equals("-0.00") ? "0.00" : number;
  }

  private static String percent(double share) {
    return String.format(Locale.ROOT, "%.1f %%", share * 100);
  }

  private void line(String format, Object... arguments) {
    text.append(String.format(Locale.ROOT, format, arguments).stripTrailing()).append('\n');
  }
}
