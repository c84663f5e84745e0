package org.lynchet.prescription.plan;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;

/** Makes the key reference, a document in Markdown, of the schema of plan files. */
final class KeyReference {
  private static final String OPENING =
      """
      # The keys of a plan file

      This page is made of [plan.schema.json](plan.schema.json), which lies beside it; do not edit it. An editor that knows
      the YAML language server completes and checks these keys while you type, if the plan's first line names the schema by
      its path from the plan:

      ```yaml
      # yaml-language-server: $schema=../plan.schema.json
      ```

      `NAME` stands for a name of your choice, `[]` for each entry of a list. A key that is neither *required* nor has a
      default may be left out; its meaning says what then holds.
      """;

  private final JsonNode schema;
  private final KeyWords words;
  private final StringBuilder text = new StringBuilder(OPENING);
  private final Set<String> told = new HashSet<>();

  private KeyReference(JsonNode schema) {
    this.schema = schema;
    this.words = new KeyWords(schema);
  }

  /** The document, with a table for each mapping of a plan and one for the kinds of values. */
  static String of(JsonNode schema) {
    KeyReference reference = new KeyReference(schema);
    reference.table("## The plan", "", schema);
    reference.inside("", schema);
    reference.values();
    return reference.text.toString();
  }

  /** The tables of all mappings below the keys of one. */
  private void inside(String path, JsonNode mapping) {
    mapping
        .path("properties")
        .properties()
        .forEach(
            key ->
                below(path.isEmpty() ? key.getKey() : path + "." + key.getKey(), key.getValue()));
  }

  private void below(String path, JsonNode node) {
    JsonNode value = words.keysOf(node);
    if (value.has("properties")) {
      table("## `" + path + "`", path, value);
      inside(path, value);
    }
    for (JsonNode form : value.path("oneOf")) {
      if (!form.has("properties")) {
        continue;
      }
      table("## `" + path + "` with " + sign(form), path, form);
      inside(path, form);
    }
    if (value.path("items").isObject()) {
      below(path + "[]", value.path("items"));
    }
    if (value.path("additionalProperties").isObject()) {
      below(path + ".NAME", value.path("additionalProperties"));
    }
  }

  /** What one form of a mapping is told by: a key's only value, or the keys that it must have. */
  private static String sign(JsonNode form) {
    return form.path("properties").properties().stream()
        .filter(key -> key.getValue().has("const"))
        .map(key -> "`" + key.getKey() + ": " + key.getValue().path("const").asText() + "`")
        .findFirst()
        .orElseGet(() -> KeyWords.codes(form.path("required")));
  }

  /** One table; nothing where several forms have the same mapping and it is told already. */
  private void table(String heading, String path, JsonNode mapping) {
    if (!told.add(heading + path + mapping)) {
      return;
    }
    Set<String> required = new TreeSet<>();
    mapping.path("required").forEach(name -> required.add(name.asText()));
    text.append("\n").append(heading).append("\n\n").append(description(mapping)).append("\n\n");
    text.append("| key | unit | default | allowed | meaning |\n|---|---|---|---|---|\n");
    mapping
        .path("properties")
        .properties()
        .forEach(key -> row(key.getKey(), key.getValue(), required.contains(key.getKey())));
  }

  private void row(String name, JsonNode key, boolean required) {
    String without = key.has("default") ? KeyWords.codes(key.path("default")) : "";
    cells(
        "`" + name + "`",
        words.unit(key),
        required ? "*required*" : without,
        words.allowed(key),
        description(key));
  }

  private void values() {
    text.append("\n## Values\n\n| value | unit | example | meaning |\n|---|---|---|---|\n");
    schema
        .path("$defs")
        .properties()
        .forEach(
            value ->
                cells(
                    value.getKey(),
                    words.unit(value.getValue()),
                    examples(value.getValue()),
                    description(value.getValue())));
  }

  private static String examples(JsonNode value) {
    List<String> examples = new ArrayList<>();
    value.path("examples").forEach(example -> examples.add("`" + flow(example) + "`"));
    return String.join(" or ", examples);
  }

  /** A value as YAML in one line; examples have no characters that would need quotes there. */
  private static String flow(JsonNode value) {
    return value.isValueNode()
        ? value.asText()
        : value.toString().replace("\"", "").replace(":", ": ").replace(",", ", ");
  }

  private void cells(String... cells) {
    text.append('|');
    for (String cell : cells) {
      text.append(' ').append(cell.replace("|", "\\|")).append(" |");
    }
    text.append('\n');
  }

  private static String description(JsonNode node) {
    String description = node.path("description").asText();
    if (description.isEmpty()) {
      throw new IllegalArgumentException("not described: " + node);
    }
    return description;
  }
}
