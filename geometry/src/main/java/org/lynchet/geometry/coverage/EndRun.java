package org.lynchet.geometry.coverage;

import java.util.List;
import org.locationtech.jts.geom.Coordinate;

/**
 * A run of the boundary at which rows end, the field on its left.
 *
 * @param line its vertices; the first again at the end if it is a whole ring
 * @param tips where it begins, then where it ends; none if it is a whole ring
 */
record EndRun(List<Coordinate> line, List<Tip> tips) {

  /**
   * One end of a run.
   *
   * @param at the last vertex
   * @param beyond direction of the run there, a unit vector away from it
   * @param inward at a right angle to it, into the field
   * @param along direction of the rows there, into the field
   * @param convex whether the field lies on one side of the run drawn on beyond its end
   */
  record Tip(
      Coordinate at, Coordinate beyond, Coordinate inward, Coordinate along, boolean convex) {}
}
