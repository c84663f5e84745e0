package org.lynchet.formats.geojson;

import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonToken;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.lynchet.formats.DeclaredCrs;

/**
 * Parses GeoJSON objects: takes the members that mean something, in whatever order they stand, and
 * passes over the others. A member of the wrong kind is a fault and counts as missing.
 */
final class ObjectParser {
  private final JsonParser in;
  private final JsonFaults faults;
  private final CoordinatesParser coordinates;
  private final ValueParser values;
  private final CrsParser crs;

  ObjectParser(JsonParser in, JsonFaults faults) {
    this.in = in;
    this.faults = faults;
    this.coordinates = new CoordinatesParser(in, faults);
    this.values = new ValueParser(in, faults);
    this.crs = new CrsParser(in, faults);
  }

  /** What the file declared, by the crs member anywhere in it; else what RFC 7946 says. */
  DeclaredCrs crs() {
    return crs.declared();
  }

  /** Parses the object that the parser stands at the beginning of. */
  GeoObject parse(String path) throws IOException {
    GeoObject object = new GeoObject(path, spot());
    while (in.nextToken() == JsonToken.FIELD_NAME) {
      String name = in.currentName();
      in.nextToken();
      String member = object.member(name);
      switch (name) {
        case "type" -> object.type = text(member);
        case "coordinates" -> object.coordinates = coordinates.parse(member);
        case "geometries" -> object.geometries = objects(member);
        case "features" -> object.features = objects(member);
        case "geometry" -> object.geometry = objectOrNull(member);
        case "properties" -> parseProperties(object, member);
        case "crs" -> crs.parse(member);
        default -> in.skipChildren();
      }
    }
    return object;
  }

  private @Nullable String text(String path) throws IOException {
    return expect(JsonToken.VALUE_STRING, path, "a text") ? in.getText() : null;
  }

  private @Nullable GeoObject objectOrNull(String path) throws IOException {
    if (in.currentToken() == JsonToken.VALUE_NULL) {
      return null;
    }
    return expect(JsonToken.START_OBJECT, path, "an object or null") ? parse(path) : null;
  }

  private @Nullable List<GeoObject> objects(String path) throws IOException {
    if (!expect(JsonToken.START_ARRAY, path, "an array of objects")) {
      return null;
    }
    List<GeoObject> objects = new ArrayList<>();
    for (int i = 0; in.nextToken() != JsonToken.END_ARRAY; i++) {
      String item = path + "[" + i + "]";
      if (expect(JsonToken.START_OBJECT, item, "an object")) {
        objects.add(parse(item));
      }
    }
    return objects;
  }

  private void parseProperties(GeoObject object, String path) throws IOException {
    if (in.currentToken() == JsonToken.VALUE_NULL
        || !expect(JsonToken.START_OBJECT, path, "an object or null")) {
      return;
    }
    while (in.nextToken() == JsonToken.FIELD_NAME) {
      String name = in.currentName();
      in.nextToken();
      object.properties.put(name, values.parse(path + "." + name));
    }
  }

  /** Whether the parser stands at such a token; else a fault, and the value is passed over. */
  private boolean expect(JsonToken wanted, String path, String allowed) throws IOException {
    JsonToken token = in.currentToken();
    if (token == wanted) {
      return true;
    }
    faults.add("it is " + TokenName.of(token), spot(), path, allowed);
    in.skipChildren();
    return false;
  }

  private JsonSpot spot() {
    return JsonSpot.of(in.currentTokenLocation());
  }
}
