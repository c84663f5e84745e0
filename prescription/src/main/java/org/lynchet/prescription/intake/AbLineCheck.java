package org.lynchet.prescription.intake;

import java.util.Locale;
import java.util.Optional;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.lynchet.geometry.frame.PlaneFrame;
import org.lynchet.geometry.guidance.OffsetFrame;
import org.lynchet.prescription.fault.Faults;
import org.lynchet.prescription.plan.Plan;
import org.lynchet.prescription.plan.PlannedGuidance.Line;
import org.lynchet.prescription.plan.PlannedGuidance.Position;
import org.lynchet.prescription.plan.PlannedGuidance.ThroughPoint;
import org.lynchet.prescription.plan.PlannedGuidance.ThroughTwoPoints;

/** Makes the frame of the AB line, if the line lies near the field. */
final class AbLineCheck {
  /** How far the points of an AB line must be apart, in metres, for its heading to be worth it. */
  private static final double NEAREST_POINTS = 1;

  private final Plan plan;
  private final Line line;
  private final Faults faults;

  /** Takes the AB line by points or heading, wherever it was read. */
  AbLineCheck(Plan plan, Line line, Faults faults) {
    this.plan = plan;
    this.line = line;
    this.faults = faults;
  }

  /** The frame of the AB line, or nothing if there were faults. */
  Optional<OffsetFrame> frame(Geometry boundary) {
    PlaneFrame plane = FieldIntake.planeAround(boundary);
    if (line instanceof ThroughTwoPoints points) {
      boolean aIsNear = isNear(boundary, points.a(), "a");
      boolean bIsNear = isNear(boundary, points.b(), "b");
      return aIsNear && bIsNear && areApart(plane, points)
          ? Optional.of(OffsetFrame.throughPoints(plane, at(points.a()), at(points.b())))
          : Optional.empty();
    }
    ThroughPoint point = (ThroughPoint) line;
    return isNear(boundary, point.through(), "through")
        ? Optional.of(OffsetFrame.onHeading(plane, at(point.through()), point.headingDegrees()))
        : Optional.empty();
  }

  private boolean isNear(Geometry boundary, Position position, String key) {
    double distance =
        NearField.metresFrom(boundary, position.longitudeDegrees(), position.latitudeDegrees());
    if (distance <= NearField.FARTHEST) {
      return true;
    }
    faults.add(
        String.format(Locale.ROOT, "the AB line is %.0f km from the field", distance / 1000),
        plan.place("guidance.ab-line." + key),
        "a point at most 10 km from the field; longitude first, then latitude",
        "check both numbers and their order");
    return false;
  }

  private boolean areApart(PlaneFrame plane, ThroughTwoPoints points) {
    Coordinate a = plane.toPlane(points.a().longitudeDegrees(), points.a().latitudeDegrees());
    Coordinate b = plane.toPlane(points.b().longitudeDegrees(), points.b().latitudeDegrees());
    if (a.distance(b) >= NEAREST_POINTS) {
      return true;
    }
    faults.add(
        String.format(Locale.ROOT, "A and B are only %.3f m apart", a.distance(b)),
        plan.place("guidance.ab-line"),
        "points at least 1 m apart, better as far as the field is long",
        "take two points at the ends of the field");
    return false;
  }

  private static Coordinate at(Position position) {
    return new Coordinate(position.longitudeDegrees(), position.latitudeDegrees());
  }
}
