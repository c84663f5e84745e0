package org.lynchet.geometry.strip;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Bands worked out by hand; patterns as in {@link StripLayoutTest}, rows 1 m apart. */
class BandsTest {

  /**
   * Bands as strip, b (border rows) or c (centre rows), pass or 0 where it may run over several;
   * between them the cuts.
   */
  @ParameterizedTest(name = "{0}")
  @CsvSource(
      delimiter = '@',
      textBlock =
"""
border rows beside another crop only @ 6C2,2 6S2,2     @ 12 @       @ 1c1 |4| 1b1 |6| 2b2 |8| 2c2
inside strips have both borders      @ 6C2,2 6S1,1     @ 18 @       @ 1c1 |4| 1b1 |6| 2b2 |7| 2c2 |11| 2b2 |12| 3b3 |14| 3c3
no border rows                       @ 6C0,0 6S0,0     @ 12 @       @ 1c1 |6| 2c2
all rows are border rows             @ 4C2,2 2S1,1 4W0,0 @ 12 @     @ 1c1 |2| 1b1 |4| 2b2 |5| 2b2 |6| 3c3 |10| 4b4 |12| 4c4
several passes are one centre        @ 3x2C1,1 6S1,1   @ 12 @       @ 1c0 |5| 1b0 |6| 2b4 |7| 2c4
a partial pass stands apart          @ 3x2C1,1 6S1,1   @ 12 @ 1     @ 1c1 |2| 1c0 |5| 1b0 |6| 2b4 |7| 2c4
the middle pass apart                @ 3x2C1,1 6S1,1   @ 12 @ 2     @ 1c0 |2| 1c2 |4| 1c0 |5| 1b0 |6| 2b4 |7| 2c4
the last, with border rows, apart    @ 3x2C1,1 6S1,1   @ 12 @ 3     @ 1c0 |4| 1c3 |5| 1b3 |6| 2b4 |7| 2c4
border as wide as a pass, apart      @ 3x2C2,2 6S1,1   @ 12 @ 3     @ 1c0 |4| 1b3 |6| 2b4 |7| 2c4
border wider than a pass, apart      @ 3x2C3,3 6S1,1   @ 12 @ 3     @ 1c0 |3| 1b0 |4| 1b3 |6| 2b4 |7| 2c4
passes that are not there            @ 3x2C1,1 6S1,1   @ 12 @ 9     @ 1c0 |5| 1b0 |6| 2b4 |7| 2c4
""")
  void bands(String name, String pattern, double to, String apart, String expected) {
    Set<Integer> passes =
        apart == null
            ? Set.of()
            : Arrays.stream(apart.split(",")).map(Integer::valueOf).collect(Collectors.toSet());
    Bands bands =
        StripLayoutTest.pattern("edge", pattern)
            .over(0, to, StripLayoutTest.solid(0, to))
            .bands(passes);
    assertThat(drawn(bands)).isEqualTo(expected);
  }

  /** 12 rows at 30 in beside 24 rows at 15 in, 2 border rows each: 1.524 m and 0.762 m. */
  @Test
  void zoneEdgesAreMidwayBetweenRows() {
    StripPattern pattern =
        StripPattern.fromPassCentre(
            List.of(
                new PatternStrip("corn", 1, 12, 0.762, 2, 2),
                new PatternStrip("soybean", 1, 24, 0.381, 2, 2)));
    StripLayout layout = pattern.over(-30, 30, StripLayoutTest.solid(-30, 30));
    double[] cuts = layout.bands(Set.of()).cutsMetres();
    List<Double> rows = new ArrayList<>();
    for (Strip strip : layout.strips()) {
      for (int row = 1; row <= strip.passes().get(0).rows(); row++) {
        rows.add(strip.passes().get(0).rowMetres(row));
      }
    }
    for (double cut : cuts) {
      double left = rows.stream().filter(row -> row < cut).max(Double::compare).orElseThrow();
      double right = rows.stream().filter(row -> row > cut).min(Double::compare).orElseThrow();
      // midway where both rows are of one strip; half a spacing from each where crops meet
      double spacings = (cut - left) / (right - cut);
      assertThat(spacings)
          .satisfiesAnyOf(
              s -> assertThat(s).isCloseTo(1, within(1e-9)),
              s -> assertThat(s).isCloseTo(2, within(1e-9)),
              s -> assertThat(s).isCloseTo(0.5, within(1e-9)));
    }
    assertThat(cuts)
        .contains(new double[] {-4.572, 4.572 - 1.524, 4.572, 4.572 + 0.762}, within(1e-12));
  }

  @Test
  void cutsRiseWithoutRepeats() {
    for (String pattern :
        List.of("4C2,2 2S1,1", "3x2C2,2 2x1S1,1", "1C1,0 1S0,1", "2x3C3,3 1S0,0")) {
      StripLayout layout =
          StripLayoutTest.pattern("centre", pattern).over(-40, 40, StripLayoutTest.solid(-40, 40));
      for (Set<Integer> apart : List.of(Set.<Integer>of(), Set.of(1, 2, 5, 6, 7, 11))) {
        Bands bands = layout.bands(apart);
        double[] cuts = bands.cutsMetres();
        assertThat(bands.list()).hasSize(cuts.length + 1);
        for (int i = 1; i < cuts.length; i++) {
          assertThat(cuts[i]).isGreaterThan(cuts[i - 1] + 0.5);
        }
      }
    }
  }

  private static String drawn(Bands bands) {
    StringBuilder drawn = new StringBuilder();
    double[] cuts = bands.cutsMetres();
    for (int i = 0; i <= cuts.length; i++) {
      Band band = bands.get(i);
      drawn.append(band.strip()).append(band.border() ? 'b' : 'c').append(band.pass());
      if (i < cuts.length) {
        drawn.append(String.format(Locale.ROOT, " |%.0f| ", cuts[i]));
      }
    }
    return drawn.toString();
  }
}
