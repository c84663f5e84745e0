package org.lynchet.prescription.plan;

import java.io.Serializable;
import org.jspecify.annotations.Nullable;
import org.lynchet.prescription.quantity.Area;

/**
 * The field.
 *
 * @param name what people call it
 * @param boundary the boundary's file, relative to the plan's folder or absolute
 * @param managementZones the map of management zones, or null for none
 * @param minimumPiece pieces below this area join a neighbour of their strip; 0 joins nothing
 * @param repair whether a self-intersecting boundary is repaired rather than refused
 * @param waterways the file of areas that are driven across but not planted, or null for none
 * @param entrance where machines come in from the road, or null if the plan does not say
 */
public record PlannedField(
    String name,
    String boundary,
    @Nullable ManagementZoneMap managementZones,
    Area minimumPiece,
    boolean repair,
    @Nullable String waterways,
    PlannedGuidance.@Nullable Position entrance)
    implements Serializable {

  /** A field without waterways or entrance. */
  public PlannedField(
      String name,
      String boundary,
      @Nullable ManagementZoneMap managementZones,
      Area minimumPiece,
      boolean repair) {
    this(name, boundary, managementZones, minimumPiece, repair, null, null);
  }

  /**
   * A map of management zones.
   *
   * @param file its file, relative to the plan's folder or absolute
   * @param attribute the column that names the zone
   * @param elsewhere the zone of whatever the map leaves out, or null if it must leave out nothing
   */
  public record ManagementZoneMap(String file, String attribute, @Nullable String elsewhere)
      implements Serializable {}
}
