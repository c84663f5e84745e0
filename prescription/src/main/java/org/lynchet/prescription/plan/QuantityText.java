package org.lynchet.prescription.plan;

import java.util.Arrays;
import java.util.Optional;
import java.util.function.BiFunction;
import java.util.function.ToDoubleFunction;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.lynchet.prescription.plan.PlanNode.Scalar;
import org.lynchet.prescription.quantity.Area;
import org.lynchet.prescription.quantity.AreaUnit;
import org.lynchet.prescription.quantity.Length;
import org.lynchet.prescription.quantity.LengthUnit;
import org.lynchet.prescription.quantity.SeedingRate;
import org.lynchet.prescription.quantity.Speed;
import org.lynchet.prescription.quantity.SpeedUnit;
import org.lynchet.prescription.quantity.Time;
import org.lynchet.prescription.quantity.TimeUnit;

/**
 * Reads quantities, a number and a unit, within a range that holds every real farm: a slip of the
 * pen must neither divide a field into millions of passes nor overflow a column.
 *
 * @param <T> the quantity
 */
final class QuantityText<T> implements ValueReader<T> {
  /** A width of a machine or the spacing of its rows. */
  static final ValueReader<Length> LENGTH =
      new QuantityText<>(
          UnitKind.LENGTH, QuantityText::length, Length::metres, 0.05, 200, "5 cm to 200 m");

  /** The height of a crop. */
  static final ValueReader<Length> HEIGHT =
      new QuantityText<>(
          UnitKind.LENGTH, QuantityText::length, Length::metres, 0.05, 6, "5 cm to 6 m");

  /** How far spraying stays away from something. */
  static final ValueReader<Length> SETBACK =
      new QuantityText<>(
          UnitKind.LENGTH, QuantityText::length, Length::metres, 0, 2000, "0 m to 2 km");

  /** How far a width may be off. */
  static final ValueReader<Length> TOLERANCE =
      new QuantityText<>(
          UnitKind.LENGTH, QuantityText::length, Length::metres, 0.001, 1, "1 mm to 1 m");

  /** The area of a small piece. */
  static final ValueReader<Area> AREA =
      new QuantityText<>(
          UnitKind.AREA, QuantityText::area, Area::squareMetres, 0, 1e6, "0 m2 to 100 ha");

  /** A seeding rate; 0 means that nothing is planted. */
  static final ValueReader<SeedingRate> RATE =
      new QuantityText<>(
          UnitKind.RATE,
          QuantityText::rate,
          SeedingRate::perSquareMetre,
          0,
          SeedingRate.MOST_PER_SQUARE_METRE,
          SeedingRate.ALLOWED);

  /** A seeding rate, or the stand that is wanted of it. */
  static final ValueReader<PlantingRate> PLANTING_RATE =
      new QuantityText<>(
          UnitKind.PLANTING_RATE,
          PlantingRate::of,
          PlantingRate::perSquareMetre,
          0,
          SeedingRate.MOST_PER_SQUARE_METRE,
          SeedingRate.ALLOWED);

  /** The share of water in grain. */
  static final ValueReader<Double> MOISTURE =
      new QuantityText<>(
          UnitKind.PERCENT, (number, unit) -> number / 100, share -> share, 0, 0.6, "0 % to 60 %");

  /** The share of grain that is lost in handling. */
  static final ValueReader<Double> HANDLING_LOSS =
      new QuantityText<>(
          UnitKind.PERCENT, (number, unit) -> number / 100, share -> share, 0, 0.1, "0 % to 10 %");

  /** A share as a fraction of 1. */
  static final ValueReader<Double> SHARE =
      new QuantityText<>(
          UnitKind.PERCENT, (number, unit) -> number / 100, share -> share, 0, 1, "0 % to 100 %");

  /** The share of the time that a machine works: none would never be done. */
  static final ValueReader<Double> EFFICIENCY =
      new QuantityText<>(
          UnitKind.PERCENT,
          (number, unit) -> number / 100,
          share -> share,
          0.01,
          1,
          "1 % to 100 %");

  /** The speed of a machine in the row. */
  static final ValueReader<Speed> SPEED =
      new QuantityText<>(
          UnitKind.SPEED,
          QuantityText::speed,
          Speed::metresPerHour,
          500,
          50_000,
          "0.5 km/h to 50 km/h");

  /** The time of a turn. */
  static final ValueReader<Time> TIME =
      new QuantityText<>(
          UnitKind.TIME, QuantityText::time, Time::hours, 0, 1.0 / 6, "0 s to 10 min");

  /** The time between two looks at the sun. */
  static final ValueReader<Time> STEP =
      new QuantityText<>(
          UnitKind.TIME, QuantityText::time, Time::hours, 1.0 / 60, 1, "1 min to 60 min");

  private static final Pattern FORM = Pattern.compile("(" + NumberText.FORM + ")\\s*([^0-9.].*)");

  /** Digits in groups, such as 32,000 or 32 000; a single point is that of a decimal number. */
  private static final Pattern GROUPED =
      Pattern.compile(
          "[-+]?[0-9]{1,3}((\\h*[,_'\u2019\\h]\\h*[0-9]{3})+|(\\.[0-9]{3}){2,})(?![0-9]).*");

  private final UnitKind kind;
  private final BiFunction<Double, String, T> make;
  private final ToDoubleFunction<T> inSi;
  private final double least;
  private final double most;
  private final String range;

  /**
   * A reader of quantities in a range, both ends with it.
   *
   * @param inSi the number that is held against the range
   * @param range the range in words
   */
  QuantityText(
      UnitKind kind,
      BiFunction<Double, String, T> make,
      ToDoubleFunction<T> inSi,
      double least,
      double most,
      String range) {
    this.kind = kind;
    this.make = make;
    this.inSi = inSi;
    this.least = least;
    this.most = most;
    this.range = range;
  }

  @Override
  public Optional<T> read(PlanNode node, PlanFaults faults) {
    String text = node instanceof Scalar scalar && isShort(scalar.text()) ? scalar.text() : "";
    if (GROUPED.matcher(text).matches()) {
      String next = "write the digits together, with a point before decimals: 32000";
      return refuse(node, faults, node.kind() + " has a number in groups of digits", next);
    }
    Matcher form = FORM.matcher(text);
    if (!form.matches()) {
      return refuse(node, faults, whyNoQuantity(node, text), "write it like " + kind.example());
    }
    String unit = form.group(5);
    if (!kind.symbols().contains(unit)) {
      return refuse(node, faults, whyNotUnit(node, unit), nextForUnit(unit));
    }
    T quantity = make.apply(Double.parseDouble(form.group(1)), unit);
    double si = inSi.applyAsDouble(quantity);
    boolean belowNothing = least >= 0 && text.startsWith("-");
    if (belowNothing || !(si >= least && si <= most)) {
      return refuse(node, faults, node.kind() + " is out of range", "correct the number");
    }
    return Optional.of(quantity);
  }

  /** Whether a text is short enough for a quantity, and for patterns that recurse. */
  private static boolean isShort(String text) {
    return text.length() <= 200;
  }

  private Optional<T> refuse(PlanNode node, PlanFaults faults, String what, String next) {
    String units = String.join(", ", kind.symbols());
    faults.add(node.place(), what, kind.noun() + ", " + range + ", with its unit: " + units, next);
    return Optional.empty();
  }

  private String whyNoQuantity(PlanNode node, String text) {
    boolean bare = text.matches(NumberText.FORM);
    return node.kind() + (bare ? " has no unit" : " is not " + kind.noun());
  }

  private String whyNotUnit(PlanNode node, String unit) {
    return UnitKind.find(unit)
        .map(other -> node.kind() + " is " + other.noun() + ", where " + kind.noun() + " is wanted")
        .orElse(node.kind() + " has a unit that is not read: " + Shown.quoted(unit));
  }

  private String nextForUnit(String unit) {
    return kind.findMeant(unit)
        .map(meant -> "write '" + meant + "' instead of " + Shown.quoted(unit))
        .orElse("use one of these units, like " + kind.example());
  }

  private static Length length(double amount, String symbol) {
    return new Length(
        amount,
        Arrays.stream(LengthUnit.values())
            .filter(unit -> unit.symbol().equals(symbol))
            .findFirst()
            .orElseThrow());
  }

  private static Area area(double amount, String symbol) {
    return new Area(amount, areaUnit(symbol));
  }

  private static SeedingRate rate(double seeds, String symbol) {
    return new SeedingRate(seeds, areaUnit(symbol.substring("seeds/".length())));
  }

  private static Speed speed(double amount, String symbol) {
    return new Speed(
        amount,
        Arrays.stream(SpeedUnit.values())
            .filter(unit -> unit.symbol().equals(symbol))
            .findFirst()
            .orElseThrow());
  }

  private static Time time(double amount, String symbol) {
    return new Time(
        amount,
        Arrays.stream(TimeUnit.values())
            .filter(unit -> unit.symbol().equals(symbol))
            .findFirst()
            .orElseThrow());
  }

  private static AreaUnit areaUnit(String symbol) {
    return Arrays.stream(AreaUnit.values())
        .filter(unit -> unit.symbol().equals(symbol))
        .findFirst()
        .orElseThrow();
  }
}
