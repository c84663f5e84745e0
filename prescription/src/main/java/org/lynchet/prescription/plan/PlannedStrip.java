package org.lynchet.prescription.plan;

import java.io.Serializable;
import org.jspecify.annotations.Nullable;

/**
 * One strip of the pattern.
 *
 * @param crop the crop
 * @param plantedBy the planter's name
 * @param passes whole passes, at least 1
 * @param centre product and rate of the centre rows
 * @param border the border rows, or null if they are like the centre
 */
public record PlannedStrip(
    String crop, String plantedBy, int passes, Seeding centre, @Nullable Border border)
    implements Serializable {

  /**
   * Border rows.
   *
   * @param rows how many on a side, at least 1; both sides together at most the strip's rows
   * @param sides the sides that may have them
   * @param seeding product and rate
   */
  public record Border(int rows, Sides sides, Seeding seeding) implements Serializable {}

  /** Sides of a strip, looking along the AB line. */
  public enum Sides {
    BOTH,
    LEFT,
    RIGHT;

    /** Whether the left side is among them. */
    public boolean left() {
      return this != RIGHT;
    }

    /** Whether the right side is among them. */
    public boolean right() {
      return this != LEFT;
    }
  }
}
