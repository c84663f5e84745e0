package org.lynchet.prescription.fault;

import java.io.Serializable;

/**
 * Something that deserves a second look but does not stop the run.
 *
 * @param code the kind; its name is stable and is written to summary.json
 * @param text what was seen, and what to do about it
 */
public record Warning(Code code, String text) implements Serializable {

  /** The kinds of warning. */
  public enum Code {
    /**
     * A file's coordinate system was not declared, and it was taken as longitude and latitude; or
     * it could be brought to them only nearly.
     */
    COORDINATE_SYSTEM,
    /** The boundary was self-intersecting and was repaired on request. */
    BOUNDARY_REPAIRED,
    /** Management zones overlap; the first in the file was taken. */
    ZONES_OVERLAP,
    /** Slivers of the field outside every management zone were given to a neighbouring zone. */
    ZONES_LEAVE_SLIVERS,
    /** Waterways outside the field were left out. */
    WATERWAYS_OUTSIDE,
    /** A strip is wider than the field. */
    STRIP_WIDER_THAN_FIELD,
    /** The headland leaves no room for strips. */
    HEADLAND_FILLS_FIELD,
    /** Passes that are narrower than their machine because the field ends. */
    PARTIAL_PASSES,
    /** A piece below the minimum has no neighbour in its strip and was kept. */
    SMALL_PIECES_KEPT,
    /** A boom cannot cover a strip without an open section that reaches over another crop. */
    SPRAY_CANNOT_COVER,
    /** Spray passes that reach over no other crop overlap on a strip. */
    SPRAY_OVERLAPS,
    /** A crop has no default seeds per unit and the plan gives none, so no units are ordered. */
    NO_SEED_UNIT,
    /** The seeding rate that pays best by the plan's trials is outside of what they tested. */
    RATE_NOT_TESTED,
    /** A name is longer than task data holds and is cut there. */
    NAME_CUT,
    /** Numbers have more digits than a format holds and are rounded there. */
    VALUES_ROUNDED,
    /** Features that a format has no place for were left out. */
    FEATURES_LEFT_OUT,
    /** Columns that a format has no place for were left out. */
    VALUES_LEFT_OUT,
    /** A crop or product of the plan has no area in the field. */
    NOTHING_PLANTED,
    /** Vertices of zones were left out on request. */
    ZONES_THINNED,
    /** No part of the boundary faces a side that has a setback. */
    SETBACK_WITHOUT_SIDE,
    /** Setbacks set all of a crop aside, so nothing of it is sprayed. */
    SETBACK_LEAVES_NOTHING,
    /** A planting file goes beyond what the plan says that the terminal takes. */
    TERMINAL_LIMIT
  }
}
