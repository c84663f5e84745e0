package org.lynchet.prescription.light;

import java.util.List;
import org.locationtech.jts.geom.Coordinate;
import org.lynchet.geometry.frame.PlaneFrame;
import org.lynchet.geometry.guidance.OffsetFrame;
import org.lynchet.prescription.fault.Faults;
import org.lynchet.prescription.fault.RejectedException;
import org.lynchet.prescription.plan.Plan;
import org.lynchet.prescription.plan.PlannedGuidance.AlongCurve;
import org.lynchet.prescription.plan.PlannedGuidance.FromFile;
import org.lynchet.prescription.plan.PlannedGuidance.Line;
import org.lynchet.prescription.plan.PlannedGuidance.Position;
import org.lynchet.prescription.plan.PlannedGuidance.ThroughPoint;
import org.lynchet.prescription.plan.PlannedGuidance.ThroughTwoPoints;
import org.lynchet.prescription.plan.PlannedStrip;

/**
 * Asks for the light of a plan's rows: one period of its pattern, at the AB line, whose heading and
 * place it takes. The field's boundary is not needed.
 */
public final class PlanLight {
  private PlanLight() {}

  /**
   * The request that a plan makes.
   *
   * @throws RejectedException with every fault: a latitude with polar days, a crop whose canopy
   *     nobody knows, a season that ends before it starts, a name that the plan does not have, rows
   *     along a curve, an AB line in a file
   */
  public static LightRequest request(Plan plan) throws RejectedException {
    return request(plan, plan.strips());
  }

  /**
   * The request that a plan makes with another pattern. What the forecast of the plan names is held
   * against the plan's own strips.
   *
   * @param strips the pattern, left to right
   * @throws RejectedException as for the plan's own pattern
   */
  public static LightRequest request(Plan plan, List<PlannedStrip> strips)
      throws RejectedException {
    Faults faults = new Faults();
    ForecastNames.check(plan, faults);
    Line line = plan.guidance().line();
    if (!isStraight(plan, line, faults)) {
      faults.throwIfAny();
    }
    PlanSeason season = new PlanSeason(plan, place(line), heading(line), faults);
    List<CanopyRow> rows = new PlanRows(plan.withStrips(strips), season.canopies()).rows();
    faults.throwIfAny();
    return season.request(rows);
  }

  /** A heading of rows is needed; along a curve they have many. */
  private static boolean isStraight(Plan plan, Line line, Faults faults) {
    if (line instanceof AlongCurve) {
      faults.add(
          "rows along a curve have no one heading, which a forecast of light needs",
          plan.place("guidance.curve"),
          "guidance.ab-line",
          "forecast a copy of the plan, with an AB line on the heading of a part of the curve");
      return false;
    }
    if (line instanceof FromFile) {
      faults.add(
          "a forecast of light reads no file of guidance lines",
          plan.place("guidance.ab-line.file"),
          "guidance.ab-line by two points, or by a point and a heading",
          "forecast a copy of the plan, with the AB line by points");
      return false;
    }
    return true;
  }

  private static Position place(Line line) {
    return line instanceof ThroughTwoPoints points ? points.a() : ((ThroughPoint) line).through();
  }

  private static double heading(Line line) {
    if (line instanceof ThroughTwoPoints points) {
      Position a = points.a();
      PlaneFrame plane = PlaneFrame.centredOn(a.longitudeDegrees(), a.latitudeDegrees());
      return OffsetFrame.throughPoints(plane, at(a), at(points.b())).headingDegrees();
    }
    return ((ThroughPoint) line).headingDegrees();
  }

  private static Coordinate at(Position position) {
    return new Coordinate(position.longitudeDegrees(), position.latitudeDegrees());
  }
}
