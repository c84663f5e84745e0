package org.lynchet.prescription.plan;

import java.util.Arrays;
import org.lynchet.prescription.quantity.AreaUnit;

/**
 * A seeding rate as a plan says it: seeds as set on the planter, or plants that are wanted to
 * stand.
 *
 * @param amount seeds or plants on one of the unit of area
 * @param per the unit of area
 * @param isStand whether they are plants
 */
record PlantingRate(double amount, AreaUnit per, boolean isStand) {
  static PlantingRate of(double amount, String symbol) {
    AreaUnit per =
        Arrays.stream(AreaUnit.values())
            .filter(unit -> symbol.endsWith("/" + unit.symbol()))
            .findFirst()
            .orElseThrow();
    return new PlantingRate(amount, per, symbol.startsWith("plants/"));
  }

  /** Seeds or plants on a square metre. */
  double perSquareMetre() {
    return amount / per.squareMetres();
  }
}
