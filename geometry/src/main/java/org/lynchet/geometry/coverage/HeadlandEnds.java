package org.lynchet.geometry.coverage;

import java.io.Serializable;

/**
 * Where a headland lies that is only where the rows end.
 *
 * @param angleDegrees the boundary carries headland where it is steeper to the rows than this;
 *     above 0, below 90
 * @param rows which way the rows run
 */
public record HeadlandEnds(double angleDegrees, RowDirection rows) implements Serializable {}
