package org.lynchet.prescription.placement;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.locationtech.jts.geom.Polygon;
import org.lynchet.geometry.coverage.Cell;
import org.lynchet.geometry.coverage.Coverage;
import org.lynchet.geometry.coverage.FieldShape;
import org.lynchet.geometry.coverage.Headland;
import org.lynchet.geometry.coverage.Regions;
import org.lynchet.geometry.sweep.SweptField;
import org.lynchet.prescription.plan.Plan;
import org.lynchet.prescription.zone.FieldData;
import org.lynchet.prescription.zone.PlanPattern;

/**
 * Holds what of a field is planted in strips: all but the headland.
 *
 * @param parts polygons in the offset frame of the field's AB line
 * @param headlandSquareMetres area of the headland
 */
record InsideHeadland(List<Polygon> parts, double headlandSquareMetres) {

  static InsideHeadland of(Plan plan, FieldData field) {
    FieldShape shape = FieldShape.of(field.boundary(), field.frame());
    @Nullable Headland headland = PlanPattern.headland(plan, field.guidance());
    Coverage whole = Coverage.cut(Regions.divided(shape, headland, List.of()), new double[0]);
    double headlandArea = 0;
    for (Cell cell : whole.cells()) {
      headlandArea += cell.region().headland() ? whole.areaSquareMetres(cell) : 0;
    }
    return new InsideHeadland(
        whole.cells().stream()
            .filter(cell -> !cell.region().headland())
            .map(whole::inOffsetFrame)
            .toList(),
        headlandArea);
  }

  /** Swept as seen from the AB line turned about A, clockwise. */
  SweptField swept(double turnDegrees) {
    return SweptField.of(parts, Math.toRadians(turnDegrees));
  }
}
