package org.lynchet.prescription.machine;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.lynchet.prescription.quantity.Length;

/**
 * Any other implement that covers its whole width: a cultivator, a mower, a fertilizer bar.
 *
 * @param name the name that the plan gives it
 * @param width its working width
 * @param crops the crops that it works in; empty for all
 * @param wheels where its wheels run, if the plan says so
 */
public record Toolbar(String name, Length width, List<String> crops, @Nullable Wheels wheels)
    implements Machine {

  /** Copies the list. */
  public Toolbar {
    crops = List.copyOf(crops);
  }

  @Override
  public double workingWidthMetres() {
    return width.metres();
  }
}
