package org.lynchet.formats;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.locationtech.jts.geom.Geometry;

/**
 * One geometry with its values.
 *
 * @param geometry x before y; in files that are written: longitude, latitude in degrees; an empty
 *     geometry collection where the file has none
 * @param values one per column of the table, in their order; null where the file has none
 */
public record Feature(Geometry geometry, List<@Nullable Object> values) {

  /** Copies the values. */
  public Feature {
    values = Collections.unmodifiableList(new ArrayList<>(values));
  }
}
