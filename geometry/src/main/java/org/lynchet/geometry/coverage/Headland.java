package org.lynchet.geometry.coverage;

import java.io.Serializable;

/**
 * How wide the headland is and what it follows.
 *
 * @param widthMetres its width, above 0
 * @param aroundHoles whether it follows the holes too
 */
public record Headland(double widthMetres, boolean aroundHoles) implements Serializable {}
