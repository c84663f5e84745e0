package org.lynchet.prescription.plan;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.stream.Collectors;
import java.util.stream.StreamSupport;

/**
 * Says in words what a node of the schema allows.
 *
 * <p>It refuses what it has no words for, so that nothing of the schema is left out in silence.
 */
final class KeyWords {
  private static final String DEFINITIONS = "#/$defs/";

  private final JsonNode schema;

  KeyWords(JsonNode schema) {
    this.schema = schema;
  }

  /** The node itself, or the definition that it refers to if that is a mapping with keys. */
  JsonNode keysOf(JsonNode node) {
    JsonNode target = target(node);
    return target.has("properties") || target.has("oneOf") ? target : node;
  }

  /** Units, as in {@code in, ft}; empty where a value has none. */
  String unit(JsonNode key) {
    JsonNode own = key.path("x-unit");
    return (own.isMissingNode() ? target(key).path("x-unit") : own).asText();
  }

  /** What a value may be. */
  String allowed(JsonNode node) {
    JsonNode key = keysOf(node);
    if (key.has("$ref")) {
      return "[" + name(key) + "](#values)";
    }
    if (key.has("const")) {
      return code(key.path("const"));
    }
    if (key.has("enum")) {
      return codes(key.path("enum"));
    }
    if (key.has("properties") || key.has("additionalProperties")) {
      return "keys, see below";
    }
    if (key.has("oneOf") || key.has("anyOf")) {
      return StreamSupport.stream(
              key.path(key.has("oneOf") ? "oneOf" : "anyOf").spliterator(), false)
          .map(this::allowed)
          .distinct()
          .collect(Collectors.joining(" or "));
    }
    JsonNode type = key.path("type");
    return switch (type.isArray() ? type.path(0).asText() : type.asText()) {
      case "boolean" -> "`true`, `false`";
      case "integer" -> "whole number" + range(key);
      case "number" -> "number" + range(key);
      case "string" -> "text" + length(key);
      case "array" -> list(key);
      default -> throw new IllegalArgumentException("no words for " + node);
    };
  }

  /** A value as it stands in a plan; the parts of a list one by one. */
  static String codes(JsonNode value) {
    return value.isArray()
        ? StreamSupport.stream(value.spliterator(), false)
            .map(KeyWords::code)
            .distinct()
            .collect(Collectors.joining(", "))
        : code(value);
  }

  private static String code(JsonNode value) {
    return "`" + value.asText() + "`";
  }

  private String list(JsonNode key) {
    JsonNode items = key.path("items");
    String of =
        items.has("properties") ? "list of mappings, see below" : "list of " + allowed(items);
    return of + (key.path("uniqueItems").asBoolean() ? ", each once" : "");
  }

  private static String range(JsonNode key) {
    String low = key.path("minimum").asText();
    String high = key.path("maximum").asText();
    String below = key.path("exclusiveMaximum").asText();
    String above = key.path("exclusiveMinimum").asText();
    String from =
        (low.isEmpty() ? "" : ", from " + low) + (above.isEmpty() ? "" : ", above " + above);
    String to =
        (high.isEmpty() ? "" : " to " + high) + (below.isEmpty() ? "" : " to below " + below);
    return from.isEmpty() && !to.isEmpty() ? "," + to.replace(" to below", " below") : from + to;
  }

  private static String length(JsonNode key) {
    return key.has("maxLength")
        ? " of " + key.path("minLength").asInt() + " to " + key.path("maxLength") + " characters"
        : "";
  }

  private JsonNode target(JsonNode node) {
    return node.has("$ref") ? schema.path("$defs").path(name(node)) : node;
  }

  private static String name(JsonNode node) {
    String reference = node.path("$ref").asText();
    if (!reference.startsWith(DEFINITIONS)) {
      throw new IllegalArgumentException("no words for the reference " + reference);
    }
    return reference.substring(DEFINITIONS.length());
  }
}
