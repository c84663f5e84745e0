package org.lynchet.prescription.setback;

import java.io.Serializable;
import org.locationtech.jts.geom.Geometry;

/**
 * A neighbour as it was read.
 *
 * @param name what the plan calls it
 * @param shape lines and polygons, longitude (x) and latitude (y) in degrees
 * @param distanceMetres how far spraying stays away; 0 if it is only shown
 */
public record Neighbour(String name, Geometry shape, double distanceMetres)
    implements Serializable {}
