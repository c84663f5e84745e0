package org.lynchet.prescription.driving;

import java.io.Serializable;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.lynchet.prescription.machine.Handling;
import org.lynchet.prescription.machine.Planter;

/**
 * One planter in one crop.
 *
 * @param planter the planter
 * @param crop the crop
 * @param plantedSquareMetres the length of its rows in strips times their spacing
 * @param chosen the order with the fewest loops and the least turning
 * @param others the other orders, back and forth
 * @param loading what goes into its hoppers, or null if it has a central one
 */
public record PlanterDriving(
    Planter planter,
    String crop,
    double plantedSquareMetres,
    DrivingPlan chosen,
    List<DrivingPlan> others,
    @Nullable Loading loading)
    implements CropDriving, Serializable {

  /** Copies the list. */
  public PlanterDriving {
    others = List.copyOf(others);
  }

  @Override
  public String machineName() {
    return planter.name();
  }

  @Override
  public Handling handling() {
    return planter.handling();
  }

  @Override
  public double widthMetres() {
    return planter.workingWidthMetres();
  }

  @Override
  public double workedSquareMetres() {
    return plantedSquareMetres;
  }
}
