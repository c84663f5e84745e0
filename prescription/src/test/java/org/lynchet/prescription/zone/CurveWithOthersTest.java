package org.lynchet.prescription.zone;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.lynchet.prescription.zone.CurvedFields.HALF_ANGLE;
import static org.lynchet.prescription.zone.CurvedFields.RADIUS;
import static org.lynchet.prescription.zone.SamplePlans.cornAndSoybean;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.lynchet.geometry.coverage.Waterway;
import org.lynchet.prescription.fault.RejectedException;
import org.lynchet.prescription.spraying.SprayPass;
import org.lynchet.prescription.spraying.SprayedArea;

/**
 * A curve together with headland at the ends, waterways and sprayers: on the sector of a ring, the
 * curve its middle circle, everything has a closed form.
 */
class CurveWithOthersTest {
  /** Planter and strips: 30 ft. */
  private static final double WIDTH = 9.144;

  @Test
  void theHeadlandAtTheEndsLiesAcrossTheCurvesRows() throws RejectedException {
    FieldLayout layout = layout(cornAndSoybean().headlandAtEnds(1, 30), null);
    double headland = 0;
    for (Zone zone : layout.zones()) {
      if (zone.kind() == Zone.Kind.HEADLAND) {
        headland += zone.areaSquareMetres();
      }
    }
    // Both ends are 100 m long; rows meet them at right angles, however the ring turns
    assertThat(headland).isCloseTo(2 * 100 * WIDTH, within(1e-3 * 2 * 100 * WIDTH));
    for (DrivenPass pass : layout.passes()) {
      if (!pass.partial()) {
        double radius = RADIUS + pass.pass().centreMetres();
        // The headland's inner edge is straight: the outer edge of a pass is the last to meet it
        double angle = HALF_ANGLE - Math.asin(WIDTH / (radius + WIDTH / 2));
        assertThat(metres(pass.line())).isCloseTo(2 * angle * radius, within(0.01));
      }
    }
  }

  @Test
  void headlandPassesAtTheEndsRunAcrossTheRows() throws RejectedException {
    FieldLayout layout = layout(cornAndSoybean().headlandAtEnds(2, 30), null);
    assertThat(layout.headlandPasses()).hasSize(2);
    for (HeadlandPass pass : layout.headlandPasses()) {
      assertThat(pass.line().getNumGeometries()).isEqualTo(2);
      assertThat(metres(pass.line())).isCloseTo(200, within(2.0));
    }
  }

  @Test
  void headlandPassesAllAroundKeepTheirDistance() throws RejectedException {
    FieldLayout layout = layout(cornAndSoybean().headland(1, true), null);
    HeadlandPass pass = layout.headlandPasses().get(0);
    Geometry boundary = inMetres(layout.boundary()).getBoundary();
    Geometry line = inMetres(pass.line());
    for (Coordinate at : line.getCoordinates()) {
      assertThat(boundary.distance(line.getFactory().createPoint(at)))
          .isCloseTo(WIDTH / 2, within(0.01));
    }
  }

  /** A waterway along a radius, 4 m at its middle: passes run across it, rows are shorter by it. */
  @Test
  void waterwaysAreCrossedAndNotPlanted() throws RejectedException {
    String way = CurvedFields.sector(340, 460, -0.005, 0.005);
    FieldLayout dry = layout(cornAndSoybean(), null);
    FieldLayout wet = layout(cornAndSoybean(), way);
    assertThat(wet.passes())
        .extracting(DrivenPass::line)
        .isEqualTo(dry.passes().stream().map(DrivenPass::line).toList());
    double area = wet.waterways().stream().mapToDouble(Waterway::areaSquareMetres).sum();
    assertThat(area).isCloseTo(0.01 * 100 * RADIUS, within(0.01));
    double planted = wet.zones().stream().mapToDouble(Zone::areaSquareMetres).sum();
    assertThat((planted + area) / wet.areaSquareMetres()).isCloseTo(1, within(1e-9));
    for (DrivenPass pass : wet.passes()) {
      for (int row = 1; !pass.partial() && row <= pass.pass().rows(); row++) {
        double radius = RADIUS + pass.pass().rowMetres(row);
        assertThat(pass.rowLengthsMetres().get(row - 1))
            .isCloseTo((2 * HALF_ANGLE - 0.01) * radius, within(5e-3));
      }
    }
  }

  /** The boom's middle runs around its own circle, and what is sprayed is what is planted. */
  @Test
  void sprayersRunAlongTheCurve() throws RejectedException {
    FieldLayout layout = layout(cornAndSoybean().sprayer(90, 10.0).minimumPiece(0), null);
    assertThat(layout.spraying().passes()).hasSizeGreaterThan(10);
    for (SprayPass pass : layout.spraying().passes()) {
      for (Coordinate at : inMetres(pass.line()).getCoordinates()) {
        double radius = Math.hypot(at.x + RADIUS, at.y);
        assertThat(radius).isCloseTo(RADIUS + pass.offsetMetres(), within(1e-3));
      }
      assertThat(metres(pass.line()))
          .isCloseTo(2 * HALF_ANGLE * (RADIUS + pass.offsetMetres()), within(1e-2));
    }
    for (String crop : List.of("corn", "soybean")) {
      double planted = 0;
      for (Zone zone : layout.zones()) {
        planted += zone.crop().equals(crop) ? zone.areaSquareMetres() : 0;
      }
      double sprayed = 0;
      for (SprayedArea area : layout.spraying().areas()) {
        sprayed += area.crop().equals(crop) ? area.areaSquareMetres() : 0;
      }
      assertThat(sprayed).isCloseTo(planted, within(1e-6 * planted));
    }
  }

  private static FieldLayout layout(SamplePlans plans, @Nullable String waterways)
      throws RejectedException {
    return FieldLayout.of(plans.plan(), CurvedFields.ring(waterways));
  }

  private static double metres(Geometry lonLat) {
    return inMetres(lonLat).getLength();
  }

  private static Geometry inMetres(Geometry lonLat) {
    Geometry copy = lonLat.copy();
    copy.apply((Coordinate at) -> at.setCoordinate(SamplePlans.FRAME.toOffset(at.x, at.y)));
    copy.geometryChanged();
    return copy;
  }
}
