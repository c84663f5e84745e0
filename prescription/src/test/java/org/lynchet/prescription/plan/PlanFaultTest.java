package org.lynchet.prescription.plan;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.lynchet.formats.Fault;

/** Goes through what can be wrong in a plan, section by section. */
class PlanFaultTest {
  @TempDir Path folder;

  private static FaultCase row(
      String find, String replacement, String key, String what, String advice) {
    return new FaultCase(find, replacement, key, what, advice);
  }

  static List<FaultCase> keysAndNames() {
    String longest = "a".repeat(64);
    return List.of(
        row("repair:", "§repiar:", "field.repiar", "not known; did you mean 'repair'?", "repair"),
        row("hoppers: row", "§hopper: row", "machines.corn-planter.hopper", "'hoppers'?", "rows,"),
        row("date:", "§note:", "note", "the key 'note' is not known", "headland, strips, products"),
        row(
            "  name: Sandhill East\n  bound",
            "  §bound",
            "field",
            "'name' is missing",
            "field.name"),
        row(
            "kind: planter\n    rows: 12",
            "§kind: planter",
            "machines.corn-planter",
            "'rows' is missing",
            "corn-planter.rows"),
        row("Sandhill East", "§[a, b]", "field.name", "a list stands", "1 to 64 printable"),
        row("Sandhill East", "§''", "field.name", "'' is an empty name", "1 to 64"),
        row(" Sandhill East", "§", "field.name", "nothing stands", "1 to 64"),
        row("Sandhill East", "§no", "field.name", "means yes or no", "put it in quotes"),
        row("Sandhill East", "§" + longest + "b", "field.name", "is too long", "1 to 64"),
        row("Sandhill East", "§' a'", "field.name", "begins or ends with a blank", "no blank"),
        row("Sandhill East", "§\"a\\tb\"", "field.name", "'a\\u0009b' has a char", "printable"),
        row("Sandhill East", "§\"a\\u202Eb\"", "field.name", "cannot be printed", "printable"),
        row("  cultivator:", "  §'':", "machines.", "'' is an empty name", "1 to 64"),
        row("crop: soybean", "crop: §Soybean", "strips[1].crop", "cannot be a crop", "lower case"),
        row("crop: soybean", "crop: §söja", "strips[1].crop", "cannot be a crop", "a to z, digits"),
        row("crop: soybean", "crop: §con", "strips[1].crop", "cannot be a crop", "a device"),
        row("zone, els", "§{}, els", "field.management-zones.attribute", "keys with", "1 to 64"),
        row("bean-2.4", "§" + "ä".repeat(21), "strips[1].centre.product", "42 bytes", "40 bytes"));
  }

  @ParameterizedTest
  @MethodSource
  void keysAndNames(FaultCase row) throws IOException {
    row.check(folder);
  }

  static List<FaultCase> quantities() {
    String spacing = "machines.corn-planter.row-spacing";
    String rate = "headland.rate";
    return List.of(
        row("30 in", "§30", spacing, "'30' has no unit", "in, ft, m, cm, mm"),
        row("30 in", "§'30'", spacing, "'30' has no unit", "in, ft, m, cm, mm"),
        row("30 in", "§in", spacing, "'in' is not a length", "write it like 30 in"),
        row("30 in", "§30 inches", spacing, "'inches'", "write 'in' instead of 'inches'"),
        row("30 in", "§30\"", spacing, "a unit that is not read", "write 'in' instead"),
        row("30 in", "§30 yd", spacing, "not read: 'yd'", "in, ft, m, cm, mm"),
        row("30 in", "§30 ac", spacing, "is an area, where a length", "in, ft, m, cm, mm"),
        row("8 km/h", "§8 kph", "machines.corn-planter.speed", "'kph'", "write 'km/h' instead"),
        row("8 km/h", "§5 miles per hour", "machines.corn-planter.speed", "unit", "write 'mph'"),
        row("8 km/h", "§8 m", "machines.corn-planter.speed", "is a length, where a speed", "mph"),
        row("0.5 min", "§30 seconds", "machines.corn-planter.turn-time", "unit", "write 's'"),
        row("0.5 min", "§0.5", "machines.corn-planter.turn-time", "has no unit", "s, min"),
        row("70 %", "§0.7", "machines.corn-planter.efficiency", "has no unit", "1 % to 100 %"),
        row("30 in", "§-30 in", spacing, "out of range", "5 cm to 200 m"),
        row("30 in", "§0 in", spacing, "'0 in' is out of range", "5 cm to 200 m"),
        row("30 in", "§1e999 in", spacing, "'1e999 in' is out of range", "5 cm to 200 m"),
        row("30 in", "§.inf", spacing, "'.inf' is not a length", "write it like 30 in"),
        row("30 in", "§NaN in", spacing, "is not a length", "write it like 30 in"),
        row("30 in", "§0x1E in", spacing, "not read", "in, ft"),
        row(" 30 in", "§", spacing, "nothing is not a length", "in, ft"),
        row("30 in", "§[30 in]", spacing, "a list is not a length", "in, ft"),
        row("0.01 ac", "§0.01 acre", "field.minimum-piece", "'acre'", "write 'ac'"),
        row("0.01 ac", "§10 m", "field.minimum-piece", "a length, where an area", "ac, ha, m2"),
        row("0.01 ac", "§-1 m2", "field.minimum-piece", "out of range", "0 m2 to 100 ha"),
        row(
            "32000 seeds/ac",
            "§32000 seeds/acre",
            rate,
            "'seeds/acre'",
            "write 'seeds/ac' instead"),
        row(
            "32000 seeds/ac",
            "§32000 Seeds per Acre",
            rate,
            "not read",
            "write 'seeds/ac' instead"),
        row("32000 seeds/ac", "§32000 ac", rate, "an area, where a seeding rate", "seeds/ha"),
        row("32000 seeds/ac", "§32000 kernels/ac", rate, "'kernels/ac'", "write 'seeds/ac'"),
        row("32000 seeds/ac", "§32000", rate, "has no unit", "seeds/ac, seeds/ha, seeds/m2"),
        row("32000 seeds/ac", "§32,000 seeds/ac", rate, "groups of digits", "digits together"),
        row("32000 seeds/ac", "§32 000 seeds/ac", rate, "groups of digits", "digits together"),
        row("32000 seeds/ac", "§1.032.000 seeds/ac", rate, "groups of digits", "digits together"),
        row("32000 seeds/ac", "§-1 seeds/ac", rate, "out of range", "0 to 10000 seeds/m2"),
        row("95 %", "§95", "products.tall-108.germination", "has no unit", "its unit: %"),
        row("95 %", "§95 percent", "products.tall-108.germination", "not read", "write '%'"),
        row("95 %", "§0 %", "products.tall-108.germination", "grows nothing", "above 0 %"),
        row(
            "95 %",
            "§101 %", "products.tall-108.germination", "'101 %' is out of range", "0 % to 100 %"),
        row("3 %}", "§-3 %}", "products.tall-108.reserve", "out of range", "0 % to 100 %"),
        row("1 in}", "§0 in}", "fit.tolerance", "'0 in' is out of range", "1 mm to 1 m"));
  }

  @ParameterizedTest
  @MethodSource
  void quantities(FaultCase row) throws IOException {
    row.check(folder);
  }

  static List<FaultCase> forecast() {
    String tall = "forecast.canopies.tall-108.";
    return List.of(
        row("2.5 m,", "§0 m,", tall + "height", "'0 m' is out of range", "5 cm to 6 m"),
        row("67 in}", "§tall}", "forecast.canopies.short-106.height", "not a length", "30 in"),
        row("index: 5.5", "index: §0", tall + "leaf-area-index", "out of range", "0.1 to 15"),
        row("ction: 0.6", "ction: §65 %", tall + "extinction", "not a number", "0.1 to 1.5"),
        row("2027-05-04", "§05-04", tall + "planting", "'05-04' is not a date", "2027-04-20"),
        row(
            "maturity: 2027-09-12",
            "maturity: §2027-05-04",
            tall + "maturity",
            "the season ends before it starts",
            "a day after planting, 2027-05-04"),
        row("2027-06-30", "§June", tall + "half-leaf", "neither a day nor a share", "43 %"),
        row("2027-06-30", "§2027-13-30", tall + "half-leaf", "not a date", "2027-04-20"),
        row("f: 60 %", "f: §160 %", tall + "full-leaf", "'160 %' is out", "0 % to 100 %"),
        row(
            "from: 82.5 %",
            "from: §60 %",
            tall + "decline-from",
            "decline-from is not after full-leaf",
            "half-leaf, then full-leaf"),
        row("season: dry", "season: §arid", "forecast.season", "not known", "dry, normal, wet"),
        row("step: 10 min", "step: §90 min", "forecast.step", "'90 min' is out", "1 min to 60 min"),
        row("[60.5 %, ", "§[", "forecast.clearness", "has 11 values", "twelve: January"),
        row("60.5 %", "§0 %", "forecast.clearness[0]", "'0 %' is out", "1 % to 100 %"),
        row("low: 0.1", "low: §-1", "forecast.response.soybean.low", "out of range", "0 to 3"),
        row(
            "{typical: 0.3, low: 0.1",
            "§{typical: 0.3, low: 0.4",
            "forecast.response.soybean",
            "not in rising order",
            "low at most typical"));
  }

  @ParameterizedTest
  @MethodSource
  void forecast(FaultCase row) throws IOException {
    row.check(folder);
  }

  static List<FaultCase> budget() {
    String corn = "budget.crops.corn.";
    String low = "§{low: -3 %, typical: 4.5 %";
    return List.of(
        row("low: 150 /t", "low: §-150 /t", corn + "price.low", "'-150 /t' is out", "0.01 to"),
        row("low: 150 /t", "low: §0 /t", corn + "price.low", "'0 /t' is out", "0.01 to"),
        row("price: 10.5 /bu", "price: §10.5", "budget.crops.soybean.price", "has no unit", "4.20"),
        row(
            "{price: 10.5 /bu, yield: 52.5 bu/ac}",
            "§{price: 10.5 /bu}",
            "budget.crops.soybean",
            "the key 'yield' is missing",
            "add it"),
        row("52.5 bu/ac", "§0 bu/ac", "budget.crops.soybean.yield", "'0 bu/ac' is out", "0.1 to"),
        row(
            "{price: 10.5 /bu",
            "§{price: 380 /t",
            "budget.crops.soybean",
            "in different units of grain",
            "all in bushels"),
        row(
            low.substring(1),
            low.replace("-3", "5"),
            corn + "yield-change",
            "in rising order",
            "low at"),
        row(
            "low: -3 %",
            "low: §-91 %", corn + "yield-change.low", "'-91 %' is out of", "-90 % to 200 %"),
        row("low: 120 /h", "low: §-1 /h", "budget.machine-cost.low", "out of range", "0 to 10000"),
        row("e: 14.5 %", "e: §61 %", corn + "moisture", "'61 %' is out", "0 % to 60 %"),
        row("loss: 0 %", "loss: §11 %", corn + "handling-loss", "'11 %' is out", "0 % to 10 %"),
        row(
            "52.5 bu/ac",
            "§4 lb/ac",
            "budget.crops.soybean.yield",
            "'4 lb/ac' is out",
            "5 to 50000"),
        row(
            "curve: tested-rates",
            "curve: §linear",
            "budget.seeding-trials.short-106.curve",
            "not known",
            "parabola, exponential, tested-rates"),
        row("281 /unit", "§-281 /unit", "budget.seed.tall-108", "out of range", "/unit"),
        row("2.5 /ac", "§-2.5 /ac", "budget.extra-costs[0].cost", "out of range", "/field"),
        row("sprayings: 4", "sprayings: §0", "budget.sprayings", "out of range", "1 to 20"),
        row(
            "{rate: 35000 seeds/ac, yield: 11.7 t/ha}",
            "{rate: 35000 seeds/ac, yield: §11.7}",
            "budget.seeding-trials.tall-108[2].yield",
            "has no unit",
            "t/ha"));
  }

  @ParameterizedTest
  @MethodSource
  void budget(FaultCase row) throws IOException {
    row.check(folder);
  }

  static List<FaultCase> numbersWordsAndDates() {
    String rows = "machines.corn-planter.rows";
    return List.of(
        row("rows: 12", "rows: §12.5", rows, "'12.5' is not a whole number", "1 to 1000"),
        row("rows: 12", "rows: §0", rows, "out of range", "1 to 1000"),
        row("rows: 12", "rows: §-12", rows, "out of range", "1 to 1000"),
        row("rows: 12", "rows: §99999999999", rows, "out of range", "1 to 1000"),
        row("rows: 12", "rows: §'12'", rows, "a text, not a number", "remove the quotes"),
        row("rows: 12", "rows: §12 rows", rows, "not a number", "neither unit nor comma"),
        row("rows: 12", "rows: §012", rows, "'012' is not a number", "plain digits"),
        row("rows: 12", "rows: §1_2", rows, "'1_2' is not a number", "plain digits"),
        row("rows: 12", "rows: §true", rows, "not a number", "a whole number"),
        row(
            "passes: 2\n  planted",
            "passes: §0\n  planted",
            "headland.passes",
            "range",
            "1 to 1000"),
        row("80000", "§0", "products.tall-108.seeds-per-unit", "out of range", "1 to 1000000000"),
        row(
            "row-unit",
            "§row-units",
            "machines.corn-planter.hoppers",
            "mean 'row-unit'",
            "central"),
        row("kind: toolbar", "kind: §plow", "machines.cultivator.kind", "not known", "planter, sp"),
        row(
            "sides: left",
            "sides: §west",
            "strips[0].border.sides",
            "not known",
            "both, left, right"),
        row("where: ends", "where: §end", "headland.where", "mean 'ends'?", "all-around, ends"),
        row("where: ends", "where: §[ends]", "headland.where", "not known", "all-around, ends"),
        row("angle: 40", "angle: §0", "headland.end-angle", "out of range", "more than 0"),
        row("angle: 40", "angle: §90", "headland.end-angle", "out of range", "less than 90"),
        row("angle: 40", "angle: §-5", "headland.end-angle", "out of range", "such as 30"),
        row("angle: 40", "angle: §40°", "headland.end-angle", "not a number", "less than 90"),
        row("waterways.geojson", "§{}", "field.waterways", "keys with", "1 to 1024"),
        row("strip-edge", "§edge", "guidance.ab-line-is", "not known", "pass-centre, strip-edge"),
        row(
            "repair: true",
            "repair: §'true'",
            "field.repair",
            "neither true nor",
            "without quotes"),
        row("geojson, sh", "§dxf, sh", "handoff.formats[0]", "'dxf' is not", "shapefile, geojson"),
        row("version: 3.3", "version: §4.4", "handoff.task-data.version", "'4.4' is no", "4.3 or"),
        row("rates: 20}", "rates: §0}", "handoff.limits.rates", "out of range", "1 to 1000000"),
        row("polygons: 500", "polygons: §5 m", "handoff.limits.polygons", "not a num", "whole"),
        row("simplify: 2 cm", "simplify: §2 m", "handoff.simplify", "'2 m' is out", "1 mm to 1 m"),
        row("papers: true", "papers: §maybe", "handoff.papers", "neither true nor", "false"),
        row("north: 30 ft", "north: §30", "setback.sides.north", "no unit", "0 m to 2 km"),
        row("1000 m,", "§2001 m,", "setback.sides.south", "'2001 m' is out", "0 m to 2 km"),
        row("50 ft", "§-50 ft", "setback.neighbours.creek.distance", "out of", "0 m to 2 km"),
        row("[-94.2, 43.6]", "§[1, 2, 3]", "field.entrance", "3 numbers", "longitude"),
        row("[geojson, shapefile]", "§[geojson, geojson]", "handoff.formats", "twice", "once"),
        row("[geojson, shapefile]", "§[]", "handoff.formats", "empty", "at least one"),
        row("[geojson, shapefile]", "§geojson", "handoff.formats", "where a list is", "[...]"),
        row(
            "2027-04-20",
            "§2027-02-30",
            "date",
            "'2027-02-30' is not a date",
            "write it like 2027-04-20"),
        row("2027-04-20", "§20.4.2027", "date", "is not a date", "year-month-day"),
        row("2027-04-20", "§1899-12-31", "date", "is not a date", "1900-01-01 to 2155-12-31"));
  }

  @ParameterizedTest
  @MethodSource
  void numbersWordsAndDates(FaultCase row) throws IOException {
    row.check(folder);
  }

  /** A count may be written as a decimal number if it is whole, as in JSON Schema. */
  @Test
  void aWholeDecimalNumberIsACount() throws IOException {
    String text = PlanTexts.FULL.replace("rows: 12\n", "rows: 12.0\n");
    assertThat(PlanTexts.faults(folder, text)).isEmpty();
  }

  /** In braces a comma ends the value, so YAML itself takes the number apart. */
  @Test
  void aThousandsCommaInBraces() throws IOException {
    List<Fault> faults =
        PlanTexts.faults(folder, PlanTexts.FULL.replace("rate: 34000", "rate: 34,000"));
    assertThat(faults).hasSize(2);
    assertThat(faults.get(0).what()).isEqualTo("'34' has no unit");
    assertThat(faults.get(1).where()).contains("strips[0].centre.000 seeds/ac");
    assertThat(faults.get(1).next()).contains("write thousands without a comma");
  }
}
