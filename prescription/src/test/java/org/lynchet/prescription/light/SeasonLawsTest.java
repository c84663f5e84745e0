package org.lynchet.prescription.light;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.lynchet.prescription.light.SampleRows.absorbed;
import static org.lynchet.prescription.light.SampleRows.cornAndSoybean;
import static org.lynchet.prescription.light.SampleRows.incident;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Objects;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Laws that hold whatever the numbers are. */
class SeasonLawsTest {
  private static final double NORTH = 0;
  private static final double EAST = 90;

  @ParameterizedTest
  @ValueSource(doubles = {0, 30, 90})
  void equalHeightsGiveOneEverywhere(double heading) {
    LightResult same =
        SeasonLight.of(
            new SampleRows()
                .strip("corn", 6, SampleRows.ROW, SampleRows.corn())
                .strip("soybean", 6, SampleRows.ROW, SampleRows.corn())
                .request(heading, 0.75));
    assertThat(absorbed(same)).containsOnly(new double[] {1}, within(1e-9));
    assertThat(incident(same)).containsOnly(new double[] {1}, within(1e-9));
    LightResult level =
        SeasonLight.of(
            new SampleRows()
                .strip("corn", 6, SampleRows.ROW, SampleRows.corn())
                .strip("soybean", 6, SampleRows.ROW, SampleRows.soybean().withHeight(2.18))
                .request(heading, 0.75));
    assertThat(incident(level)).containsOnly(new double[] {1}, within(1e-9));
  }

  /** A row stands 8 times the greatest height difference from the edge of its strip. */
  @ParameterizedTest
  @ValueSource(doubles = {0, 90})
  void insideOfVeryWideStripsIsAsInABlock(double heading) {
    double[] light = absorbed(SeasonLight.of(cornAndSoybean(60).request(heading, 0.75)));
    assertThat(light[30]).isCloseTo(1, within(0.003));
    assertThat(light[90]).isCloseTo(1, within(0.012));
  }

  @Test
  void northSouthBordersAreEqualOnClearDays() {
    double[] light = absorbed(SeasonLight.of(cornAndSoybean(6).request(NORTH, 1)));
    assertThat(light[0] / light[5]).isCloseTo(1, within(0.01));
    assertThat(light[6] / light[11]).isCloseTo(1, within(0.01));
  }

  /** With 5 % of a clear sky's energy the beam is less than 1 % of what is left (Erbs 1982). */
  @Test
  void overcastLightDoesNotDependOnDirection() {
    double[] northSouth = absorbed(SeasonLight.of(cornAndSoybean(6).request(NORTH, 0.05)));
    double[] eastWest = absorbed(SeasonLight.of(cornAndSoybean(6).request(EAST, 0.05)));
    assertThat(northSouth).containsExactly(eastWest, within(0.003));
  }

  /**
   * Half a year on, at the opposite latitude, what was north is south. The orbit is not quite so.
   */
  @Test
  void mirroredHemispheresMirrorTheRows() {
    double[] north = absorbed(SeasonLight.of(cornAndSoybean(6).request(EAST, 0.75)));
    List<CanopyRow> mirrored = new ArrayList<>();
    for (CanopyRow row : cornAndSoybean(6).rows()) {
      mirrored.add(halfAYearOn(row));
    }
    LightRequest request =
        cornAndSoybean(6).request(-SampleRows.LATITUDE, EAST, 0.75).withRows(mirrored);
    double[] south = absorbed(SeasonLight.of(request));
    for (int i = 0; i < 6; i++) {
      assertThat(south[i]).isCloseTo(north[5 - i], within(0.03));
      assertThat(south[6 + i]).isCloseTo(north[11 - i], within(0.03));
    }
  }

  private static CanopyRow halfAYearOn(CanopyRow row) {
    CanopyTraits c = Objects.requireNonNull(row.canopy());
    return new CanopyRow(
        row.strip(),
        row.crop(),
        row.product(),
        row.row(),
        row.offsetMetres(),
        row.spacingMetres(),
        new CanopyTraits(
            c.heightMetres(),
            c.leafAreaIndex(),
            c.extinction(),
            c.planting().plusDays(183),
            c.maturity().plusDays(183),
            c.halfLeaf(),
            c.fullLeaf(),
            c.declineFrom(),
            c.leafAtMaturity(),
            c.widthPerHeight()));
  }

  @ParameterizedTest
  @ValueSource(doubles = {0, 45, 90})
  void energyCloses(double heading) {
    LightResult.Budget energy = SeasonLight.of(cornAndSoybean(6).request(heading, 0.75)).budget();
    assertThat((energy.absorbed() + energy.ground()) / energy.incident())
        .isCloseTo(1, within(1e-12));
    // About 2500 MJ/m2 reach a field at 44 degrees from May to September (20 MJ a day).
    assertThat(energy.incident() / (12 * SampleRows.ROW)).isBetween(2000.0, 3200.0);
  }

  @Test
  void openGroundBesideTheFieldGivesLightToOuterRows() {
    LightRequest request = cornAndSoybean(6).request(NORTH, 0.75);
    double[] repeated = absorbed(SeasonLight.of(request));
    double[] open = absorbed(SeasonLight.of(request.withOpenEdges()));
    assertThat(open).hasSize(12);
    assertThat(open[0]).isGreaterThan(repeated[0] + 0.01);
    assertThat(open[11]).isGreaterThan(repeated[11] + 0.1);
    assertThat(open[6]).isCloseTo(repeated[6], within(0.06));
  }

  /** A plain 1 - exp(-k L) takes leaves as spread over all the ground. */
  @Test
  void rowsThatHaveNotClosedStopLessThanBeersLawSays() {
    LocalDate day = LocalDate.of(2025, 6, 21);
    CanopyTraits closed = SampleRows.standing(0.8, 2, 0.65, day);
    CanopyTraits open = new CanopyTraits(0.8, 2, 0.65, day, day.plusDays(1), -2, -1, 0.99, 1, 0.3);
    assertThat(stopped(open)).isLessThan(stopped(closed) - 0.05);
  }

  private static double stopped(CanopyTraits canopy) {
    LightResult.Budget energy =
        SeasonLight.of(
                new SampleRows().strip("corn", 1, SampleRows.ROW, canopy).request(NORTH, 0.75))
            .budget();
    return energy.absorbed() / energy.incident();
  }

  /** Months of a row weigh together to its season. */
  @Test
  void monthsAddUpToTheSeason() {
    for (RowLight row : SeasonLight.of(cornAndSoybean(6).request(EAST, 0.75)).rows()) {
      double sum = 0;
      double shares = 0;
      for (RowLight.Month month : row.months()) {
        sum += month.relativeAbsorbed() * month.shareOfSeason();
        shares += month.shareOfSeason();
      }
      assertThat(shares).isCloseTo(1, within(1e-12));
      assertThat(sum).isCloseTo(row.relativeAbsorbed(), within(1e-12));
      assertThat(row.months()).extracting(RowLight.Month::month).containsExactly(5, 6, 7, 8, 9);
    }
  }

  /** The east side of a soybean strip is lit in the morning, its west side in the afternoon... */
  @Test
  void shadeMovesAcrossTheStripWithTheDay() {
    List<RowLight> rows = SeasonLight.of(cornAndSoybean(6).request(NORTH, 0.75)).rows();
    List<Double> west = rows.get(6).shadeByHour();
    List<Double> east = rows.get(11).shadeByHour();
    // ... for the tall crop east of it shades the east side before noon.
    assertThat(east.get(8)).isGreaterThan(west.get(8) + 0.2);
    assertThat(west.get(16)).isGreaterThan(east.get(16) + 0.2);
    assertThat(west.get(1)).isZero();
    assertThat(rows.get(2).shadeByHour()).isEqualTo(Collections.nCopies(24, 0.0));
  }
}
