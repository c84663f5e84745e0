package org.lynchet.prescription.plan;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.BiFunction;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.lynchet.prescription.quantity.Area;
import org.lynchet.prescription.quantity.AreaUnit;
import org.lynchet.prescription.quantity.Length;
import org.lynchet.prescription.quantity.LengthUnit;
import org.lynchet.prescription.quantity.SeedingRate;

/** Reads quantities, a number and a unit, and says what is wrong with one. */
final class QuantityText {
  private static final Pattern FORM =
      Pattern.compile("([-+]?(?:[0-9]+(?:\\.[0-9]*)?|\\.[0-9]+)(?:[eE][-+]?[0-9]+)?)\\s*(.*)");

  private static final String LENGTH_UNITS =
      Arrays.stream(LengthUnit.values()).map(LengthUnit::symbol).collect(Collectors.joining(", "));
  private static final String AREA_UNITS =
      Arrays.stream(AreaUnit.values()).map(AreaUnit::symbol).collect(Collectors.joining(", "));
  private static final String RATE_UNITS =
      Arrays.stream(AreaUnit.values())
          .map(unit -> "seeds/" + unit.symbol())
          .collect(Collectors.joining(", "));

  private final PlanFaults faults;

  QuantityText(PlanFaults faults) {
    this.faults = faults;
  }

  /** A length above 0. */
  Optional<Length> length(PlanNode node, String key) {
    return read(
        node,
        key,
        "a length above 0 with its unit, one of " + LENGTH_UNITS + ": 30 in",
        false,
        (number, unit) ->
            unit(LengthUnit.values(), LengthUnit::symbol, unit).map(u -> new Length(number, u)));
  }

  /** An area of 0 or more. */
  Optional<Area> area(PlanNode node, String key) {
    return read(
        node,
        key,
        "an area of 0 or more with its unit, one of " + AREA_UNITS + ": 10 m2",
        true,
        (number, unit) ->
            unit(AreaUnit.values(), AreaUnit::symbol, unit).map(u -> new Area(number, u)));
  }

  /** A seeding rate of 0 or more. */
  Optional<SeedingRate> rate(PlanNode node, String key) {
    return read(
        node,
        key,
        "a rate of 0 or more with its unit, one of " + RATE_UNITS + ": 34000 seeds/ac",
        true,
        (number, unit) ->
            unit(AreaUnit.values(), u -> "seeds/" + u.symbol(), unit)
                .map(u -> new SeedingRate(number, u)));
  }

  /** A share of 0 or more, written in per cent. */
  Optional<Double> percent(PlanNode node, String key) {
    return read(
        node,
        key,
        "a share of 0 or more in per cent: 95 %",
        true,
        (number, unit) -> unit.equals("%") ? Optional.of(number / 100) : Optional.empty());
  }

  private <T> Optional<T> read(
      PlanNode node,
      String key,
      String allowed,
      boolean zeroAllowed,
      BiFunction<Double, String, Optional<T>> make) {
    String text = node instanceof PlanNode.Scalar scalar ? scalar.text() : "";
    Matcher form = FORM.matcher(text);
    if (!form.matches()) {
      faults.at(node, key, node.kind() + " is not a quantity", allowed, "write it like that");
      return Optional.empty();
    }
    double number = Double.parseDouble(form.group(1));
    String unit = form.group(2).strip();
    if (!Double.isFinite(number) || number < 0 || (number == 0 && !zeroAllowed)) {
      faults.at(node, key, "'" + text + "' is out of range", allowed, "check the number");
      return Optional.empty();
    }
    Optional<T> quantity = make.apply(number, unit);
    if (quantity.isEmpty()) {
      faults.at(node, key, whatOfUnit(text, unit), allowed, nextOfUnit(unit));
    }
    return quantity;
  }

  private static String whatOfUnit(String text, String unit) {
    return unit.isEmpty()
        ? "'" + text + "' has no unit"
        : "'" + text + "' has a unit that is not read here: '" + unit + "'";
  }

  private static String nextOfUnit(String unit) {
    if (unit.startsWith(",")) {
      return "write thousands without a comma";
    }
    String lower = unit.toLowerCase(Locale.ROOT);
    for (List<String> pair :
        List.of(
            List.of("acre", "ac"),
            List.of("hectare", "ha"),
            List.of("feet", "ft"),
            List.of("foot", "ft"),
            List.of("inch", "in"),
            List.of("metre", "m"),
            List.of("meter", "m"),
            List.of("\"", "in"),
            List.of("'", "ft"))) {
      if (lower.contains(pair.get(0))) {
        return "write '" + pair.get(1) + "' for '" + pair.get(0) + "'";
      }
    }
    return "write the number, a blank and one of these units";
  }

  private interface Symbol<U> {
    String of(U unit);
  }

  private static <U> Optional<U> unit(U[] units, Symbol<U> symbol, String text) {
    return Arrays.stream(units).filter(unit -> symbol.of(unit).equals(text)).findFirst();
  }
}
