package org.lynchet.prescription.zone;

import java.io.Serializable;
import org.locationtech.jts.geom.Geometry;
import org.lynchet.geometry.pass.Pass;

/**
 * One pass of a planter on the field.
 *
 * @param pass its swath and rows
 * @param machine the planter's name
 * @param crop the crop
 * @param strip number of the strip
 * @param partial whether it is narrower than its machine over the whole length of some piece
 * @param rowsInField how many of its rows have any length in the field
 * @param rowLengthMetres length of its rows together
 * @param line its centreline, longitude (x) and latitude (y) in degrees: a line for each stretch in
 *     which any of its swath is in the field
 */
public record DrivenPass(
    Pass pass,
    String machine,
    String crop,
    int strip,
    boolean partial,
    int rowsInField,
    double rowLengthMetres,
    Geometry line)
    implements Serializable {}
