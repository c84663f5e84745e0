package org.lynchet.prescription.zone;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.locationtech.jts.geom.Geometry;
import org.lynchet.geometry.coverage.DrawnHeadland;
import org.lynchet.geometry.coverage.FieldShape;
import org.lynchet.geometry.coverage.ManagementZone;
import org.lynchet.geometry.coverage.Regions;

/**
 * Divides a field in the ways in which it is looked at: planted, sprayed and driven across. Each is
 * made when it is first asked for, since not everyone who wants zones wants passes or spray areas.
 */
final class FieldDivision {
  private final FieldData field;
  private final FieldShape shape;
  private final @Nullable DrawnHeadland headland;
  private @Nullable Regions byHeadland;
  private @Nullable Regions byWaterways;

  FieldDivision(FieldData field, FieldShape shape, @Nullable DrawnHeadland headland) {
    this.field = field;
    this.shape = shape;
    this.headland = headland;
  }

  /** By headland alone: passes run across waterways. */
  Regions byHeadland() {
    Regions regions = byHeadland;
    if (regions == null) {
      regions = divided(List.of(), null);
      byHeadland = regions;
    }
    return regions;
  }

  /** By headland and waterways: neither is sprayed by the passes of strips. */
  Regions byWaterways() {
    if (field.waterways() == null) {
      return byHeadland();
    }
    Regions regions = byWaterways;
    if (regions == null) {
      regions = divided(List.of(), field.waterways());
      byWaterways = regions;
    }
    return regions;
  }

  /** By headland, waterways and management zones. */
  Regions byZones() {
    return divided(field.managementZones(), field.waterways());
  }

  private Regions divided(List<ManagementZone> zones, @Nullable Geometry waterways) {
    return headland == null
        ? Regions.divided(shape, null, zones, waterways)
        : Regions.divided(headland, zones, waterways);
  }
}
