package org.lynchet.prescription.setback;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.lynchet.prescription.zone.SamplePlans.cornAndSoybean;
import static org.lynchet.prescription.zone.SamplePlans.field;
import static org.lynchet.prescription.zone.SamplePlans.lonLat;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.Polygon;
import org.lynchet.prescription.fault.Warning;
import org.lynchet.prescription.plan.PlannedSetback;
import org.lynchet.prescription.plan.PlannedSetback.Side;
import org.lynchet.prescription.quantity.Length;
import org.lynchet.prescription.quantity.LengthUnit;
import org.lynchet.prescription.spraying.SprayedArea;
import org.lynchet.prescription.zone.FieldLayout;
import org.lynchet.prescription.zone.SamplePlans;

/** The AB line runs north, so that metres of offset are east and metres along it are north. */
class SprayPlanTest {
  /** 8 strips of 9.144 m, 400 m long, but for a jag of 1 m in the west side. */
  private static final String FIELD =
      "POLYGON ((0 0, 73.152 0, 73.152 400, 0 400, 0 201, 1 200, 0 199, 0 0))";

  private static FieldLayout layout(Map<Side, Length> sides) throws Exception {
    return FieldLayout.of(
        cornAndSoybean().sprayer(90, 10.0).setback(new PlannedSetback(sides, Map.of())).plan(),
        field(FIELD));
  }

  private static SprayPlan sides(Map<Side, Length> sides) throws Exception {
    return SprayPlan.of(layout(sides), List.of());
  }

  private static double sprayed(SprayPlan plan) {
    return plan.areas().stream().mapToDouble(SprayedArea::areaSquareMetres).sum();
  }

  private static double setAside(SprayPlan plan) {
    return plan.setAside().stream().mapToDouble(SprayPlan.SetAside::areaSquareMetres).sum();
  }

  private static Coordinate metres(Coordinate lonLat) {
    return SamplePlans.FRAME.toOffset(lonLat.x, lonLat.y);
  }

  @Test
  void withoutSetbackAllIsSprayed() throws Exception {
    FieldLayout layout = layout(Map.of());
    SprayPlan plan = SprayPlan.of(layout, List.of());
    assertThat(plan.warnings()).isEmpty();
    assertThat(plan.areas()).isEqualTo(layout.spraying().areas());
    assertThat(plan.setAside()).isEmpty();
  }

  /** A straight side of length L loses L x d, less what a jag into the field takes of it. */
  @ParameterizedTest
  @CsvSource({"NORTH, 10, 731.52", "SOUTH, 5, 365.76", "EAST, 20, 8000"})
  void aSideLosesItsLengthTimesTheDistance(Side side, double metres, double lost) throws Exception {
    SprayPlan plan = sides(Map.of(side, new Length(metres, LengthUnit.METRE)));
    double whole = 73.152 * 400 - 1;
    // An arc's polygon lies up to 0.03 % of the distance outside.
    assertThat(setAside(plan)).isCloseTo(lost, within(4e-4 * lost));
    assertThat(sprayed(plan) + setAside(plan)).isCloseTo(whole, within(1e-6 * whole));
  }

  /** The jag's two edges face north-west and south-west; the side is west all the same. */
  @Test
  void aJagDoesNotChangeTheSide() throws Exception {
    SprayPlan west = sides(Map.of(Side.WEST, new Length(10, LengthUnit.METRE)));
    assertThat(setAside(west)).isBetween(3999.0, 4020.0);
    SprayPlan north = sides(Map.of(Side.NORTH, new Length(10, LengthUnit.METRE)));
    for (SprayedArea area : north.areas()) {
      for (Coordinate at : area.polygon().getCoordinates()) {
        assertThat(metres(at).y).isLessThan(390.0001);
      }
    }
  }

  /** Distances are measured here in metres of the field's plane, by JTS. */
  @Test
  void nothingIsSprayedNearerToANeighbourThanItsDistance() throws Exception {
    Geometry creek = lonLat("LINESTRING (-20 -50, 10 100, -5 300)");
    FieldLayout layout = layout(Map.of());
    SprayPlan plan = SprayPlan.of(layout, List.of(new Neighbour("creek", creek, 15.24)));
    Geometry inMetres = creek.copy();
    inMetres.apply((Coordinate at) -> at.setCoordinate(metres(at)));
    inMetres.geometryChanged();
    double nearest = Double.POSITIVE_INFINITY;
    for (SprayedArea area : plan.areas()) {
      Polygon shape = (Polygon) area.polygon().copy();
      shape.apply((Coordinate at) -> at.setCoordinate(metres(at)));
      shape.geometryChanged();
      assertThat(area.polygon().isValid()).isTrue();
      nearest = Math.min(nearest, shape.distance(inMetres));
    }
    // Nine decimals of a degree move a vertex by less than 0.1 mm.
    assertThat(nearest).isBetween(15.2399, 15.2399 + 0.01);
    assertThat(setAside(plan)).isGreaterThan(1000);
    assertThat(plan.sprayedSquareMetres("corn") + plan.setAsideSquareMetres("corn"))
        .isCloseTo(
            layout.spraying().areas().stream()
                .filter(area -> area.crop().equals("corn"))
                .mapToDouble(SprayedArea::areaSquareMetres)
                .sum(),
            within(1e-3));
  }

  @Test
  void aNeighbourWithoutDistanceIsOnlyListed() throws Exception {
    FieldLayout layout = layout(Map.of());
    Neighbour school = new Neighbour("school", lonLat("LINESTRING (0 0, 73 400)"), 0);
    SprayPlan plan = SprayPlan.of(layout, List.of(school));
    assertThat(plan.areas()).isEqualTo(layout.spraying().areas());
    assertThat(plan.neighbours()).containsExactly(school);
  }

  /** A steep triangle on its base faces east, west and south. */
  @Test
  void aSideThatNothingFacesIsTold() throws Exception {
    FieldLayout triangle =
        FieldLayout.of(
            cornAndSoybean()
                .sprayer(90, 10.0)
                .setback(
                    new PlannedSetback(
                        Map.of(Side.NORTH, new Length(10, LengthUnit.METRE)), Map.of()))
                .plan(),
            field("POLYGON ((0 0, 90 0, 45 300, 0 0))"));
    assertThat(SprayPlan.of(triangle, List.of()).warnings())
        .extracting(Warning::code)
        .containsExactly(Warning.Code.SETBACK_WITHOUT_SIDE);
  }

  @Test
  void aSetbackMayLeaveNothing() throws Exception {
    SprayPlan plan = sides(Map.of(Side.EAST, new Length(100, LengthUnit.METRE)));
    assertThat(plan.areas()).isEmpty();
    assertThat(setAside(plan)).isCloseTo(73.152 * 400 - 1, within(0.1));
    assertThat(plan.warnings())
        .extracting(Warning::code)
        .containsOnly(Warning.Code.SETBACK_LEAVES_NOTHING);
    assertThat(plan.warnings())
        .extracting(Warning::text)
        .anyMatch(text -> text.contains("all of corn"))
        .anyMatch(text -> text.contains("all of soybean"))
        .hasSize(2);
  }
}
