package org.lynchet.formats.geojson;

import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonToken;
import java.io.IOException;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import org.lynchet.formats.DeclaredCrs;

/**
 * Parses the crs member of the GeoJSON that was before RFC 7946: {@code {"type": "name",
 * "properties": {"name": "urn:ogc:def:crs:EPSG::28992"}}}. Wherever it stands it holds for the
 * whole file; two that differ are a fault, and so is a link. Null means that nothing is declared.
 */
final class CrsParser {
  private static final Pattern CODE =
      Pattern.compile(
          "(?i)(?:urn:(?:x-)?ogc:def:crs:EPSG:[0-9.]*:|https?://www\\.opengis\\.net/def/crs/EPSG/[0-9.]+/"
              + "|EPSG:{1,2})(\\d{1,9})");
  private static final Pattern LON_LAT =
      Pattern.compile(
          "(?i)(?:urn:(?:x-)?ogc:def:crs:OGC:[0-9.]*:|https?://www\\.opengis\\.net/def/crs/OGC/[0-9.]+/"
              + "|OGC:)?CRS:?84");
  private static final String WGS_84 = "4326";

  private final JsonParser in;
  private final JsonFaults faults;
  private @Nullable DeclaredCrs declared;

  CrsParser(JsonParser in, JsonFaults faults) {
    this.in = in;
    this.faults = faults;
  }

  /** What was declared; RFC 7946, section 4 if nothing was. */
  DeclaredCrs declared() {
    return declared == null ? DeclaredCrs.LON_LAT : declared;
  }

  /** Parses the member's value, which the parser stands at the beginning of. */
  void parse(String path) throws IOException {
    JsonSpot spot = JsonSpot.of(in.currentTokenLocation());
    if (in.currentToken() == JsonToken.VALUE_NULL) {
      declare(DeclaredCrs.NONE, spot, path);
      return;
    }
    String name = find("name");
    if (name == null) {
      faults.add(
          "a coordinate system without a name", spot, path, "one by name, such as EPSG:4326");
      return;
    }
    Matcher code = CODE.matcher(name.strip());
    if (LON_LAT.matcher(name.strip()).matches()) {
      declare(DeclaredCrs.LON_LAT, spot, path);
    } else if (!code.matches()) {
      faults.add(
          "a coordinate system by an unknown name: " + name, spot, path, "such as EPSG:28992");
    } else if (code.group(1).equals(WGS_84)) {
      declare(DeclaredCrs.LON_LAT, spot, path);
    } else {
      declare(DeclaredCrs.code("EPSG:" + code.group(1)), spot, path);
    }
  }

  /** Passes over a whole value; returns the text of that name that is deepest in objects. */
  private @Nullable String find(String wanted) throws IOException {
    String found = null;
    if (in.currentToken() != JsonToken.START_OBJECT) {
      in.skipChildren();
      return null;
    }
    while (in.nextToken() == JsonToken.FIELD_NAME) {
      String name = in.currentName();
      JsonToken value = in.nextToken();
      if (name.equals(wanted) && value == JsonToken.VALUE_STRING) {
        found = in.getText();
      } else if (name.equals("properties")) {
        found = find(wanted);
      } else {
        in.skipChildren();
      }
    }
    return found;
  }

  private void declare(DeclaredCrs crs, JsonSpot spot, String path) {
    if (declared != null && !declared.equals(crs)) {
      faults.add("a second coordinate system", spot, path, "the same for the whole file");
    }
    declared = crs;
  }
}
