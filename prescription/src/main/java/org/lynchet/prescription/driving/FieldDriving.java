package org.lynchet.prescription.driving;

import java.io.Serializable;
import java.util.List;
import org.lynchet.prescription.machine.Handling;

/**
 * A sprayer or combine in one crop.
 *
 * @param machineName the machine's name
 * @param crop the crop
 * @param handling how it is driven
 * @param widthMetres the width that it works in a pass: the strip's width by its passes
 * @param workedSquareMetres the area of the crop's strips
 * @param chosen the order with the fewest loops and the least turning
 * @param others the other orders, back and forth
 */
public record FieldDriving(
    String machineName,
    String crop,
    Handling handling,
    double widthMetres,
    double workedSquareMetres,
    DrivingPlan chosen,
    List<DrivingPlan> others)
    implements CropDriving, Serializable {

  /** Copies the list. */
  public FieldDriving {
    others = List.copyOf(others);
  }

  /**
   * Chooses the order.
   *
   * @param passes left to right, at least one
   */
  static FieldDriving of(
      String machine,
      String crop,
      Handling handling,
      double widthMetres,
      double workedSquareMetres,
      List<PlantedPass> passes) {
    List<DrivingPlan> plans = DrivingPlan.backAndForth(passes, handling);
    DrivingPlan chosen = DrivingPlan.best(plans);
    return new FieldDriving(
        machine,
        crop,
        handling,
        widthMetres,
        workedSquareMetres,
        chosen,
        plans.stream().filter(other -> !other.order().equals(chosen.order())).toList());
  }
}
