package org.lynchet.prescription.fit;

import java.io.Serializable;

/**
 * One strip of a candidate.
 *
 * @param crop the crop
 * @param passes passes of its planter
 * @param rows its rows
 * @param widthMetres its width
 * @param borderRowShare share of its rows that are border rows
 * @param share its share of the period
 */
public record StripWidth(
    String crop, int passes, int rows, double widthMetres, double borderRowShare, double share)
    implements Serializable {}
