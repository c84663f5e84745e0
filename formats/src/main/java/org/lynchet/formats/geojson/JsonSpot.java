package org.lynchet.formats.geojson;

import com.fasterxml.jackson.core.JsonLocation;

/**
 * A place in the text of the file.
 *
 * @param line from 1
 * @param column from 1
 */
record JsonSpot(int line, int column) {
  static JsonSpot of(JsonLocation location) {
    return new JsonSpot(location.getLineNr(), location.getColumnNr());
  }
}
