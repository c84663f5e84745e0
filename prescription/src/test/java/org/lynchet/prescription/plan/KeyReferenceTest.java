package org.lynchet.prescription.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.function.Predicate;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.lynchet.formats.LayeredFormat;
import org.lynchet.prescription.intake.InputTable;
import org.lynchet.prescription.plan.HandoffChoices.Format;

/**
 * Holds what lies beside the examples against the schema in the jar, and makes it anew if asked.
 */
class KeyReferenceTest {
  private static final String AGAIN =
      "The schema has changed. Make what lies beside the examples anew:\n"
          + "mvn -q -pl prescription -am test -Dtest=KeyReferenceTest"
          + " -Dsurefire.failIfNoSpecifiedTests=false -Dlynchet.regenerate=true";
  private static final Path EXAMPLES = Path.of("..", "examples");
  private static final Pattern SCHEMA_COMMENT =
      Pattern.compile("\\A# yaml-language-server: \\$schema=(\\S+)\\R");

  /** The words for formats in the schema, from one bracket to the other. */
  private static final Pattern FORMAT_WORDS =
      Pattern.compile("(?s)(\"formats\": \\{.*?\"enum\": \\[)([^]]*?)(\\s*])");

  /** What the schema says of those formats, and of files that can be read. */
  private static final Pattern FORMAT_SENTENCE = Pattern.compile("(\"The formats: )[^\"]*");

  private static final Pattern ENDINGS =
      Pattern.compile("(The file [^\":]*, from the plan's folder: )[^\"]*?(?=\\. |\\.\")");

  private static final Path RESOURCES = Path.of("src", "main", "resources");

  /** The schema with what there is to say of the formats that there are. */
  private static String schema() {
    Matcher formats = FORMAT_SENTENCE.matcher(withFormatWords());
    assertThat(formats.find()).as("the schema says what formats are written as").isTrue();
    Matcher files =
        ENDINGS.matcher(formats.replaceFirst("$1" + Matcher.quoteReplacement(formatSentence())));
    assertThat(files.results().count()).as("keys that name files of any format").isEqualTo(5);
    return files.replaceAll("$1" + Matcher.quoteReplacement(InputTable.endings()));
  }

  private static String formatSentence() {
    return words(format -> !format.file().hasParts())
        + " as a planting file for each crop; "
        + words(format -> format.file() instanceof LayeredFormat)
        + " as one file with zones, passes and boundary; "
        + words(format -> format == Format.ISOXML)
        + " as ISO 11783-10 task data.";
  }

  private static String words(Predicate<Format> some) {
    return Arrays.stream(Format.values())
        .filter(some)
        .map(Format::toString)
        .collect(Collectors.joining(" and "));
  }

  private static String withFormatWords() {
    String indent = "\n" + " ".repeat(14);
    String words =
        Arrays.stream(Format.values())
            .map(format -> indent + '"' + format + '"')
            .collect(Collectors.joining(","));
    Matcher formats = FORMAT_WORDS.matcher(PlanSchema.text());
    assertThat(formats.find()).as("the schema has a list of formats").isTrue();
    return formats.replaceFirst("$1" + Matcher.quoteReplacement(words) + "$3");
  }

  private static JsonNode json(String text) throws IOException {
    return new ObjectMapper().readTree(text);
  }

  @Test
  void schemaHasTheWordsOfAllFormats() throws IOException {
    holds(RESOURCES.resolve(Path.of("org/lynchet/prescription/plan/plan.schema.json")), schema());
  }

  @Test
  void keyReferenceIsThatOfTheSchema() throws IOException {
    holds(EXAMPLES.resolve("PLAN-KEYS.md"), KeyReference.of(json(schema())));
  }

  @Test
  void schemaBesideTheExamplesIsThatOfTheJar() throws IOException {
    holds(EXAMPLES.resolve("plan.schema.json"), schema());
  }

  private static void holds(Path file, String expected) throws IOException {
    byte[] bytes = expected.getBytes(StandardCharsets.UTF_8);
    if (Boolean.getBoolean("lynchet.regenerate")) {
      Files.write(file, bytes);
    }
    assertThat(file).as(AGAIN).exists();
    assertThat(Files.readAllBytes(file)).as(AGAIN).isEqualTo(bytes);
  }

  static List<Path> plans() throws IOException {
    try (Stream<Path> folders = Files.list(EXAMPLES)) {
      return folders.map(folder -> folder.resolve("plan.yaml")).filter(Files::exists).toList();
    }
  }

  /** An editor takes the path in the first line from the plan's own folder. */
  @ParameterizedTest
  @MethodSource("plans")
  void plansOfExamplesNameTheSchema(Path plan) throws IOException {
    Matcher comment = SCHEMA_COMMENT.matcher(Files.readString(plan));
    assertThat(comment.find()).as(plan + " names the schema in its first line").isTrue();
    assertThat(plan.resolveSibling(comment.group(1)).normalize())
        .isEqualTo(EXAMPLES.resolve("plan.schema.json").normalize());
  }

  @Test
  void tellsKeysOfEveryShape() throws IOException {
    String reference =
        KeyReference.of(
            json(
                """
                {"description": "All.", "required": ["shed"], "properties": {
                   "shed": {"description": "A shed.", "oneOf": [
                      {"description": "By door.", "required": ["door"], "properties": {
                         "door": {"description": "Left | right.", "enum": ["left", "right"]}}},
                      {"description": "By kind.", "properties": {
                         "kind": {"description": "It.", "const": "barn"}}}]},
                   "line": {"description": "A line.", "oneOf": [
                      {"description": "A file.", "type": "string"},
                      {"description": "A part.", "required": ["file"], "properties": {
                         "file": {"description": "File.", "type": "string"}}}]},
                   "share": {"description": "Some.", "anyOf": [
                      {"type": "integer"}, {"type": "array", "items": {"type": "integer"}}]},
                   "bins": {"description": "Bins.", "type": "array", "items": {
                      "description": "A bin.", "properties": {
                         "size": {"description": "Size.", "$ref": "#/$defs/size", "default": "1 m"}}}},
                   "cows": {"description": "Cows.", "additionalProperties": {
                      "$ref": "#/$defs/cow"}},
                   "turn": {"description": "Turn.", "type": "number", "minimum": 0,
                      "exclusiveMaximum": 360, "x-unit": "degrees"}},
                 "$defs": {
                   "size": {"description": "How long.", "x-unit": "m", "examples": ["2 m"]},
                   "cow": {"description": "A cow.", "properties": {
                      "name": {"description": "Name.", "type": "string", "minLength": 1,
                         "maxLength": 9}}}}}
                """));
    assertThat(reference.lines())
        .containsSubsequence(
            "| `shed` |  | *required* | keys, see below | A shed. |",
            "| `line` |  |  | text or keys, see below | A line. |",
            "| `share` |  |  | whole number or list of whole number | Some. |",
            "| `bins` |  |  | list of mappings, see below | Bins. |",
            "| `cows` |  |  | keys, see below | Cows. |",
            "| `turn` | degrees |  | number, from 0 to below 360 | Turn. |",
            "## `shed` with `door`",
            "| `door` |  | *required* | `left`, `right` | Left \\| right. |",
            "## `shed` with `kind: barn`",
            "| `kind` |  |  | `barn` | It. |",
            "## `line` with `file`",
            "| `file` |  | *required* | text | File. |",
            "## `bins[]`",
            "| `size` | m | `1 m` | [size](#values) | Size. |",
            "## `cows.NAME`",
            "| `name` |  |  | text of 1 to 9 characters | Name. |",
            "## Values",
            "| size | m | `2 m` | How long. |");
  }

  @ParameterizedTest
  @MethodSource("unknown")
  void refusesWhatItHasNoWordsFor(String key) throws IOException {
    JsonNode schema = json("{\"description\": \"All.\", \"properties\": {\"a\": " + key + "}}");
    assertThatThrownBy(() -> KeyReference.of(schema)).isInstanceOf(IllegalArgumentException.class);
  }

  static List<String> unknown() {
    return List.of(
        "{\"description\": \"A.\", \"type\": \"null\"}",
        "{\"description\": \"A.\", \"$ref\": \"elsewhere.json\"}",
        "{\"type\": \"string\"}");
  }
}
