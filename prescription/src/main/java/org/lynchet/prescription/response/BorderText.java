package org.lynchet.prescription.response;

import java.util.LinkedHashSet;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import org.lynchet.prescription.plan.Plan;
import org.lynchet.prescription.plan.PlannedStrip;
import org.lynchet.prescription.plan.Product;
import org.lynchet.prescription.plan.Seeding;
import org.lynchet.prescription.quantity.Count;
import org.lynchet.prescription.quantity.Length;
import org.lynchet.prescription.quantity.LengthUnit;
import org.lynchet.prescription.quantity.SeedingRate;
import org.lynchet.prescription.response.BorderAdvice.Choice;
import org.lynchet.prescription.response.BorderAdvice.Proposal;
import org.lynchet.prescription.response.BorderAdvice.Side;

/** Says what to plant on the border of one tall strip, with the block for the plan file. */
final class BorderText {
  /** Stands where the plan names no other product of the crop. */
  private static final String ANY_PRODUCT = "short-stature";

  private final Plan plan;
  private final BorderAdvice advice;
  private final StringBuilder text = new StringBuilder();

  private BorderText(Plan plan, BorderAdvice advice) {
    this.plan = plan;
    this.advice = advice;
  }

  static String of(Plan plan, BorderAdvice advice) {
    BorderText border = new BorderText(plan, advice);
    border.table();
    border.proposal();
    return border.text.toString();
  }

  private void table() {
    line(
        "A short-stature product of %s on the border of strip %d, %s: typical yields",
        plan.shownUnits().written(new Length(advice.shortHeightMetres(), LengthUnit.METRE)),
        advice.strip(),
        advice.crop());
    line(
        "%-24s %4s %20s %18s %15s %10s",
        "SIDE", "ROWS", "SHORT CROP ABSORBED", "SHORT CROP YIELD", "TALL CROP YIELD", "LAND");
    for (Side side : advice.sides()) {
      for (Choice choice : side.choices()) {
        line(
            "%-24s %4d %20.3f %18.3f %15.3f %+10.4f%s",
            choice.rows() == 0 ? name(side) + ", " + side.shortCrop() : "",
            choice.rows(),
            choice.shortLight(),
            choice.shortYield(),
            choice.tallYield(),
            choice.landGain(),
            choice.rows() == side.best() ? " <-" : "");
      }
    }
  }

  private static String name(Side side) {
    return (side.left() ? "left" : "right") + " (" + side.facing() + ")";
  }

  private void proposal() {
    Proposal proposal = advice.proposal();
    for (Side side : advice.sides()) {
      line("Best on the %s side: %s.", name(side), Count.of(side.best(), "row"));
    }
    line("The rule: %s,", BorderChoice.RULE);
    line("  %s.", BorderChoice.NO_GAIN);
    if (differ()) {
      line("The two sides differ because the sun stands on one of them.");
    }
    if (proposal == null) {
      line("For yield alone no border rows of a short-stature product are worth it.");
    } else {
      line(
          "For strips[%d] of the plan, %+.2f %% for the land (the rate is yours to choose):",
          advice.strip() - 1, 100 * proposal.landGain());
      line(
          "    border: {rows: %d, product: %s, rate: %s, sides: %s}",
          proposal.rows(), product(), rate(), proposal.sides());
    }
    line("");
  }

  private boolean differ() {
    return advice.sides().stream().map(Side::best).distinct().count() > 1;
  }

  private PlannedStrip strip() {
    return plan.strips().get(advice.strip() - 1);
  }

  /** The border's product if the plan has one, else another product of the crop. */
  private String product() {
    String centre = strip().centre().product();
    Set<String> others = new LinkedHashSet<>();
    PlannedStrip.Border border = strip().border();
    if (border != null) {
      others.add(border.seeding().product());
    }
    plan.products().values().stream()
        .filter(product -> product.crop().equals(advice.crop()))
        .map(Product::name)
        .forEach(others::add);
    others.remove(centre);
    return quoted(others.stream().findFirst().orElse(ANY_PRODUCT));
  }

  private String rate() {
    PlannedStrip.Border border = strip().border();
    Seeding seeding = border == null ? strip().centre() : border.seeding();
    SeedingRate everywhere = seeding.everywhere();
    if (everywhere != null) {
      return rate(everywhere);
    }
    return seeding.byManagementZone().entrySet().stream()
        .map(
            (Map.Entry<String, SeedingRate> zone) ->
                quoted(zone.getKey()) + ": " + rate(zone.getValue()))
        .collect(Collectors.joining(", ", "{", "}"));
  }

  private static String rate(SeedingRate rate) {
    double seeds = rate.seeds();
    String number =
        seeds == Math.rint(seeds)
            ? String.format(Locale.ROOT, "%.0f", seeds)
            : String.format(Locale.ROOT, "%s", seeds);
    return number + " " + rate.unit();
  }

  /** A name as YAML takes it inside braces. */
  private static String quoted(String name) {
    return name.matches("[A-Za-z][A-Za-z0-9_.-]*") ? name : '"' + escaped(name) + '"';
  }

  private static String escaped(String name) {
    return name.replace("\\", "\\\\").replace("\"", "\\\"");
  }

  private void line(String format, Object... values) {
    text.append(String.format(Locale.ROOT, format, values).stripTrailing()).append('\n');
  }
}
