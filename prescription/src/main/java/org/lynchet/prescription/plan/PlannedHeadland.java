package org.lynchet.prescription.plan;

import java.io.Serializable;

/**
 * The outside passes that follow the boundary.
 *
 * @param passes how many, at least 1
 * @param plantedBy the planter's name
 * @param aroundHoles whether each hole gets its headland too
 * @param crop the crop
 * @param seeding product and rate
 */
public record PlannedHeadland(
    int passes, String plantedBy, boolean aroundHoles, String crop, Seeding seeding)
    implements Serializable {}
