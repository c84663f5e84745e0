package org.lynchet.prescription.machine;

import org.jspecify.annotations.Nullable;
import org.lynchet.prescription.quantity.Length;

/**
 * A sprayer.
 *
 * @param name the name that the plan gives it
 * @param boom the width of its boom
 * @param section the width of one section that can be shut, if the plan says so
 */
public record Sprayer(String name, Length boom, @Nullable Length section) implements Machine {

  @Override
  public double workingWidthMetres() {
    return boom.metres();
  }
}
