package org.lynchet.geometry.coverage;

import java.io.Serializable;
import org.locationtech.jts.geom.Polygon;

/**
 * A part of the field that is driven across but not planted.
 *
 * @param polygon longitude (x) and latitude (y) in degrees, rounded to 9 decimals
 * @param areaSquareMetres its area in the plane
 */
public record Waterway(Polygon polygon, double areaSquareMetres) implements Serializable {}
