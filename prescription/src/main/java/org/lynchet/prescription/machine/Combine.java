package org.lynchet.prescription.machine;

import org.lynchet.prescription.quantity.Length;

/**
 * A combine.
 *
 * @param name the name that the plan gives it
 * @param header the width of its header
 */
public record Combine(String name, Length header) implements Machine {

  @Override
  public double workingWidthMetres() {
    return header.metres();
  }
}
