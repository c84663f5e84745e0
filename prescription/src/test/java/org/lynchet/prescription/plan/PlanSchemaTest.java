package org.lynchet.prescription.plan;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import com.fasterxml.jackson.dataformat.yaml.YAMLMapper;
import com.networknt.schema.Error;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaLocation;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Iterator;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.lynchet.formats.Fault;

/** Holds the schema and the reader against each other, by a validator that is not ours. */
class PlanSchemaTest {
  private static final YAMLMapper YAML = new YAMLMapper();
  private static final JsonNode SCHEMA = parse(PlanSchema.text());
  private static final Schema VALIDATOR =
      SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12).getSchema(SCHEMA);

  @TempDir Path folder;

  private static JsonNode parse(String json) {
    try {
      return new ObjectMapper().readTree(json);
    } catch (JsonProcessingException e) {
      throw new AssertionError("the schema is not JSON", e);
    }
  }

  private static List<Error> errors(String plan) throws IOException {
    return VALIDATOR.validate(YAML.readTree(plan));
  }

  /** JSON Schema 2020-12 says what a schema must look like, as a schema. */
  @Test
  void isASchemaOfDraft202012() throws IOException {
    SchemaRegistry drafts = SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12);
    String meta = SpecificationVersion.DRAFT_2020_12.getDialectId();
    assertThat(SCHEMA.path("$schema").asText()).isEqualTo(meta);
    assertThat(drafts.getSchema(SchemaLocation.of(meta)).validate(SCHEMA)).isEmpty();
  }

  static List<String> goodPlans() {
    return List.of(
        PlanTexts.FULL,
        PlanTexts.SHORT,
        PlanTexts.BY_FILE,
        PlanTexts.CURVED,
        PlanTexts.CURVED.replace("{file: lines.csv, line: 2}", "contour.shp"),
        PlanTexts.FULL.replace("rows: 12\n", "rows: 12.0\n"),
        PlanTexts.FULL.replace("bean-2.4", "1108"),
        PlanTexts.FULL.replace("95 %", "95%"),
        PlanTexts.FULL.replace("repair: true", "repair: yes"),
        PlanTexts.FULL
            .replace("crop: corn", "crop: 7")
            .replace("{corn: 40", "{7: 40")
            .replace("  corn:\n", "  7:\n"),
        PlanTexts.FULL.replace("{from: 350, to: 10.5, step: 5}", "[0, 359.99, 90.0]"),
        PlanTexts.FULL.replace("34000 seeds/ac", "30400 plants/ac"),
        PlanTexts.FULL.replace("52.5 bu/ac", "3150 lb/ac"),
        PlanTexts.FULL
            .replace("curve: tested-rates\n      plots", "plots")
            .replace(
                "- {rate: 28000",
                "- {rate: 27000 seeds/ac, yield: 9 t/ha}\n        - {rate: 28000"),
        PlanTexts.FULL.replace("32000 seeds/ac", "{low: 32e3 seeds/ac, high: 0 seeds/ha}"));
  }

  @ParameterizedTest
  @MethodSource("goodPlans")
  void goodPlansAreGoodForBoth(String plan) throws IOException {
    assertThat(errors(plan)).isEmpty();
    assertThat(PlanTexts.faults(folder, plan)).isEmpty();
  }

  /** What the tables of faults hold, as far as a schema can express it. */
  static Stream<FaultCase> badPlans() {
    List<String> beyondSchemas =
        List.of(
            "grows nothing", // the number inside a text
            "'0 in' is out", // likewise
            "'1e999 in' is out", // likewise
            "'101 %' is out", // likewise
            "'160 %' is out", // likewise
            "'61 %' is out", // likewise
            "'11 %' is out", // likewise
            "'4 lb/ac' is out", // likewise
            "is not after", // two values
            "'140 %' is out", // likewise
            "42 bytes", // a schema counts characters
            "'2027-02-30'", // the calendar
            "same point", // two values
            "719 headings are", // likewise
            "before it starts", // likewise
            "in rising order", // likewise
            "'0 m' is out", // the number inside a text
            "'0 /t' is out", // likewise
            "'0 bu/ac' is out", // likewise
            "'-91 %' is out", // likewise
            "different units", // two values
            "'90 min' is out", // likewise
            "'2001 m' is out", // likewise
            "'2 m' is out", // likewise
            "'0 %' is out", // likewise
            "'.inf'", // no number of JSON
            "'.nan'", // likewise
            "'012'", // a number of YAML that JSON has not
            "'1_2'"); // likewise
    return Stream.of(
            PlanFaultTest.keysAndNames(),
            PlanFaultTest.quantities(),
            PlanFaultTest.numbersWordsAndDates(),
            PlanFaultTest.forecast(),
            PlanFaultTest.budget(),
            PlanRuleTest.abLine(),
            PlanRuleTest.placement())
        .flatMap(List::stream)
        .filter(row -> beyondSchemas.stream().noneMatch(row.what()::contains));
  }

  @ParameterizedTest
  @MethodSource("badPlans")
  void badPlansAreBadForBoth(FaultCase row) throws IOException {
    row.check(folder);
    assertThat(errors(row.text())).isNotEmpty();
  }

  /**
   * The reader lists the keys that it knows where it meets one that it does not; so an unknown key
   * in every place that has keys shows all keys of the reader.
   */
  @Test
  void bothKnowTheSameKeys() throws IOException {
    Map<String, Set<String>> ofSchema = new TreeMap<>();
    collect(SCHEMA, "", ofSchema);
    Map<String, Set<String>> ofReader = new TreeMap<>();
    for (String text :
        List.of(PlanTexts.FULL, PlanTexts.SHORT, PlanTexts.BY_FILE, PlanTexts.CURVED)) {
      String plan = withUnknownKeys(text);
      for (Fault fault : PlanTexts.faults(folder, plan)) {
        assertThat(fault.what()).startsWith("the key 'zzzz' is not known");
        String path = fault.where().replaceAll("plan.yaml:\\d+:\\d+ |\\.?zzzz$|\\[\\d+]", "");
        ofReader
            .computeIfAbsent(named(path), key -> new TreeSet<>())
            .addAll(List.of(fault.allowed().split(", ")));
      }
    }
    assertThat(ofReader).isEqualTo(ofSchema).isNotEmpty();
  }

  /** Puts a star for the names that a grower chooses. */
  private static String named(String path) {
    return path.replaceAll(
        "^(machines|products|setback\\.neighbours|forecast\\.canopies|forecast\\.response"
            + "|budget\\.crops|budget\\.seeding-trials)\\.[^.]+",
        "$1.*");
  }

  private static String withUnknownKeys(String plan) throws IOException {
    JsonNode root = YAML.readTree(plan);
    addUnknownKeys(root, "");
    return YAML.writeValueAsString(root);
  }

  private static void addUnknownKeys(JsonNode node, String path) {
    List<Map.Entry<String, JsonNode>> entries = new ArrayList<>(node.properties());
    entries.forEach(e -> addUnknownKeys(e.getValue(), path + "." + e.getKey()));
    if (node.isArray()) {
      node.forEach(item -> addUnknownKeys(item, path));
    }
    boolean namesOfGrower =
        path.matches(
            "\\.(machines|products|setback\\.neighbours|forecast\\.canopies|forecast\\.response"
                + "|budget\\.crops|budget\\.seed|budget\\.seeding-trials)"
                + "|.*\\.(rate|wanted-shares)");
    if (node instanceof ObjectNode keys && !namesOfGrower) {
      keys.put("zzzz", 1);
    }
  }

  /** The keys of each mapping of the schema, by the path of a plan; kinds share a path. */
  private static void collect(JsonNode node, String path, Map<String, Set<String>> keys) {
    for (Iterator<String> names = node.path("properties").fieldNames(); names.hasNext(); ) {
      String name = names.next();
      keys.computeIfAbsent(path, key -> new TreeSet<>()).add(name);
      collect(node.path("properties").path(name), path.isEmpty() ? name : path + "." + name, keys);
    }
    node.path("oneOf").forEach(form -> collect(form, path, keys));
    collectIfObject(node.path("items"), path, keys);
    collectIfObject(node.path("additionalProperties"), path + ".*", keys);
  }

  private static void collectIfObject(JsonNode node, String path, Map<String, Set<String>> keys) {
    if (node.isObject()) {
      collect(node, path, keys);
    }
  }

  /** The key reference is made of the schema: it must say what a key is, and what holds without. */
  @Test
  void describesEveryKey() {
    List<String> silent = new ArrayList<>();
    describe(SCHEMA, "", silent);
    assertThat(silent).isEmpty();
  }

  private static void describe(JsonNode node, String path, List<String> silent) {
    Set<String> required = new TreeSet<>();
    node.path("required").forEach(name -> required.add(name.asText()));
    node.path("properties")
        .properties()
        .forEach(
            entry -> {
              JsonNode key = entry.getValue();
              String description = key.path("description").asText();
              boolean optionalTold = key.has("default") || description.contains("Without it");
              if (!description.endsWith(".")
                  || !(required.contains(entry.getKey()) || optionalTold)) {
                silent.add(path + "." + entry.getKey());
              }
              describe(key, path + "." + entry.getKey(), silent);
            });
    node.path("oneOf").forEach(form -> describe(form, path, silent));
    Stream.of(node.path("items"), node.path("additionalProperties"))
        .filter(JsonNode::isObject)
        .forEach(inner -> describe(inner, path, silent));
  }

  /** A default that is written out means the same as none. */
  @Test
  void defaultsAreThoseOfTheReader() throws Exception {
    String spelled =
        PlanTexts.SHORT
                .replace(
                    "30 in}",
                    "30 in, hoppers: row-unit, speed: 5 mph, efficiency: 65 %, turn-time: 20 s,"
                        + " turn-radius: 20 ft}")
                .replace("geojson}", "geojson, minimum-piece: 10 m2, repair: false}")
                .replace(
                    "92.5}",
                    "92.5}, ab-line-is: pass-centre, placement: fixed, weights: {partial-pass: 1,"
                        + " point-rows: 1, headland: 0.2, crop-shares: 1, piece: 50 m2,"
                        + " turn: 100 m2}")
            + "handoff: {off-zones: false, formats: [shapefile, geojson], papers: false,"
            + " task-data: {version: 4.3}}\n"
            + "fit: {max-strip-width: 120 ft, tolerance: 2 in}\n"
            + "forecast: {season: normal}\n"
            + "budget: {currency: USD, sprayings: 1}\n";
    assertSaysTheSame(spelled, PlanTexts.SHORT);
    Map<String, String> defaults = new TreeMap<>();
    collectDefaults(SCHEMA, defaults);
    StringBuilder lines = new StringBuilder();
    defaults.forEach((key, value) -> lines.append(key).append(": ").append(value).append('\n'));
    assertThat(lines)
        .hasToString(
            """
            ab-line-is: pass-centre
            around-holes: true
            crop-shares: 1
            currency: USD
            curve: parabola
            date: 2000-01-01
            efficiency: 65 %
            end-angle: 30
            formats: ["shapefile","geojson"]
            headland: 0.2
            hoppers: row-unit
            max-strip-width: 120 ft
            minimum-piece: 10 m2
            off-zones: false
            papers: false
            partial-pass: 1
            piece: 50 m2
            placement: fixed
            point-rows: 1
            repair: false
            reserve: 0 %
            season: normal
            sides: both
            speed: 5 mph, 6.5 mph, 3 mph
            sprayings: 1
            tolerance: 2 in
            turn: 100 m2
            turn-radius: 20 ft
            turn-time: 20 s
            version: 4.3
            where: all-around
            """);
  }

  /** How sprayers and combines are driven unless the plan says otherwise. */
  @Test
  void defaultsOfSprayersAndCombinesAreThoseOfTheReader() throws Exception {
    String silent =
        PlanTexts.SHORT.replace(
            "machines: {",
            "machines: {sprayer: {kind: sprayer, boom: 90 ft},"
                + " combine: {kind: combine, header: 30 ft}, ");
    String turns = ", efficiency: 65 %, turn-time: 20 s, turn-radius: 20 ft";
    String spelled =
        silent
            .replace("boom: 90 ft", "boom: 90 ft, speed: 6.5 mph" + turns)
            .replace("header: 30 ft", "header: 30 ft, speed: 3 mph" + turns);
    assertThat(spelled).contains("sprayer", "3 mph");
    assertSaysTheSame(spelled, silent);
  }

  /** The plans differ in nothing but in who told it. */
  private void assertSaysTheSame(String spelled, String silent) throws Exception {
    Plan told = PlanTexts.read(folder, spelled);
    Plan byDefault = PlanTexts.read(folder, silent);
    assertThat(told)
        .usingRecursiveComparison()
        .ignoringFieldsMatchingRegexes(".*\\.told.*")
        .isEqualTo(byDefault);
    assertThat(told.fit().maxStripWidth()).isEqualTo(byDefault.fit().maxStripWidth());
    assertThat(told.fit().tolerance()).isEqualTo(byDefault.fit().tolerance());
    assertThat(told.budget().sprayings()).isEqualTo(byDefault.budget().sprayings());
  }

  private static void collectDefaults(JsonNode node, Map<String, String> defaults) {
    node.properties()
        .forEach(
            entry -> {
              JsonNode value = entry.getValue().path("default");
              if (!value.isMissingNode()) {
                String text = value.isArray() ? value.toString() : value.asText();
                defaults.merge(
                    entry.getKey(),
                    text,
                    (before, other) ->
                        before.equals(other) ? before : String.join(", ", before, other));
              }
            });
    node.forEach(child -> collectDefaults(child, defaults));
  }
}
