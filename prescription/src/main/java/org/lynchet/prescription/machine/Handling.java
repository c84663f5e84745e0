package org.lynchet.prescription.machine;

import java.io.Serializable;
import org.lynchet.prescription.quantity.Length;
import org.lynchet.prescription.quantity.LengthUnit;
import org.lynchet.prescription.quantity.Speed;
import org.lynchet.prescription.quantity.SpeedUnit;
import org.lynchet.prescription.quantity.Time;
import org.lynchet.prescription.quantity.TimeUnit;

/**
 * How a machine is driven.
 *
 * @param speed its speed in the row
 * @param efficiency the share of the time in the field that it works its whole width at that speed,
 *     above 0, at most 1: turning, filling and waiting take the rest
 * @param turnTime the time of a half circle at the end of a pass
 * @param turnRadius the radius of the tightest circle that its centre can follow
 */
public record Handling(Speed speed, double efficiency, Time turnTime, Length turnRadius)
    implements Serializable {

  /** A row-crop planter: 5 mph, 65 %, 20 s and 20 ft: common practice, no source. */
  public static final Handling PLANTER = at(5);

  /**
   * A boom sprayer: 6.5 mph and 65 %, typical in ASAE D497 (from memory), 20 s and 20 ft: common
   * practice, no source.
   */
  public static final Handling SPRAYER = at(6.5);

  /**
   * A combine: 3 mph and 65 %, typical in ASAE D497 (from memory), 20 s and 20 ft: common practice,
   * no source.
   */
  public static final Handling COMBINE = at(3);

  private static Handling at(double milesPerHour) {
    return new Handling(
        new Speed(milesPerHour, SpeedUnit.MILE_PER_HOUR),
        0.65,
        new Time(20, TimeUnit.SECOND),
        new Length(20, LengthUnit.FOOT));
  }
}
