package org.lynchet.prescription.zone;

import java.util.List;
import org.jspecify.annotations.Nullable;
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
 * @param waterways valid polygons that are driven across but not planted, or null for none
 */
public record FieldData(
    Geometry boundary,
    List<ManagementZone> managementZones,
    Guidance guidance,
    List<Warning> warnings,
    @Nullable Geometry waterways) {

  /** A field with an AB line and without waterways. */
  public FieldData(
      Geometry boundary,
      List<ManagementZone> managementZones,
      OffsetFrame frame,
      List<Warning> warnings) {
    this(boundary, managementZones, new AbLine(frame), warnings, null);
  }

  /** Copies the lists. */
  public FieldData {
    managementZones = List.copyOf(managementZones);
    warnings = List.copyOf(warnings);
  }

  /** The same field along another AB line. */
  public FieldData withFrame(OffsetFrame other) {
    return new FieldData(boundary, managementZones, new AbLine(other), warnings, waterways);
  }

  /** The frame of the guidance line. */
  public OffsetFrame frame() {
    return guidance.frame();
  }
}
