package org.lynchet.integration.witness.coverage;

/** The laws of a field that is cut into zones. */
public enum CoverageRule {
  /** Every zone is a polygon or several, and not empty. */
  POLYGONAL,
  /** Every zone is valid by OGC Simple Features 06-103r4, 6.1.11. */
  VALID,
  /** Zones that touch share their edges vertex for vertex, and do not overlap. */
  EDGE_MATCHED,
  /** No two zones share interior. */
  NO_OVERLAP,
  /** The zones leave no hole that the field has not. */
  NO_GAP,
  /** The outline of all zones together is the field's boundary, slits and notches included. */
  SAME_OUTLINE,
  /** The zones together cover the field and nothing else. */
  SAME_AREA
}
