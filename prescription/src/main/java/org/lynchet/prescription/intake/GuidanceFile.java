package org.lynchet.prescription.intake;

import java.math.BigDecimal;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.locationtech.jts.geom.Coordinate;
import org.lynchet.formats.FormatException;
import org.lynchet.formats.isoxml.TaskSet;
import org.lynchet.formats.isoxml.TaskSet.Kind;
import org.lynchet.prescription.fault.Faults;
import org.lynchet.prescription.plan.Plan;
import org.lynchet.prescription.plan.PlannedGuidance.FromFile;
import org.lynchet.prescription.plan.PlannedGuidance.Line;
import org.lynchet.prescription.plan.PlannedGuidance.Position;
import org.lynchet.prescription.plan.PlannedGuidance.ThroughPoint;
import org.lynchet.prescription.plan.PlannedGuidance.ThroughTwoPoints;

/** Takes the AB line out of the task data that a plan names. */
final class GuidanceFile {
  private static final String KEY = "guidance.ab-line.file";

  private final Plan plan;
  private final InputTables tables;
  private final Faults faults;

  GuidanceFile(Plan plan, InputTables tables, Faults faults) {
    this.plan = plan;
    this.tables = tables;
    this.faults = faults;
  }

  /** The plan's AB line with what the file says in its place; empty if there were faults. */
  Optional<Line> line() {
    if (!(plan.guidance().line() instanceof FromFile named)) {
      return Optional.of(plan.guidance().line());
    }
    NamedPart part = NamedPart.of(named.file());
    try {
      Optional<Path> file = tables.find(part.file(), KEY);
      return file.isEmpty()
          ? Optional.empty()
          : straight(TaskDataLine.choose(file.get(), part.part(), place()));
    } catch (FormatException e) {
      faults.addAll(e);
      return Optional.empty();
    }
  }

  /** Machines steer by a straight line here: AB lines and A+ lines are, the others are not. */
  private Optional<Line> straight(TaskSet.Line line) {
    List<Coordinate> points = line.points();
    BigDecimal heading = line.headingDegrees();
    if (line.kind() == Kind.AB && points.size() == 2 && !points.get(0).equals2D(points.get(1))) {
      return Optional.of(new ThroughTwoPoints(at(points.get(0)), at(points.get(1))));
    }
    if (line.kind() == Kind.A_PLUS && points.size() == 1 && heading != null && isHeading(heading)) {
      return Optional.of(new ThroughPoint(at(points.get(0)), heading.doubleValue() % 360));
    }
    faults.add(
        TaskDataLine.told(line, "no straight line"),
        place(),
        "an AB line of 2 different points, or an A+ line of a point and a heading of 0 to 360",
        "choose another line, or give the AB line by points; a curve goes under guidance.curve");
    return Optional.empty();
  }

  private static boolean isHeading(BigDecimal heading) {
    return heading.signum() >= 0 && heading.compareTo(BigDecimal.valueOf(360)) <= 0;
  }

  private static Position at(Coordinate point) {
    return new Position(point.x, point.y);
  }

  private String place() {
    return plan.place(KEY);
  }
}
