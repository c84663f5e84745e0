package org.lynchet.prescription.zone;

import java.util.List;
import org.locationtech.jts.geom.Geometry;
import org.lynchet.geometry.coverage.ManagementZone;
import org.lynchet.geometry.guidance.AbLine;
import org.lynchet.geometry.guidance.Guidance;
import org.lynchet.geometry.guidance.OffsetFrame;
import org.lynchet.prescription.fault.Warning;

/**
 * A field as it was read: checked, and in longitude and latitude.
 *
 * @param boundary a valid polygon or multipolygon
 * @param managementZones the management zones, in the order of their first features; empty for none
 * @param guidance the line that machines steer by
 * @param warnings what deserves a second look
 */
public record FieldData(
    Geometry boundary,
    List<ManagementZone> managementZones,
    Guidance guidance,
    List<Warning> warnings) {

  /** Copies the lists. */
  public FieldData {
    managementZones = List.copyOf(managementZones);
    warnings = List.copyOf(warnings);
  }

  /** A field with an AB line. */
  public FieldData(
      Geometry boundary,
      List<ManagementZone> managementZones,
      OffsetFrame frame,
      List<Warning> warnings) {
    this(boundary, managementZones, new AbLine(frame), warnings);
  }
}
