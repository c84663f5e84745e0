package org.lynchet.prescription.machine;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.lynchet.prescription.quantity.Length;

/**
 * A combine.
 *
 * @param name the name that the plan gives it
 * @param header the width of its header
 * @param crops the crops that it works in; empty for all
 * @param wheels where its wheels run, if the plan says so
 * @param handling how it is driven
 */
public record Combine(
    String name, Length header, List<String> crops, @Nullable Wheels wheels, Handling handling)
    implements Machine {

  /** Copies the list. */
  public Combine {
    crops = List.copyOf(crops);
  }

  @Override
  public double workingWidthMetres() {
    return header.metres();
  }
}
