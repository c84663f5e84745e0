package org.lynchet.prescription.placement;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.List;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.lynchet.geometry.strip.PatternStrip;
import org.lynchet.geometry.strip.StripPattern;

/** Shifts worked out by hand; strips are rows x spacing in metres. */
class StartOffsetsTest {
  private static StripPattern pattern(String strips) {
    List<PatternStrip> all =
        Arrays.stream(strips.split(" ", -1))
            .map(s -> s.split("x", -1))
            .map(
                s ->
                    new PatternStrip(
                        "crop", 1, Integer.parseInt(s[0]), Double.parseDouble(s[1]), 0, 0))
            .toList();
    return StripPattern.fromStripEdge(all);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
"""
rows over a period, ends flush at once  | 4x1        | 0    12   | -1.0 0.0 1.0 2.0
both ends flush elsewhere               | 2x1        | 0.3  9.7  | -0.3 0.0 0.3 1.0
a period that is no number of rows      | 2x1 1x0.5  | 0    2.5  | -0.5 0.0 0.5 1.0
rows of 30 in, to a tenth of a mm       | 3x0.762    | 0.00004 2.286 | -0.762 0.0 0.762
a field far away                        | 2x1        | 1000.3 1002.3 | 0.0 0.3 1.0
""")
  void shifts(String name, String strips, String reach, String expected) {
    String[] ends = reach.split(" +", -1);
    double[] shifts =
        StartOffsets.of(pattern(strips), Double.parseDouble(ends[0]), Double.parseDouble(ends[1]));
    assertThat(Arrays.stream(shifts).mapToObj(String::valueOf).collect(Collectors.joining(" ")))
        .isEqualTo(expected);
  }

  @Test
  void thereAreAtMostTwoThousand() {
    StripPattern wide =
        StripPattern.fromStripEdge(
            List.of(
                new PatternStrip("corn", 1000, 3, 0.5, 0, 0),
                new PatternStrip("soybean", 1000, 3, 0.4, 0, 0)));
    assertThat(StartOffsets.of(wide, 0.1, 3333.3)).hasSizeBetween(1000, 2000).contains(0);
  }
}
