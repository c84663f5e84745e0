package org.lynchet.prescription.machine;

import java.io.Serializable;
import java.util.List;
import org.lynchet.prescription.defaults.Defaults;
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
 * @param told the keys of the plan that say so; the rest is by default
 */
public record Handling(
    Speed speed, double efficiency, Time turnTime, Length turnRadius, List<String> told)
    implements Serializable {

  /** Copies the list. */
  public Handling {
    told = List.copyOf(told);
  }

  /** A row-crop planter, by the defaults {@code driving.planter}. */
  public static final Handling PLANTER = ofDefaults("driving.planter.");

  /** A boom sprayer, by the defaults {@code driving.sprayer}. */
  public static final Handling SPRAYER = ofDefaults("driving.sprayer.");

  /** A combine, by the defaults {@code driving.combine}. */
  public static final Handling COMBINE = ofDefaults("driving.combine.");

  private static Handling ofDefaults(String folder) {
    Defaults defaults = Defaults.get();
    return new Handling(
        new Speed(defaults.number(folder + "speed-miles-per-hour"), SpeedUnit.MILE_PER_HOUR),
        defaults.number(folder + "efficiency"),
        new Time(defaults.number(folder + "turn-time-seconds"), TimeUnit.SECOND),
        new Length(defaults.number(folder + "turn-radius-feet"), LengthUnit.FOOT),
        List.of());
  }
}
