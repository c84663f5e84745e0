package org.lynchet.prescription.driving;

import java.io.Serializable;
import java.util.List;
import org.lynchet.prescription.zone.FieldLayout;

/**
 * The time of one machine in one crop, in strips and in a separate block of the same area.
 *
 * @param machine the machine's name
 * @param crop the crop
 * @param stripHours driving time in strips: in the row, across gaps and in turns
 * @param blockHours the same in a block; filling and waiting, which are taken to be alike, are in
 *     neither
 */
public record FieldTime(String machine, String crop, double stripHours, double blockHours)
    implements Serializable {

  /**
   * The times of all machines of a field.
   *
   * @param driving how the field is driven in strips
   */
  public static List<FieldTime> of(FieldLayout layout, Driving driving) {
    BlockDriving blocks = BlockDriving.of(layout);
    return driving.all().stream()
        .map(
            one ->
                new FieldTime(
                    one.machineName(), one.crop(), one.chosen().drivingHours(), blocks.hours(one)))
        .toList();
  }

  /** How much longer it takes in strips; negative if less. */
  public double moreHours() {
    return stripHours - blockHours;
  }
}
