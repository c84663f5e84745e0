package org.lynchet.prescription.plan;

import java.io.Serializable;
import org.jspecify.annotations.Nullable;

/**
 * The outside passes that follow the boundary.
 *
 * @param passes how many, at least 1
 * @param plantedBy the planter's name
 * @param aroundHoles whether each hole gets its headland too
 * @param crop the crop
 * @param seeding product and rate
 * @param endAngleDegrees headland lies only where rows meet the boundary at more than this angle,
 *     above 0, below 90; null if it lies all around
 */
public record PlannedHeadland(
    int passes,
    String plantedBy,
    boolean aroundHoles,
    String crop,
    Seeding seeding,
    @Nullable Double endAngleDegrees)
    implements Serializable {

  /** A headland all around. */
  public PlannedHeadland(
      int passes, String plantedBy, boolean aroundHoles, String crop, Seeding seeding) {
    this(passes, plantedBy, aroundHoles, crop, seeding, null);
  }
}
