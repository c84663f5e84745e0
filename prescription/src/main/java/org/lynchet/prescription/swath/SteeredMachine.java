package org.lynchet.prescription.swath;

import java.io.Serializable;
import org.jspecify.annotations.Nullable;
import org.lynchet.prescription.quantity.Length;

/**
 * A machine as far as its width goes, in 0.1 mm.
 *
 * @param width its working width, above 0
 * @param section the width of a section that can be shut; 0 if it has none
 */
public record SteeredMachine(long width, long section) implements Serializable {

  /**
   * A machine as wide as a plan says.
   *
   * @param section null if it has none
   */
  public static SteeredMachine of(Length width, @Nullable Length section) {
    return new SteeredMachine(
        width.tenthsOfMillimetre(), section == null ? 0 : section.tenthsOfMillimetre());
  }

  /** Whole sections of its width; 1 if it has none. What is left of the width is not used. */
  long sections() {
    return section == 0 ? 1 : width / section;
  }

  /** The width of a section, or the whole width if it has none. */
  long step() {
    return section == 0 ? width : section;
  }
}
