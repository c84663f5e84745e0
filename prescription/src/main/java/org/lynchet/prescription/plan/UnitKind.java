package org.lynchet.prescription.plan;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.lynchet.prescription.quantity.AreaUnit;
import org.lynchet.prescription.quantity.GrainUnit;
import org.lynchet.prescription.quantity.LengthUnit;
import org.lynchet.prescription.quantity.SpeedUnit;
import org.lynchet.prescription.quantity.TimeUnit;

/**
 * Knows the units of one kind that a plan may use, and other spellings of them.
 *
 * @param noun such as {@code a length}
 * @param symbols the units as they are written in a plan
 * @param example a quantity of this kind, well written
 */
record UnitKind(String noun, List<String> symbols, String example) {
  static final UnitKind LENGTH =
      of("a length", Arrays.stream(LengthUnit.values()).map(LengthUnit::symbol), "30 in");
  static final UnitKind AREA =
      of("an area", Arrays.stream(AreaUnit.values()).map(AreaUnit::symbol), "10 m2");
  static final UnitKind RATE =
      of(
          "a seeding rate",
          Arrays.stream(AreaUnit.values()).map(unit -> "seeds/" + unit.symbol()),
          "34000 seeds/ac");
  static final UnitKind PLANTING_RATE =
      of(
          "a seeding rate",
          Stream.of("seeds/", "plants/")
              .flatMap(of -> Arrays.stream(AreaUnit.values()).map(unit -> of + unit.symbol())),
          "34000 seeds/ac");
  static final UnitKind SPEED =
      of("a speed", Arrays.stream(SpeedUnit.values()).map(SpeedUnit::symbol), "5 mph");
  static final UnitKind TIME =
      of("a time", Arrays.stream(TimeUnit.values()).map(TimeUnit::symbol), "20 s");
  static final UnitKind PERCENT = of("a share", Stream.of("%"), "95 %");
  static final UnitKind GRAIN_PRICE =
      of(
          "a price of grain",
          Arrays.stream(GrainUnit.values())
              .filter(GrainUnit::isSold)
              .map(unit -> "/" + unit.symbol()),
          "4.20 /bu");
  static final UnitKind YIELD =
      of("a yield", Arrays.stream(GrainUnit.values()).map(GrainUnit::yieldSymbol), "186 bu/ac");
  static final UnitKind SEED_PRICE = of("a price of seed", Stream.of("/unit"), "280 /unit");
  static final UnitKind HOURLY_COST = of("a cost of time", Stream.of("/h"), "150 /h");
  static final UnitKind COST = of("a cost", Stream.of("/ac", "/ha", "/field"), "4.50 /ac");

  /** Spellings that people use, in lower case, and the one that a plan has. */
  private static final Map<String, String> OTHER_SPELLINGS =
      Map.ofEntries(
          Map.entry("inch", "in"),
          Map.entry("inches", "in"),
          Map.entry("\"", "in"),
          Map.entry("''", "in"),
          Map.entry("foot", "ft"),
          Map.entry("feet", "ft"),
          Map.entry("'", "ft"),
          Map.entry("metre", "m"),
          Map.entry("metres", "m"),
          Map.entry("meter", "m"),
          Map.entry("meters", "m"),
          Map.entry("acre", "ac"),
          Map.entry("acres", "ac"),
          Map.entry("hectare", "ha"),
          Map.entry("hectares", "ha"),
          Map.entry("m\u00b2", "m2"),
          Map.entry("m^2", "m2"),
          Map.entry("sqm", "m2"),
          Map.entry("mi/h", "mph"),
          Map.entry("mile/hour", "mph"),
          Map.entry("miles/hour", "mph"),
          Map.entry("kph", "km/h"),
          Map.entry("kmh", "km/h"),
          Map.entry("km/hour", "km/h"),
          Map.entry("sec", "s"),
          Map.entry("second", "s"),
          Map.entry("seconds", "s"),
          Map.entry("minute", "min"),
          Map.entry("minutes", "min"),
          Map.entry("hour", "h"),
          Map.entry("hr", "h"),
          Map.entry("bushel", "bu"),
          Map.entry("tonne", "t"),
          Map.entry("percent", "%"),
          Map.entry("per cent", "%"),
          Map.entry("pct", "%"));

  private static UnitKind of(String noun, Stream<String> symbols, String example) {
    return new UnitKind(noun, symbols.toList(), example);
  }

  /** The kind that a unit is of. */
  static Optional<UnitKind> find(String symbol) {
    return Stream.of(
            LENGTH,
            AREA,
            RATE,
            PLANTING_RATE,
            SPEED,
            TIME,
            PERCENT,
            GRAIN_PRICE,
            YIELD,
            SEED_PRICE,
            HOURLY_COST,
            COST)
        .filter(kind -> kind.symbols.contains(symbol))
        .findFirst();
  }

  /** The unit of this kind that somebody most likely meant. */
  Optional<String> findMeant(String written) {
    String lower = written.toLowerCase(Locale.ROOT).replaceAll("\\s+per\\s+|\\s*/\\s*", "/");
    String base = lower.substring(lower.lastIndexOf('/') + 1);
    String meant = OTHER_SPELLINGS.getOrDefault(base, base);
    String whole = OTHER_SPELLINGS.getOrDefault(lower, lower);
    String before = lower.substring(0, lower.lastIndexOf('/') + 1);
    return Stream.of(whole, meant, before + meant, "seeds/" + meant, "/" + meant)
        .filter(symbols::contains)
        .findFirst();
  }
}
