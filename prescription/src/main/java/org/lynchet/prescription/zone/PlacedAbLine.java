package org.lynchet.prescription.zone;

import org.locationtech.jts.geom.Coordinate;
import org.lynchet.geometry.guidance.OffsetFrame;
import org.lynchet.prescription.plan.PlannedGuidance;
import org.lynchet.prescription.plan.PlannedGuidance.Position;
import org.lynchet.prescription.plan.PlannedGuidance.ThroughTwoPoints;

/**
 * Gives two points of the AB line where it was placed, which need not be where the plan has it.
 *
 * @param a longitude (x) and latitude (y) in degrees
 * @param b the same; as far from A as the plan's B, or 500 m where the plan has no B
 */
public record PlacedAbLine(Coordinate a, Coordinate b) {
  private static final double SECOND_POINT_METRES = 500;

  /** The line of a layout; of a curve's frame, which lies along the middle of its directions. */
  public static PlacedAbLine of(FieldLayout layout) {
    OffsetFrame frame = layout.frame();
    PlannedGuidance.Line line = layout.plan().guidance().line();
    double along =
        line instanceof ThroughTwoPoints points
            ? at(frame, points.a()).distance(at(frame, points.b()))
            : SECOND_POINT_METRES;
    return new PlacedAbLine(frame.toLonLat(0, 0), frame.toLonLat(0, along));
  }

  private static Coordinate at(OffsetFrame frame, Position position) {
    return frame.toOffset(position.longitudeDegrees(), position.latitudeDegrees());
  }
}
