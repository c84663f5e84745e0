package org.lynchet.prescription.zone;

import java.io.Serializable;
import org.locationtech.jts.geom.Geometry;

/**
 * One pass of a planter along the boundary.
 *
 * @param machine the planter's name
 * @param crop the crop
 * @param number from 1, the innermost
 * @param distanceMetres from the boundary to its centreline
 * @param line its centreline, longitude (x) and latitude (y) in degrees; a line for each ring or
 *     run of the boundary that it follows
 */
public record HeadlandPass(
    String machine, String crop, int number, double distanceMetres, Geometry line)
    implements Serializable {}
