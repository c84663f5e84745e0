package org.lynchet.prescription.setback;

/**
 * Tells the application exclusion zone of 40 CFR 170.405(a), as amended with effect from 3 December
 * 2024: how far from the equipment nobody but its crew may be while it applies.
 *
 * <p>A table of the federal rule, not advice: the label or a state may ask for more.
 */
public final class ExclusionZone {
  private static final int FAR_FEET = 100;
  private static final int NEAR_FEET = 25;
  private static final double HIGH_INCHES = 12;

  private ExclusionZone() {}

  /** How a pesticide is applied. */
  public enum Way {
    /** From the air. */
    AERIAL,
    /** By air blast or air-propelled. */
    AIR_BLAST,
    /** As fumigant, smoke, mist or fog. */
    FOG_OR_MIST,
    /** As a spray from the ground. */
    GROUND_SPRAY
  }

  /** The droplet sizes of ANSI/ASAE S572, as far as the rule tells them apart. */
  public enum Droplets {
    /** Smaller than medium. */
    FINE,
    /** Medium. */
    MEDIUM,
    /** Larger than medium. */
    COARSE
  }

  /**
   * The zone's radius around the equipment in feet; 0 for none.
   *
   * @param heightInches how far above the soil or the planting medium it is sprayed from
   */
  public static int feet(Way way, Droplets droplets, double heightInches) {
    if (way != Way.GROUND_SPRAY || droplets == Droplets.FINE) {
      return FAR_FEET;
    }
    return heightInches > HIGH_INCHES ? NEAR_FEET : 0;
  }
}
