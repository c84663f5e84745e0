package org.lynchet.geometry.coverage;

import java.io.Serializable;
import org.lynchet.geometry.guidance.Guidance;

/**
 * Where a headland lies that is only where the rows end.
 *
 * @param angleDegrees the boundary carries headland where it is steeper to the rows than this;
 *     above 0, below 90
 * @param rows the line that rows run along
 */
public record HeadlandEnds(double angleDegrees, Guidance rows) implements Serializable {}
