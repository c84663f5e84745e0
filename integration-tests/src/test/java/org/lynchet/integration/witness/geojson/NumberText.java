package org.lynchet.integration.witness.geojson;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonToken;
import java.io.IOException;
import java.util.Locale;
import org.lynchet.integration.witness.Findings;

/** Checks how numbers are spelled, which a tree of values no longer shows. */
final class NumberText {
  private static final int MOST_DECIMALS = 9;

  private NumberText() {}

  static void check(String text, String name, Findings findings) throws IOException {
    try (JsonParser parser = new JsonFactory().createParser(text)) {
      for (JsonToken token = parser.nextToken(); token != null; token = parser.nextToken()) {
        if (token.isNumeric()) {
          check(parser, name, findings);
        }
      }
    }
  }

  private static void check(JsonParser parser, String name, Findings findings) throws IOException {
    String number = parser.getText();
    String path = parser.getParsingContext().pathAsPointer().toString();
    if (number.toLowerCase(Locale.ROOT).contains("e")) {
      findings.add(GeoJsonRule.EXPONENT, name + " " + path, number);
    }
    int point = number.indexOf('.');
    if (path.contains("/coordinates/")
        && point >= 0
        && number.length() - point - 1 > MOST_DECIMALS) {
      findings.add(GeoJsonRule.DECIMALS, name + " " + path, number);
    }
  }
}
