package org.lynchet.prescription.machine;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.lynchet.prescription.quantity.Length;

/**
 * A sprayer.
 *
 * @param name the name that the plan gives it
 * @param boom the width of its boom
 * @param section the width of one section that can be shut, if the plan says so
 * @param crops the crops that it works in; empty for all
 * @param wheels where its wheels run, if the plan says so
 * @param handling how it is driven
 */
public record Sprayer(
    String name,
    Length boom,
    @Nullable Length section,
    List<String> crops,
    @Nullable Wheels wheels,
    Handling handling)
    implements Machine {

  /** Copies the list. */
  public Sprayer {
    crops = List.copyOf(crops);
  }

  @Override
  public double workingWidthMetres() {
    return boom.metres();
  }
}
