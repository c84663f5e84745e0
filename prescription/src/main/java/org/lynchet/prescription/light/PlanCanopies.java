package org.lynchet.prescription.light;

import java.time.LocalDate;
import java.time.MonthDay;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.lynchet.prescription.defaults.Defaults;
import org.lynchet.prescription.fault.Faults;
import org.lynchet.prescription.plan.ForecastChoices.PlannedCanopy;
import org.lynchet.prescription.plan.LeafCurve;
import org.lynchet.prescription.plan.Plan;
import org.lynchet.prescription.plan.SeasonTime;
import org.lynchet.prescription.quantity.Length;

/**
 * Finds how the canopy of a product grows: as the plan says, else as the defaults of its crop do.
 */
final class PlanCanopies {
  private static final int HALF_A_YEAR_IN_MONTHS = 6;
  private static final int LONGEST_SEASON_DAYS = 366;
  private static final PlannedCanopy NOTHING = new PlannedCanopy(null, null, null, null, null);

  private final Plan plan;
  private final Defaults defaults;
  private final boolean south;
  private final Faults faults;
  private final Map<String, Optional<CanopyTraits>> found = new LinkedHashMap<>();
  private final Set<String> refused = new HashSet<>();

  PlanCanopies(Plan plan, Defaults defaults, boolean south, Faults faults) {
    this.plan = plan;
    this.defaults = defaults;
    this.south = south;
    this.faults = faults;
  }

  /** The canopy of a product; nothing, with its fault told once, if it is not known. */
  Optional<CanopyTraits> find(String crop, String product) {
    return found.computeIfAbsent(product, name -> read(crop, product));
  }

  private Optional<CanopyTraits> read(String crop, String product) {
    PlannedCanopy ofCrop = planned(crop);
    PlannedCanopy ofProduct = planned(product);
    Length height = first(ofProduct.height(), ofCrop.height());
    Double leaf = first(ofProduct.leafAreaIndex(), ofCrop.leafAreaIndex());
    Double extinction = first(ofProduct.extinction(), ofCrop.extinction());
    LocalDate planting = first(ofProduct.planting(), ofCrop.planting());
    LocalDate maturity = first(ofProduct.maturity(), ofCrop.maturity());
    boolean whole =
        Stream.of(height, leaf, extinction, planting, maturity).allMatch(value -> value != null);
    String known = defaults.nameOf(crop);
    boolean hasDefaults = defaults.crops().contains(known);
    if (!hasDefaults && !whole) {
      refuse(crop);
      return Optional.empty();
    }
    String key = "canopies." + known + ".";
    String shape = hasDefaults ? key : "canopies.soybean.";
    LocalDate from = planting == null ? usualPlanting(key) : planting;
    LocalDate to =
        maturity == null
            ? from.plusDays((long) defaults.number(key + "days-to-maturity"))
            : maturity;
    String name = ofProduct.equals(NOTHING) ? crop : product;
    if (!isSeason(from, to, name)) {
      return Optional.empty();
    }
    LeafCurve curve = ofProduct.leaf().or(ofCrop.leaf());
    double half = share(curve.half(), shape + "half-leaf", from, to);
    double full = share(curve.full(), shape + "full-leaf", from, to);
    double decline = share(curve.declineFrom(), shape + "decline-from", from, to);
    if (!isLeafCurve(half, full, decline, name)) {
      return Optional.empty();
    }
    Double left = curve.leftAtMaturity();
    return Optional.of(
        new CanopyTraits(
            height == null ? defaults.number(key + "height-metres") : height.metres(),
            leaf == null ? defaults.number(key + "leaf-area-index") : leaf,
            extinction == null ? defaults.number(key + "extinction") : extinction,
            from,
            to,
            half,
            full,
            decline,
            left == null ? defaults.number(shape + "leaf-at-maturity") : left,
            defaults.number(shape + "width-per-height")));
  }

  private PlannedCanopy planned(String name) {
    return plan.forecast().canopies().getOrDefault(name, NOTHING);
  }

  private static <T> @Nullable T first(@Nullable T one, @Nullable T other) {
    return one == null ? other : one;
  }

  private LocalDate usualPlanting(String key) {
    LocalDate date = plan.date();
    LocalDate inNorth =
        MonthDay.parse("--" + defaults.text(key + "planting"))
            .atYear(date == null ? defaults.whole("forecast.year") : date.getYear());
    return south ? inNorth.plusMonths(HALF_A_YEAR_IN_MONTHS) : inNorth;
  }

  private double share(@Nullable SeasonTime own, String key, LocalDate from, LocalDate to) {
    return own == null ? defaults.number(key) : own.share(from, to);
  }

  /** Whether the plan's times and those of the defaults are in order together. */
  private boolean isLeafCurve(double half, double full, double decline, String name) {
    if (0 < half && half < full && full < decline && decline < 1) {
      return true;
    }
    if (refused.add(name)) {
      faults.add(
          String.format(
              Locale.ROOT,
              "the leaf area of %s comes and goes out of order: half-leaf at %.1f %% of the season,"
                  + " full-leaf at %.1f %%, decline-from at %.1f %%",
              name,
              100 * half,
              100 * full,
              100 * decline),
          plan.place("forecast.canopies." + name),
          "planting, half-leaf, full-leaf, decline-from and maturity in this order; those that the"
              + " plan leaves out are the crop's defaults",
          "correct one of them, or give them all");
    }
    return false;
  }

  private boolean isSeason(LocalDate from, LocalDate to, String name) {
    long days = to.toEpochDay() - from.toEpochDay();
    if (days >= 1 && days <= LONGEST_SEASON_DAYS) {
      return true;
    }
    if (!refused.add(name)) {
      return false;
    }
    faults.add(
        days < 1
            ? "the season of " + name + " ends on " + to + ", before it starts on " + from
            : "the season of " + name + " is longer than a year: " + from + " to " + to,
        plan.place("forecast.canopies." + name),
        "maturity 1 to " + LONGEST_SEASON_DAYS + " days after planting",
        "give planting and maturity, of one season");
    return false;
  }

  private void refuse(String crop) {
    if (!refused.add(crop)) {
      return;
    }
    faults.add(
        "nothing is known of the canopy of " + crop,
        plan.place("forecast.canopies"),
        "defaults are there for " + String.join(", ", defaults.crops()),
        "add forecast.canopies."
            + crop
            + " with height, leaf-area-index, extinction, planting and maturity");
  }
}
