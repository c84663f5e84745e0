package org.lynchet.geometry.coverage;

import java.io.Serializable;

/**
 * What sets one region of a field apart from another.
 *
 * @param headland whether it is headland, which is not cut into strips
 * @param managementZone index of the management zone, {@link #NO_ZONE} or {@link #WATERWAY}
 */
public record RegionLabel(boolean headland, int managementZone) implements Serializable {

  /** Outside every management zone, or there are none. */
  public static final int NO_ZONE = -1;

  /** In a waterway: driven across but not planted, whatever the management zone. */
  public static final int WATERWAY = -2;

  /** Whether the region is planted. */
  public boolean planted() {
    return managementZone != WATERWAY;
  }
}
