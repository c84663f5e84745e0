package org.lynchet.geometry.strip;

import java.io.Serializable;

/**
 * A part of a strip between two neighbouring cuts.
 *
 * @param strip number of the strip
 * @param border whether it is border rows
 * @param pass number of the pass in which it lies, or 0 if it may run over several
 */
public record Band(int strip, boolean border, int pass) implements Serializable {}
