package org.lynchet.integration.bench;

import org.locationtech.jts.geom.Geometry;

/**
 * One zone as a yardstick makes it.
 *
 * @param area polygon or polygons in the plane
 * @param strip number of the strip, from the y axis to the right; 0 for headland too
 * @param kind what it is
 */
public record PlainZone(Geometry area, long strip, Kind kind) {

  /** Which rows of a strip. */
  public enum Kind {
    /** The outside rows on either side. */
    BORDER,
    /** The rows between them. */
    CENTRE,
    /** The passes around the field. */
    HEADLAND
  }
}
