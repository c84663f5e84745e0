package org.lynchet.prescription.driving;

import java.io.Serializable;
import java.util.ArrayList;
import java.util.List;
import org.lynchet.prescription.plan.PlannedStrip;
import org.lynchet.prescription.zone.DrivenPass;
import org.lynchet.prescription.zone.FieldLayout;

/**
 * A pass as far as driving and loading go; sprayers and combines drive passes that plant nothing.
 *
 * @param number its number on the field
 * @param strip number of its strip
 * @param centreMetres offset of its centreline
 * @param fromMetres where it begins along the AB line
 * @param toMetres where it ends
 * @param inRowMetres its length in the field, gaps left out
 * @param products what its rows get, left to right; empty if it plants nothing
 * @param rowMetres length of each row in the field, left to right; 0 for none; empty if it plants
 *     nothing
 */
record PlantedPass(
    int number,
    int strip,
    double centreMetres,
    double fromMetres,
    double toMetres,
    double inRowMetres,
    List<String> products,
    List<Double> rowMetres)
    implements Serializable {

  PlantedPass {
    products = List.copyOf(products);
    rowMetres = List.copyOf(rowMetres);
  }

  static PlantedPass of(DrivenPass pass, FieldLayout layout) {
    Stretches stretches = Stretches.of(pass.line(), layout.frame());
    return new PlantedPass(
        pass.pass().number(),
        pass.strip(),
        pass.pass().centreMetres(),
        stretches.fromMetres(),
        stretches.toMetres(),
        stretches.lengthMetres(),
        products(pass, layout.plan().strips().get(pass.inPattern())),
        pass.rowLengthsMetres());
  }

  /** A pass of a machine that plants nothing. */
  static PlantedPass of(int number, int strip, double centreMetres, Stretches stretches) {
    return new PlantedPass(
        number,
        strip,
        centreMetres,
        stretches.fromMetres(),
        stretches.toMetres(),
        stretches.lengthMetres(),
        List.of(),
        List.of());
  }

  private static List<String> products(DrivenPass pass, PlannedStrip planned) {
    PlannedStrip.Border border = planned.border();
    List<String> products = new ArrayList<>();
    for (int row = 1; row <= pass.pass().rows(); row++) {
      boolean other = border != null && pass.isBorder(row);
      products.add(
          other && border != null ? border.seeding().product() : planned.centre().product());
    }
    return products;
  }

  /** What is driven across gaps, with the planter lifted. */
  double gapMetres() {
    return toMetres - fromMetres - inRowMetres;
  }

  /** Where along the AB line it ends if it is driven that way. */
  double endMetres(Direction direction) {
    return direction == Direction.ALONG ? toMetres : fromMetres;
  }

  /** Where along the AB line it begins if it is driven that way. */
  double startMetres(Direction direction) {
    return endMetres(direction.opposite());
  }
}
