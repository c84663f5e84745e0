package org.lynchet.prescription.placement;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.locationtech.jts.geom.Coordinate;
import org.lynchet.prescription.plan.PlacementChoices;
import org.lynchet.prescription.plan.PlacementChoices.Kind;
import org.lynchet.prescription.plan.PlacementWeights;
import org.lynchet.prescription.plan.Plan;
import org.lynchet.prescription.quantity.Area;
import org.lynchet.prescription.quantity.AreaUnit;
import org.lynchet.prescription.zone.FieldData;
import org.lynchet.prescription.zone.SamplePlans;

/** Placements worked out by hand; strips are 9.144 m wide, and the AB line runs north. */
class PlacementSearchTest {
  private static final double STRIP = 9.144;

  private static Plan plan(Double... headings) {
    return weighing(PlacementWeights.DEFAULT, Map.of(), headings);
  }

  private static Plan weighing(
      PlacementWeights weights, Map<String, Double> shares, Double... headings) {
    return SamplePlans.cornAndSoybean()
        .placement(new PlacementChoices(Kind.BEST, List.of(headings), weights, shares))
        .plan();
  }

  private static PlacementResult search(Plan plan, FieldData field) {
    return PlacementSearch.of(plan, field).orElseThrow();
  }

  /** A rectangle of so many strips whose left edge lies right of the AB line. */
  private static FieldData strips(double left, double strips) {
    return SamplePlans.field(rectangle(left, left + strips * STRIP));
  }

  private static String rectangle(double left, double right) {
    return String.format(
        Locale.ROOT,
        "POLYGON((%1$.6f 0, %2$.6f 0, %2$.6f 400, %1$.6f 400, %1$.6f 0))",
        left,
        right);
  }

  @Test
  void aFixedPlacementIsNotSearched() {
    assertThat(PlacementSearch.of(SamplePlans.cornAndSoybean().plan(), strips(3, 10))).isEmpty();
  }

  /**
   * Ten strips in a field that begins 3 m right of the AB line: as planned there are 11, of which
   * the first is 6.144 m wide and the last 3 m, 400 m long.
   */
  @Test
  void aPatternIsMovedToWhereTheFieldBegins() {
    PlacementResult result = search(plan(), strips(3, 10));
    assertThat(result.chosen().turnDegrees()).isZero();
    assertThat(result.chosen().shiftMetres()).isEqualTo(3);
    assertThat(result.fixed().terms().partialSquareMetres())
        .isCloseTo((6.144 + 3) * 400, within(1e-3));
    assertThat(result.fixed().terms().pieces()).isEqualTo(11);
    assertThat(result.fixed().terms().turns()).isEqualTo(9);
    assertThat(result.chosen().terms().partialSquareMetres()).isZero();
    assertThat(result.chosen().terms().pieces()).isEqualTo(10);
    assertThat(result.chosen().terms().turns()).isEqualTo(8);
    assertThat(result.chosen().terms().pointRowSquareMetres()).isCloseTo(0, within(1e-3));
    assertThat(result.chosen().costSquareMetres()).isCloseTo(10 * 50 + 8 * 100, within(0.01));
    assertThat(result.headings()).isEqualTo(1);
    // 24 rows of 30 in in a period; and either strip's edge where the field begins, which is where
    // it ends too
    assertThat(result.placements()).isEqualTo(26);
    assertThat(result.frame().toOffset(result.a().longitudeDegrees(), result.a().latitudeDegrees()))
        .satisfies(at -> assertThat(at.distance(new Coordinate(0, 0))).isLessThan(1e-4));
    Coordinate a =
        SamplePlans.FRAME.toOffset(result.a().longitudeDegrees(), result.a().latitudeDegrees());
    Coordinate b =
        SamplePlans.FRAME.toOffset(result.b().longitudeDegrees(), result.b().latitudeDegrees());
    assertThat(a.distance(new Coordinate(3, 0))).isLessThan(1e-4);
    assertThat(b.distance(new Coordinate(3, 400))).isLessThan(1e-4);
  }

  @Test
  void whatIsGoodStays() {
    PlacementResult result = search(plan(0.0, 45.0, 90.0, 180.0), strips(0, 10));
    assertThat(result.isUnchanged()).isTrue();
    assertThat(result.chosen()).isEqualTo(result.fixed());
    // 0 and 180 are the same rows, and those of the plan
    assertThat(result.headings()).isEqualTo(3);
    assertThat(result.frame()).isSameAs(SamplePlans.FRAME);
  }

  /** A square of ten strips lies as well along its other sides, but that is more change. */
  @Test
  void ofEqualsTheLeastChangeIsTaken() {
    FieldData square = SamplePlans.field("POLYGON((3 0, 94.44 0, 94.44 91.44, 3 91.44, 3 0))");
    PlacementResult result = search(plan(90.0, 45.0), square);
    assertThat(result.chosen().turnDegrees()).isZero();
    assertThat(result.chosen().shiftMetres()).isEqualTo(3);
    PlacementResult half = search(plan(), strips(STRIP, 11));
    assertThat(half.chosen().shiftMetres()).isEqualTo(0);
  }

  /** A rectangle of 10 strips along a heading of 30 degrees, drawn along the AB line's north. */
  @ParameterizedTest
  @ValueSource(doubles = {30, 77.5, 330})
  void aHeadingAlongTheFieldIsFound(double heading) {
    double sin = Math.sin(Math.toRadians(heading));
    double cos = Math.cos(Math.toRadians(heading));
    StringBuilder wkt = new StringBuilder("POLYGON((");
    for (double[] at :
        new double[][] {{5, 9}, {5 + 10 * STRIP, 9}, {5 + 10 * STRIP, 409}, {5, 409}, {5, 9}}) {
      wkt.append(
          String.format(
              Locale.ROOT, "%.6f %.6f,", at[0] * cos + at[1] * sin, at[1] * cos - at[0] * sin));
    }
    wkt.setCharAt(wkt.length() - 1, ')');
    PlacementResult result =
        search(plan(0.0, 30.0, 77.5, 120.0, 330.0), SamplePlans.field(wkt + ")"));
    // At the moved A true north is a little elsewhere: 1e-5 degrees a metre at most.
    assertThat(result.frame().headingDegrees()).isCloseTo(heading, within(1e-4));
    assertThat(result.chosen().turnDegrees())
        .isCloseTo(heading > 90 ? heading - 360 : heading, within(1e-9));
    assertThat(result.chosen().terms().partialSquareMetres()).isZero();
    assertThat(result.chosen().terms().pieces()).isEqualTo(10);
  }

  /** Four whole strips and half a one: with crops wanted half and half, half of it is corn. */
  @Test
  void sharesAreReachedIfTheyCountEnough() {
    PlacementWeights onlyShares =
        new PlacementWeights(
            0, 0, 0, 1, new Area(0, AreaUnit.SQUARE_METRE), new Area(0, AreaUnit.SQUARE_METRE));
    FieldData field = strips(0, 5);
    PlacementResult half = search(weighing(onlyShares, Map.of()), field);
    assertThat(half.fixed().terms().otherCropSquareMetres())
        .isCloseTo(STRIP * 400 / 2, within(1e-3));
    assertThat(half.chosen().terms().otherCropSquareMetres()).isCloseTo(0, within(1e-3));
    assertThat(half.chosen().share("corn")).isCloseTo(0.5, within(1e-6));
    // three strips of five are corn as planned
    PlacementResult more = search(weighing(onlyShares, Map.of("corn", 0.6, "soybean", 0.4)), field);
    assertThat(more.isUnchanged()).isTrue();
    assertThat(more.fixed().terms().otherCropSquareMetres()).isCloseTo(0, within(1e-3));
    // and two of five if the pattern begins with soybean
    PlacementResult less = search(weighing(onlyShares, Map.of("corn", 0.4, "soybean", 0.6)), field);
    assertThat(less.chosen().shiftMetres()).isEqualTo(STRIP);
  }

  @Test
  void nothingInsideTheHeadlandStaysAsItIs() {
    Plan plan =
        SamplePlans.cornAndSoybean()
            .headland(6, true)
            .placement(
                new PlacementChoices(Kind.BEST, List.of(33.0), PlacementWeights.DEFAULT, Map.of()))
            .plan();
    PlacementResult result = search(plan, strips(3, 10));
    assertThat(result.isUnchanged()).isTrue();
    assertThat(result.chosen().terms())
        .isEqualTo(
            new PlacementTerms(0, 0, result.chosen().terms().headlandSquareMetres(), 0, 0, 0));
    assertThat(result.chosen().terms().headlandSquareMetres())
        .isCloseTo(10 * STRIP * 400, within(1e-3));
  }

  /** Rows along the field in place of across it: ends of 10 strips in place of 400 m. */
  @Test
  void aHeadlandAtTheEndsGoesWithTheRows() {
    PlacementWeights onlyHeadland =
        new PlacementWeights(
            0, 0, 1, 0, new Area(0, AreaUnit.SQUARE_METRE), new Area(0, AreaUnit.SQUARE_METRE));
    PlacementChoices alongEast =
        new PlacementChoices(Kind.BEST, List.of(0.0), onlyHeadland, Map.of());
    Plan plan = SamplePlans.cornAndSoybean().headlandAtEnds(1, 30).placement(alongEast).plan();
    FieldData east = strips(3, 10).withFrame(SamplePlans.FRAME.turned(Math.PI / 2));
    PlacementResult result = search(plan, east);
    assertThat(result.fixed().terms().headlandSquareMetres())
        .isCloseTo(2 * STRIP * 400, within(1e-2));
    assertThat(result.chosen().terms().headlandSquareMetres())
        .isCloseTo(2 * STRIP * 10 * STRIP, within(1e-2));
  }

  /** Where a ring begins is chance; the result is not. */
  @Test
  void theSameFieldDrawnFromAnotherVertexGivesTheSame() {
    PlacementResult one =
        search(
            plan(10.0, 20.0), SamplePlans.field("POLYGON((0 0, 210 40, 190 330, -20 300, 0 0))"));
    PlacementResult other =
        search(
            plan(10.0, 20.0),
            SamplePlans.field("POLYGON((190 330, 210 40, 0 0, -20 300, 190 330))"));
    assertThat(other.chosen().shiftMetres()).isEqualTo(one.chosen().shiftMetres());
    assertThat(other.chosen().turnDegrees()).isEqualTo(one.chosen().turnDegrees());
    assertThat(other.a()).isEqualTo(one.a());
    assertThat(other.b()).isEqualTo(one.b());
  }
}
