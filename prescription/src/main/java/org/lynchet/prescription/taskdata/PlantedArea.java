package org.lynchet.prescription.taskdata;

import org.locationtech.jts.geom.Geometry;
import org.lynchet.prescription.quantity.SeedingRate;

/**
 * An area that gets one product at one rate.
 *
 * @param crop the crop; empty if it is not known
 * @param product the hybrid or variety; empty if it is not known
 * @param rate seeds per area as set on the planter, at most {@value
 *     SeedingRate#MOST_PER_SQUARE_METRE} seeds/m2
 * @param polygons longitude (x) and latitude (y) in degrees
 */
public record PlantedArea(String crop, String product, SeedingRate rate, Geometry polygons) {

  /** What stands for the crop or the product in tables where nothing is planted. */
  public static final String NOTHING = "none";
}
