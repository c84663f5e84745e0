package org.lynchet.geometry.coverage;

import org.locationtech.jts.geom.Geometry;

/**
 * The area of one management zone.
 *
 * @param name its name, for messages
 * @param area a valid polygon or multipolygon of longitudes (x) and latitudes (y) in degrees
 */
public record ManagementZone(String name, Geometry area) {}
