package org.lynchet.prescription.driving;

import java.io.Serializable;
import java.util.ArrayList;
import java.util.List;
import org.lynchet.geometry.guidance.Guidance;
import org.lynchet.prescription.plan.PlannedStrip;
import org.lynchet.prescription.zone.DrivenPass;
import org.lynchet.prescription.zone.FieldLayout;

/**
 * A pass as far as driving and loading go; sprayers and combines drive passes that plant nothing.
 *
 * @param number its number on the field
 * @param strip number of its strip
 * @param centreMetres offset of its centreline
 * @param fromMetres where it begins along the guidance line
 * @param toMetres where it ends
 * @param inRowMetres its length in the field, gaps left out
 * @param gapMetres what is driven across gaps, with the machine lifted
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
    double gapMetres,
    List<String> products,
    List<Double> rowMetres)
    implements Serializable {

  PlantedPass {
    products = List.copyOf(products);
    rowMetres = List.copyOf(rowMetres);
  }

  /** A pass of a straight line. */
  PlantedPass(
      int number,
      int strip,
      double centreMetres,
      double fromMetres,
      double toMetres,
      double inRowMetres,
      List<String> products,
      List<Double> rowMetres) {
    this(
        number,
        strip,
        centreMetres,
        fromMetres,
        toMetres,
        inRowMetres,
        toMetres - fromMetres - inRowMetres,
        products,
        rowMetres);
  }

  static PlantedPass of(DrivenPass pass, FieldLayout layout) {
    Stretches stretches = Stretches.of(pass.line(), layout.guidance());
    double centre = pass.pass().centreMetres();
    double length = stretches.lengthMetres(layout.guidance(), centre);
    return new PlantedPass(
        pass.pass().number(),
        pass.strip(),
        pass.pass().centreMetres(),
        stretches.fromMetres(),
        stretches.toMetres(),
        length,
        stretches.wholeMetres(layout.guidance(), centre) - length,
        products(pass, layout.plan().strips().get(pass.inPattern())),
        pass.rowLengthsMetres());
  }

  /** A pass of a machine that plants nothing. */
  static PlantedPass of(
      int number, int strip, double centreMetres, Stretches stretches, Guidance guidance) {
    double length = stretches.lengthMetres(guidance, centreMetres);
    return new PlantedPass(
        number,
        strip,
        centreMetres,
        stretches.fromMetres(),
        stretches.toMetres(),
        length,
        stretches.wholeMetres(guidance, centreMetres) - length,
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

  /** Where along the guidance line it ends if it is driven that way. */
  double endMetres(Direction direction) {
    return direction == Direction.ALONG ? toMetres : fromMetres;
  }

  /** Where along the guidance line it begins if it is driven that way. */
  double startMetres(Direction direction) {
    return endMetres(direction.opposite());
  }
}
