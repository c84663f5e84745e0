package org.lynchet.prescription.driving;

import java.util.List;
import org.lynchet.prescription.machine.Handling;

/** One machine in one crop, as it is driven. */
public sealed interface CropDriving permits PlanterDriving, FieldDriving {

  /** The machine's name. */
  String machineName();

  /** The crop. */
  String crop();

  /** How the machine is driven. */
  Handling handling();

  /** The width that it works in a pass, in metres. */
  double widthMetres();

  /** The area that it works in strips. */
  double workedSquareMetres();

  /** The order with the fewest loops and the least turning. */
  DrivingPlan chosen();

  /** The other orders, back and forth. */
  List<DrivingPlan> others();

  /** Square metres an hour at the machine's speed, width and efficiency. */
  default double capacitySquareMetresPerHour() {
    return FieldCapacity.squareMetresPerHour(
        handling().speed(), widthMetres(), handling().efficiency());
  }

  /** Hours for its strips at that capacity: turning, filling and waiting are in it. */
  default double hoursAtCapacity() {
    return workedSquareMetres() / capacitySquareMetresPerHour();
  }
}
