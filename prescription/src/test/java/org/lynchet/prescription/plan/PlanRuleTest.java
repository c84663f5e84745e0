package org.lynchet.prescription.plan;

import static java.util.stream.Collectors.joining;
import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

/** Goes through what the parts of a plan must say of each other. */
class PlanRuleTest {
  @TempDir Path folder;

  private static FaultCase row(
      String find, String replacement, String key, String what, String advice) {
    return new FaultCase(find, replacement, key, what, advice);
  }

  static List<FaultCase> abLine() {
    String line = "{a: [-94.10210, 43.55120], b: [-94.09330, 43.55130]}";
    String key = "guidance.ab-line";
    String at = "through: [-94.1, 43.5]";
    return List.of(
        row(
            "[-94.10210, 43.55120]",
            "[§-194.1, 43.5]",
            key + ".a[0]",
            "not a longitude",
            "-180 to 180"),
        row(
            "[-94.10210, 43.55120]",
            "[43.55120, §-94.10210]",
            key + ".a[1]",
            "not a latitude",
            "they look swapped: longitude comes first"),
        row("[-94.10210, 43.55120]", "[1, §91]", key + ".a[1]", "not a latitude", "swapped"),
        row("[-94.10210, 43.55120]", "[-100, §91]", key + ".a[1]", "a latitude", "correct the"),
        row("[-94.10210, 43.55120]", "[§x, 43.5]", key + ".a[0]", "not a number", "longitude"),
        row(
            "[-94.10210, 43.55120]",
            "[§.nan, 43.5]",
            key + ".a[0]",
            "'.nan' is not a number",
            "longitude"),
        row("[-94.10210, 43.55120]", "§[-94.1]", key + ".a", "a position of 1 numbers", "brackets"),
        row("[-94.10210, 43.55120]", "§-94.1", key + ".a", "not a position", "longitude first"),
        row("-94.09330, 43.55130]", "-94.1021, 43.5512]", "", "", "")
            .at("[-94.1021, 43.5512]", key + ".b", "same point as A", "two different points"),
        row(line, "§{" + at + "}", key, "the key 'heading' is missing", "heading"),
        row(line, "§{heading: 3, a: [1, 2]}", key, "given in two forms", "heading: degrees"),
        row(line, "§{}", key, "is not given", "heading: degrees"),
        row(
            "ab-line: " + line,
            "ab-line: " + line + "\n  curve: §lines.csv",
            "guidance.curve",
            "an AB line and a curve are given",
            "one of ab-line and curve"),
        row(
            "ab-line: " + line + "\n  ab-line-is: strip-edge\n  placement: best",
            "curve: lines.csv\n  placement: §best",
            "guidance.placement",
            "along an AB line only",
            "fixed, with a curve"),
        row("ab-line: " + line, "curve: §{line: 1}", "guidance.curve", "'file' is missing", "file"),
        row(
            "ab-line: " + line,
            "curve: {file: lines.csv, line: §0}",
            "guidance.curve.line",
            "0",
            "1 to 10000"),
        row(line, "{" + at + ", heading: §360}", key + ".heading", "out of range", "write 0"),
        row(line, "{" + at + ", heading: §-1}", key + ".heading", "out of range", "less than 360"),
        row(line, "{" + at + ", heading: §N}", key + ".heading", "not a number", "clockwise"),
        row(line, "{" + at + ", heading: §9°}", key + ".heading", "not a number", "clockwise"));
  }

  @ParameterizedTest
  @MethodSource
  void abLine(FaultCase row) throws IOException {
    row.check(folder);
  }

  static List<FaultCase> placement() {
    String range = "{from: 350, to: 10.5, step: 5}";
    String headings = "guidance.headings";
    String shares = "guidance.wanted-shares";
    String all360 = IntStream.range(0, 361).mapToObj(i -> i * 0.5 + "").collect(joining(", "));
    return List.of(
        row("placement: best", "placement: §bset", "guidance.placement", "mean 'best'", "fixed"),
        row(range, "§[]", headings, "list is empty", "at least one"),
        row(range, "§north", headings, "where a list is wanted", "at least one"),
        row(range, "[0, §360]", headings + "[1]", "the heading is out of range", "write 0"),
        row(range, "[0, §-1]", headings + "[1]", "the heading is out of range", "add or take"),
        row(range, "[0, §E]", headings + "[1]", "not a number", "clockwise"),
        row(range, "§[5, 90, 5]", headings, "a heading is there twice", "remove one"),
        row(range, "§[" + all360 + "]", headings, "361 headings are too many", "at most 360"),
        row("step: 5", "step: §0", headings + ".step", "step is out of range", "0.01 to 180"),
        row("step: 5", "step: §-5", headings + ".step", "step is out of range", "0.01 to 180"),
        row("step: 5", "step: §1e9", headings + ".step", "step is out of range", "0.01 to 180"),
        row(range, "§{from: 0, to: 359, step: 0.5}", headings, "719 headings are", "wider step"),
        row(range, "§{from: 0, step: 5}", headings, "the key 'to' is missing", "headings.to"),
        row("to: 10.5", "to: §361", headings + ".to", "out of range", "less than 360"),
        row(
            "point-rows: 0",
            "point-rows: §-0.5",
            "guidance.weights.point-rows",
            "out of range",
            "a number, 0 to 1000"),
        row(
            "headland: 0.25",
            "headland: §1001",
            "guidance.weights.headland",
            "'1001' is out of range",
            "0 to 1000"),
        row("turn: 20 m2", "turn: §20", "guidance.weights.turn", "has no unit", "ac, ha, m2"),
        row("turn: 20 m2", "turn: §-1 m2", "guidance.weights.turn", "out of range", "0 m2"),
        row("corn: 40 %", "corn: §140 %", shares + ".corn", "'140 %' is out of range", "0 % to"));
  }

  @ParameterizedTest
  @MethodSource
  void placement(FaultCase row) throws IOException {
    row.check(folder);
  }

  static List<FaultCase> wantedShares() {
    String shares = "guidance.wanted-shares";
    return List.of(
        row("{corn: 40 %", "§{corn: 41 %", shares, "are 101.0 % together", "100 % together"),
        row(
            "{corn: 40 %, ",
            "{§korn: 0 %, corn: 40 %, ", shares + ".korn", "mean 'corn'", "strips"),
        row(
            "{corn: 40 %, soybean: 60 %}",
            "§{corn: 100 %}", shares, "soybean has no", "its share"));
  }

  @ParameterizedTest
  @MethodSource
  void wantedShares(FaultCase row) throws IOException {
    row.check(folder);
  }

  static List<FaultCase> budget() {
    String trials = "budget.seeding-trials";
    return List.of(
        row(
            "corn:\n      price",
            "§korn:\n      price",
            "budget.crops.korn",
            "no strip is of 'korn'; did you mean 'corn'?",
            "the crops of the strips: corn, soybean"),
        row(
            "seed: {tall-108",
            "seed: {§tall-109",
            "budget.seed.tall-109",
            "the plan has no product 'tall-109'; did you mean",
            "the products of the plan: tall-108, short-106"),
        row(
            "seeding-trials:\n    tall-108",
            "seeding-trials:\n    §bean-3",
            trials + ".bean-3",
            "no product 'bean-3'",
            "correct or remove it"),
        row(
            "- {rate: 25000 seeds",
            "§- {rate: 30000 seeds",
            trials + ".tall-108",
            "fewer than three rates",
            "add plots"),
        row(
            "- {rate: 25000 seeds/ac, yield: 9.9 t/ha",
            "§- {rate: 25000 seeds/ac, yield: 150 bu/ac",
            trials + ".tall-108",
            "in different units",
            "one unit"));
  }

  @ParameterizedTest
  @MethodSource
  void budget(FaultCase row) throws IOException {
    row.check(folder);
  }

  static List<FaultCase> machines() {
    String bean = "planted-by: bean-planter";
    String wanted = "a planter of the plan: corn-planter, bean-planter";
    return List.of(
        row(
            bean,
            "planted-by: §bean-plantr",
            "strips[1].planted-by",
            "mean 'bean-planter'?",
            wanted),
        row(bean, "planted-by: §seeder", "strips[1].planted-by", "no machine is called", wanted),
        row(bean, "planted-by: §sprayer", "strips[1].planted-by", "is not a planter", wanted),
        row(
            "planted-by: corn-planter\n  crop",
            "planted-by: §combine\n  crop",
            "headland.planted-by",
            "is not a planter",
            wanted),
        row("section: 10 ft", "section: §91 ft", "machines.sprayer.section", "wider", "the boom"),
        row("max: 45000", "max: §19999", "machines.corn-planter.rate-limits.max", "below", "min"),
        row(
            "min: 20000 seeds/ac, max: 45000 seeds/ac",
            "min: 0 seeds/ac, max: §0 seeds/ac",
            "machines.corn-planter.rate-limits.max",
            "is 0",
            "above 0"));
  }

  @ParameterizedTest
  @MethodSource
  void machines(FaultCase row) throws IOException {
    row.check(folder);
  }

  static List<FaultCase> strips() {
    String limits = "0, or 20000 seeds/ac to 45000 seeds/ac";
    return List.of(
        row("where: ends", "where: all-around", "", "", "")
            .at("end-angle: 40", "headland.end-angle", "lies all around", "add where: ends"),
        row("  where: ends\n", "", "", "", "")
            .at("end-angle: 40", "headland.end-angle", "lies all around", "remove end-angle"),
        row("34000 seeds/ac", "§45001 seeds/ac", "strips[0].centre.rate", "of planter", limits),
        row("34000 seeds/ac", "§4 seeds/m2", "strips[0].centre.rate", "rate-limits", limits),
        row("32000 seeds/ac", "§19999 seeds/ac", "headland.rate", "'corn-planter'", limits),
        row(
            "rate: 32000 seeds/ac",
            "rate: {low: 32000 seeds/ac, high: §46000 seeds/ac}",
            "headland.rate.high",
            "'46000 seeds/ac' is outside",
            limits),
        row("rows: 2,", "rows: §7,", "strips[0].border.rows", "half of the strip's 12", "1 to 6"),
        row("rows: 2,", "rows: §0,", "strips[0].border.rows", "out of range", "1 to"),
        row("hoppers: row-unit", "hoppers: central", "", "", "")
            .at("product: short-106", "strips[0].border.product", "one central hopper", "12 rows"),
        row(
            "product: bean-2.4",
            "product: §tall-108",
            "strips[1].centre.product",
            "'tall-108' is soybean here, corn in line",
            "one crop for a product"),
        row(
            "{crop: corn, seeds",
            "{crop: §maize, seeds",
            "products.tall-108.crop",
            "'tall-108' is maize here, corn in line",
            "one crop for a product"),
        row(
                "  management-zones: {file: soils.geojson, attribute: zone, elsewhere: low}\n",
                "",
                "",
                "",
                "")
            .at("{low: 0", "strips[1].centre.rate", "no management-zones", "attribute"),
        row(
            "{low: 0 seeds/ac, high: 37.5 seeds/m2}",
            "§{}",
            "strips[1].centre.rate",
            "nothing stands",
            "at least one name"),
        row(
            "{low: 0 seeds/ac",
            "{§'': 0 seeds/ac",
            "strips[1].centre.rate.",
            "empty name",
            "1 to"));
  }

  @ParameterizedTest
  @MethodSource
  void strips(FaultCase row) throws IOException {
    row.check(folder);
  }

  /** With 12 rows, six on a side leave no centre rows but fit, on one side as on both. */
  @ParameterizedTest(name = "{0}")
  @CsvSource({
    "border rows up to half of the strip, rows: 2, rows: 6",
    "the same on both sides, 'rows: 2, product: short-106, rate: 90000 seeds/ha, sides: left', "
        + "'rows: 6, product: short-106, rate: 90000 seeds/ha'",
    "a rate at its limit, 34000 seeds/ac, 45000 seeds/ac",
    "nothing planted whatever the limits, 34000 seeds/ac, 0 seeds/ac",
    "no minimum piece, 0.01 ac, 0 m2",
    "a product that is a number, bean-2.4, 1108",
    "a germination of all, 95 %, 100%",
    "a product's name of 40 bytes, bean-2.4, ääääääääääääääääääää"
  })
  void allowed(String name, String find, String replacement) throws IOException {
    assertThat(PlanTexts.FULL).contains(find);
    assertThat(PlanTexts.faults(folder, PlanTexts.FULL.replace(find, replacement))).isEmpty();
  }

  /** A limit in one unit holds for the same rate in another, whatever rounding does. */
  @Test
  void aLimitInAnotherUnit() throws IOException {
    String text =
        PlanTexts.FULL
            .replace("max: 45000 seeds/ac", "max: 9 seeds/m2")
            .replace("rate: 34000 seeds/ac", "rate: 90000 seeds/ha");
    assertThat(PlanTexts.faults(folder, text)).isEmpty();
  }

  /** A tank feeds all rows alike: another rate is possible, and so is another product by passes. */
  @Test
  void whatACentralHopperCan() throws IOException {
    String central = PlanTexts.FULL.replace("hoppers: row-unit", "hoppers: central");
    assertThat(PlanTexts.faults(folder, central.replace("product: short-106", "product: tall-108")))
        .isEmpty();
    String byPasses =
        central.replace("rows: 2,", "rows: 12,").replaceFirst("passes: 1", "passes: 3");
    assertThat(PlanTexts.faults(folder, byPasses)).isEmpty();
  }
}
