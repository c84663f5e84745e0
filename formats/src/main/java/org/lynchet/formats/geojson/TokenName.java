package org.lynchet.formats.geojson;

import com.fasterxml.jackson.core.JsonToken;
import org.jspecify.annotations.Nullable;

/** Names what stands in a JSON text, for faults. */
final class TokenName {
  private TokenName() {}

  static String of(@Nullable JsonToken token) {
    if (token == null) {
      return "nothing";
    }
    return switch (token) {
      case START_OBJECT -> "an object";
      case START_ARRAY -> "an array";
      case VALUE_STRING -> "a text";
      case VALUE_NUMBER_INT, VALUE_NUMBER_FLOAT -> "a number";
      case VALUE_TRUE, VALUE_FALSE -> "true or false";
      case VALUE_NULL -> "null";
      default -> token.name();
    };
  }
}
