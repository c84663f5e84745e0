package org.lynchet.geometry.coverage;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.ShrinkingMode;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.util.AffineTransformation;

/** Mirrored, turned and shifted fields have mirrored, turned and shifted cells. */
class SymmetryPropertyTest {

  @Property(seed = "31", tries = 40, shrinking = ShrinkingMode.OFF)
  void mirroredFieldsHaveMirroredCells(@ForAll long seed) {
    Random random = new Random(seed);
    Geometry field = RandomFields.any(random);
    double[] cuts = RandomFields.cuts(random, field.getEnvelopeInternal());
    double[] mirrored = new double[cuts.length];
    Arrays.setAll(mirrored, i -> -cuts[cuts.length - 1 - i]);
    Geometry other = AffineTransformation.scaleInstance(-1, 1).transform(field);
    double[] areas = cellAreas(cut(field, cuts), cuts.length, false);
    assertThat(cellAreas(cut(other, mirrored), cuts.length, true))
        .containsExactly(areas, within(1e-5));
  }

  @Property(seed = "32", tries = 40, shrinking = ShrinkingMode.OFF)
  void shiftedFieldsHaveTheSameCells(@ForAll long seed) {
    Random random = new Random(seed);
    Geometry field = RandomFields.any(random);
    double[] cuts = RandomFields.cuts(random, field.getEnvelopeInternal());
    double shift = 500 * random.nextDouble();
    Geometry other = AffineTransformation.translationInstance(shift, -shift).transform(field);
    double[] areas = cellAreas(cut(field, cuts), cuts.length, false);
    double[] shifted = Arrays.stream(cuts).map(cut -> cut + shift).toArray();
    assertThat(cellAreas(cut(other, shifted), cuts.length, false))
        .containsExactly(areas, within(1e-5));
  }

  /**
   * The same field on the ground with the AB line's frame turned, and cuts along it turned back.
   */
  @Property(seed = "33", tries = 40, shrinking = ShrinkingMode.OFF)
  void turningFieldAndHeadingKeepsAreas(@ForAll long seed) {
    Random random = new Random(seed);
    Geometry field = RandomFields.any(random);
    double[] cuts = RandomFields.cuts(random, field.getEnvelopeInternal());
    double[] areas = cellAreas(cut(field, cuts), cuts.length, false);
    double heading = 360 * random.nextDouble();
    Geometry onGround = field.copy();
    onGround.apply(
        (Coordinate at) -> at.setCoordinate(TestField.frame(heading).toLonLat(at.x, at.y)));
    onGround.geometryChanged();
    Regions turned = Regions.whole(FieldShape.of(onGround, TestField.frame(heading)));
    assertThat(cellAreas(Coverage.cut(turned, cuts), cuts.length, false))
        .containsExactly(areas, within(1e-5));
  }

  /** The laws of a partition are held elsewhere. */
  private static Coverage cut(Geometry field, double[] cuts) {
    return Coverage.cut(TestField.of(field).regions(), cuts);
  }

  /** Areas of the cells, band by band from the left, rising within each. */
  private static double[] cellAreas(Coverage coverage, int lastBand, boolean fromRight) {
    return coverage.cells().stream()
        .map(
            cell ->
                new double[] {
                  fromRight ? lastBand - cell.band() : cell.band(), coverage.areaSquareMetres(cell)
                })
        .sorted((p, q) -> p[0] == q[0] ? Double.compare(p[1], q[1]) : Double.compare(p[0], q[0]))
        .mapToDouble(cell -> cell[1])
        .toArray();
  }
}
