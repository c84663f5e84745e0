package org.lynchet.formats.geojson;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.core.JsonParser;
import java.io.IOException;
import java.io.StringWriter;
import org.jspecify.annotations.Nullable;

/** Parses the value of a property. */
final class ValueParser {
  private static final JsonFactory FACTORY = new JsonFactory();

  /** The largest whole number up to which a double holds them all. */
  static final double EXACT = 9_007_199_254_740_992.0;

  private final JsonParser in;
  private final JsonFaults faults;

  ValueParser(JsonParser in, JsonFaults faults) {
    this.in = in;
    this.faults = faults;
  }

  /** A Double, Boolean, String or null; an object or array as its JSON text. */
  @Nullable Object parse(String path) throws IOException {
    return switch (in.currentToken()) {
      case VALUE_NULL -> null;
      case VALUE_TRUE -> true;
      case VALUE_FALSE -> false;
      case VALUE_STRING -> in.getText();
      case VALUE_NUMBER_FLOAT -> finite(path);
      case VALUE_NUMBER_INT -> whole(path);
      default -> nested();
    };
  }

  /** A whole number with more digits than a double keeps, such as a long key, stays a text. */
  private @Nullable Object whole(String path) throws IOException {
    return Math.abs(in.getDoubleValue()) < EXACT ? finite(path) : in.getText();
  }

  private @Nullable Object finite(String path) throws IOException {
    double value = in.getDoubleValue();
    if (!Double.isFinite(value)) {
      faults.add(
          "a number beyond all bounds",
          JsonSpot.of(in.currentTokenLocation()),
          path,
          "a finite number");
      return null;
    }
    return value + 0.0;
  }

  private String nested() throws IOException {
    StringWriter text = new StringWriter();
    try (JsonGenerator out = FACTORY.createGenerator(text)) {
      out.copyCurrentStructure(in);
    }
    return text.toString();
  }
}
