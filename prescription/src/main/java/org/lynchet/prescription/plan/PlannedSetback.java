package org.lynchet.prescription.plan;

import java.io.Serializable;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.lynchet.prescription.quantity.Length;

/**
 * How far spraying stays away from the field's sides and from neighbours.
 *
 * @param sides the distance from the boundary on each side that has one
 * @param neighbours what lies around the field and is sensitive, by name, in the plan's order
 */
public record PlannedSetback(Map<Side, Length> sides, Map<String, Neighbour> neighbours)
    implements Serializable {

  /** No setback. */
  public static final PlannedSetback NONE = new PlannedSetback(Map.of(), Map.of());

  /** Copies the maps, keeping their order. */
  public PlannedSetback {
    sides = Collections.unmodifiableMap(new LinkedHashMap<>(sides));
    neighbours = Collections.unmodifiableMap(new LinkedHashMap<>(neighbours));
  }

  /** A side of the field: where its boundary faces. */
  public enum Side {
    NORTH,
    EAST,
    SOUTH,
    WEST
  }

  /**
   * Something sensitive near the field: a house, a creek, an orchard, bees.
   *
   * @param file its line or area, the path relative to the plan's folder or absolute
   * @param distance how far spraying stays away from it, or null if it is only shown
   */
  public record Neighbour(String file, @Nullable Length distance) implements Serializable {}
}
