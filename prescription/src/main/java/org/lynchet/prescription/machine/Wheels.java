package org.lynchet.prescription.machine;

import java.io.Serializable;
import org.lynchet.prescription.quantity.Length;

/**
 * Where a machine's wheels run.
 *
 * @param trackWidth distance of the wheel centres, left to right
 * @param tyreWidth width of a tyre
 */
public record Wheels(Length trackWidth, Length tyreWidth) implements Serializable {}
