package org.lynchet.formats.geojson;

import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonToken;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import org.locationtech.jts.geom.Coordinate;

/** Parses the value of a coordinates member. */
final class CoordinatesParser {
  private final JsonParser in;
  private final JsonFaults faults;

  /** Where the parser is below the member, for faults. */
  private final List<Integer> indexes = new ArrayList<>();

  private String member = "";

  CoordinatesParser(JsonParser in, JsonFaults faults) {
    this.in = in;
    this.faults = faults;
  }

  /** Parses the value that the parser stands at the beginning of. */
  Nest parse(String path) throws IOException {
    member = path;
    indexes.clear();
    return parseNest();
  }

  private Nest parseNest() throws IOException {
    JsonSpot spot = JsonSpot.of(in.currentTokenLocation());
    if (in.currentToken() != JsonToken.START_ARRAY) {
      fault("it is " + TokenName.of(in.currentToken()), spot, "an array");
      in.skipChildren();
      return new Nest.Broken(spot);
    }
    JsonToken first = in.nextToken();
    if (first == JsonToken.START_ARRAY || first == JsonToken.END_ARRAY) {
      return parseItems(spot);
    }
    return parsePosition(spot);
  }

  private Nest parseItems(JsonSpot spot) throws IOException {
    List<Nest> items = new ArrayList<>();
    while (in.currentToken() != JsonToken.END_ARRAY) {
      indexes.add(items.size());
      items.add(parseNest());
      indexes.remove(indexes.size() - 1);
      in.nextToken();
    }
    return new Nest.Items(items, spot);
  }

  private Nest parsePosition(JsonSpot spot) throws IOException {
    double x = Double.NaN;
    double y = Double.NaN;
    boolean whole = true;
    int count = 0;
    for (; in.currentToken() != JsonToken.END_ARRAY; in.nextToken()) {
      double number = number();
      whole &= Double.isFinite(number);
      if (count == 0) {
        x = number;
      } else if (count == 1) {
        y = number;
      }
      count++;
    }
    if (whole && count < 2) {
      fault("a position of one number", spot, "longitude and latitude");
      whole = false;
    }
    return whole
        ? new Nest.Position(new Coordinate(x + 0.0, y + 0.0), spot)
        : new Nest.Broken(spot);
  }

  /** The number here; NaN after a fault. */
  private double number() throws IOException {
    JsonSpot spot = JsonSpot.of(in.currentTokenLocation());
    JsonToken token = in.currentToken();
    if (token == null || !token.isNumeric()) {
      fault("it is " + TokenName.of(token), spot, "a number");
      in.skipChildren();
      return Double.NaN;
    }
    double number = in.getDoubleValue();
    if (!Double.isFinite(number)) {
      fault("a number beyond all bounds", spot, "a finite number");
      return Double.NaN;
    }
    return number;
  }

  private void fault(String what, JsonSpot spot, String allowed) {
    StringBuilder path = new StringBuilder(member);
    indexes.forEach(i -> path.append('[').append(i).append(']'));
    faults.add(what, spot, path.toString(), allowed);
  }
}
