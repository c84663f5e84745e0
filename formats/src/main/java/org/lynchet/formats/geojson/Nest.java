package org.lynchet.formats.geojson;

import java.util.List;
import org.locationtech.jts.geom.Coordinate;

/**
 * The value of {@code coordinates}: a position or a list of such values. What it should be is known
 * only when the geometry's type has been read, which may stand behind it.
 */
sealed interface Nest {
  /** Where it begins in the file. */
  JsonSpot spot();

  /** One position; numbers beyond the second are left out. */
  record Position(Coordinate coordinate, JsonSpot spot) implements Nest {}

  /** An array of positions or of arrays, or an empty one. */
  record Items(List<Nest> items, JsonSpot spot) implements Nest {}

  /** Something whose fault has been told already. */
  record Broken(JsonSpot spot) implements Nest {}
}
