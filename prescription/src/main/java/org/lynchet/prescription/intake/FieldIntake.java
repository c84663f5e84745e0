package org.lynchet.prescription.intake;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.locationtech.jts.geom.Geometry;
import org.lynchet.geometry.coverage.ManagementZone;
import org.lynchet.geometry.frame.PlaneFrame;
import org.lynchet.geometry.guidance.OffsetFrame;
import org.lynchet.prescription.fault.Faults;
import org.lynchet.prescription.fault.RejectedException;
import org.lynchet.prescription.fault.Warning;
import org.lynchet.prescription.plan.Plan;
import org.lynchet.prescription.plan.PlannedField.ManagementZoneMap;
import org.lynchet.prescription.zone.FieldData;

/** Reads the boundary, the management zones and the AB line of a plan. */
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
    InputTables tables = new InputTables(plan, faults, warnings);
    Optional<Geometry> boundary =
        tables
            .read(plan.field().boundary(), "field.boundary")
            .flatMap(table -> new BoundaryCheck(plan, faults, warnings).check(table));
    ManagementZoneMap map = plan.field().managementZones();
    List<ManagementZone> zones = new ArrayList<>();
    if (map != null) {
      tables
          .read(map.file(), "field.management-zones.file")
          .ifPresent(table -> zones.addAll(new ZoneMapCheck(plan, map, faults).check(table)));
    }
    Optional<OffsetFrame> frame =
        boundary.flatMap(field -> new AbLineCheck(plan, faults).frame(field));
    faults.throwIfAny();
    return new FieldData(boundary.orElseThrow(), zones, frame.orElseThrow(), warnings);
  }

  /** The plane around a boundary. */
  static PlaneFrame planeAround(Geometry boundary) {
    var box = boundary.getEnvelopeInternal();
    return PlaneFrame.centredOn(
        (box.getMinX() + box.getMaxX()) / 2, (box.getMinY() + box.getMaxY()) / 2);
  }
}
