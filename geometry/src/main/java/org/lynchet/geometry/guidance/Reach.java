package org.lynchet.geometry.guidance;

import java.io.Serializable;

/**
 * From which offset to which a place reaches.
 *
 * @param leastMetres the least offset
 * @param greatestMetres the greatest offset
 */
public record Reach(double leastMetres, double greatestMetres) implements Serializable {}
