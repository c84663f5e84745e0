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
import org.lynchet.prescription.plan.PlannedGuidance.Line;
import org.lynchet.prescription.quantity.ShownUnits;
import org.lynchet.prescription.zone.FieldData;

/** Reads the boundary, the management zones, the waterways and the guidance line of a plan. */
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
    InputTables tables = new InputTables(NamedBy.plan(plan.file()), faults, warnings);
    Areas areas = readAreas(tables, plan.field(), plan.shownUnits(), faults, warnings);
    Optional<? extends Guidance> guidance =
        plan.guidance().line() instanceof AlongCurve planned
            ? readCurve(plan, planned, tables, areas.boundary(), faults)
            : readAbLine(plan, tables, areas.boundary(), faults);
    faults.throwIfAny();
    return new FieldData(
        areas.boundary().orElseThrow(),
        areas.zones(),
        guidance.orElseThrow(),
        warnings,
        areas.waterways().orElse(null));
  }

  private static Optional<AbLine> readAbLine(
      Plan plan, InputTables tables, Optional<Geometry> boundary, Faults faults) {
    Optional<Line> line = new GuidanceFile(plan, tables, faults).line();
    return boundary
        .flatMap(field -> line.flatMap(l -> new AbLineCheck(plan, l, faults).frame(field)))
        .map(AbLine::new);
  }

  private static Optional<Curve> readCurve(
      Plan plan,
      AlongCurve planned,
      InputTables tables,
      Optional<Geometry> boundary,
      Faults faults) {
    Optional<List<Coordinate>> points =
        tables
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
    List<Warning> warnings = new ArrayList<>();
    readAreas(
        new InputTables(NamedBy.plan(planFile), faults, warnings),
        field,
        ShownUnits.METRIC, // warnings are not told beside faults
        faults,
        warnings);
  }

  private record Areas(
      Optional<Geometry> boundary, List<ManagementZone> zones, Optional<Geometry> waterways) {}

  private static Areas readAreas(
      InputTables tables,
      PlannedField field,
      ShownUnits units,
      Faults faults,
      List<Warning> warnings) {
    Optional<Geometry> boundary =
        tables
            .read(field.boundary(), "field.boundary")
            .flatMap(table -> new BoundaryCheck(field, units, faults, warnings).check(table));
    ManagementZoneMap map = field.managementZones();
    List<ManagementZone> zones = new ArrayList<>();
    if (map != null) {
      tables
          .readZones(map.file(), "field.management-zones.file")
          .ifPresent(
              table -> zones.addAll(new ZoneMapCheck(field.repair(), map, faults).check(table)));
    }
    Optional<Geometry> waterways = Optional.empty();
    String file = field.waterways();
    if (file != null) {
      WaterwayCheck check = new WaterwayCheck(file, field.repair(), faults, warnings);
      waterways =
          tables.read(file, "field.waterways").flatMap(table -> check.check(table, boundary));
    }
    return new Areas(boundary, zones, waterways);
  }

  /** The plane around a boundary. */
  static PlaneFrame planeAround(Geometry boundary) {
    var box = boundary.getEnvelopeInternal();
    return PlaneFrame.centredOn(
        (box.getMinX() + box.getMaxX()) / 2, (box.getMinY() + box.getMaxY()) / 2);
  }
}
