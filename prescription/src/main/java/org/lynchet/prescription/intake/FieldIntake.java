package org.lynchet.prescription.intake;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.lynchet.geometry.coverage.ManagementZone;
import org.lynchet.geometry.frame.PlaneFrame;
import org.lynchet.geometry.guidance.AbLine;
import org.lynchet.geometry.guidance.Curve;
import org.lynchet.geometry.guidance.Guidance;
import org.lynchet.prescription.fault.Faults;
import org.lynchet.prescription.fault.RejectedException;
import org.lynchet.prescription.fault.Warning;
import org.lynchet.prescription.machine.Planter;
import org.lynchet.prescription.plan.Plan;
import org.lynchet.prescription.plan.PlannedField;
import org.lynchet.prescription.plan.PlannedField.ManagementZoneMap;
import org.lynchet.prescription.plan.PlannedGuidance.AlongCurve;
import org.lynchet.prescription.zone.FieldData;

/** Reads the boundary, the management zones and the guidance line of a plan. */
public final class FieldIntake {
  private FieldIntake() {}

  /**
   * Reads and checks everything that the plan names.
   *
   * @throws RejectedException with every fault of every file
   */
  public static FieldData read(Plan plan) throws RejectedException {
    Faults faults = new Faults();
    List<Warning> warnings = new ArrayList<>();
    Areas areas = readAreas(plan.file(), plan.field(), faults, warnings);
    Optional<? extends Guidance> guidance =
        plan.guidance().line() instanceof AlongCurve planned
            ? readCurve(plan, planned, areas.boundary(), faults, warnings)
            : areas
                .boundary()
                .flatMap(field -> new AbLineCheck(plan, faults).frame(field))
                .map(AbLine::new);
    faults.throwIfAny();
    return new FieldData(
        areas.boundary().orElseThrow(), areas.zones(), guidance.orElseThrow(), warnings);
  }

  private static Optional<Curve> readCurve(
      Plan plan,
      AlongCurve planned,
      Optional<Geometry> boundary,
      Faults faults,
      List<Warning> warnings) {
    Optional<List<Coordinate>> points =
        new InputTables(plan.file(), faults, warnings)
            .readLines(planned.file(), "guidance.curve")
            .flatMap(table -> new CurveFile(planned, faults).points(table));
    double widestPass =
        plan.strips().stream()
            .map(strip -> plan.machines().get(strip.plantedBy()))
            .mapToDouble(machine -> machine instanceof Planter p ? p.workingWidthMetres() : 0)
            .max()
            .orElse(0);
    return boundary.flatMap(
        field ->
            points.flatMap(
                line -> new CurveCheck(planned.file(), field, faults).curve(line, widestPass)));
  }

  /** Adds the faults of the files that the field names: for a plan that has faults elsewhere. */
  public static void check(String planFile, PlannedField field, Faults faults) {
    readAreas(planFile, field, faults, new ArrayList<>());
  }

  private record Areas(Optional<Geometry> boundary, List<ManagementZone> zones) {}

  private static Areas readAreas(
      String planFile, PlannedField field, Faults faults, List<Warning> warnings) {
    InputTables tables = new InputTables(planFile, faults, warnings);
    Optional<Geometry> boundary =
        tables
            .read(field.boundary(), "field.boundary")
            .flatMap(table -> new BoundaryCheck(field, faults, warnings).check(table));
    ManagementZoneMap map = field.managementZones();
    List<ManagementZone> zones = new ArrayList<>();
    if (map != null) {
      tables
          .read(map.file(), "field.management-zones.file")
          .ifPresent(
              table -> zones.addAll(new ZoneMapCheck(field.repair(), map, faults).check(table)));
    }
    return new Areas(boundary, zones);
  }

  /** The plane around a boundary. */
  static PlaneFrame planeAround(Geometry boundary) {
    var box = boundary.getEnvelopeInternal();
    return PlaneFrame.centredOn(
        (box.getMinX() + box.getMaxX()) / 2, (box.getMinY() + box.getMaxY()) / 2);
  }
}
