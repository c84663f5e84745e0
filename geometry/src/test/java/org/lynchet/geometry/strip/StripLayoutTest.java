package org.lynchet.geometry.strip;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Layouts worked out by hand. Rows are 1 m apart, so widths are rows; {@code 4C2,2} is a strip of 4
 * rows of crop C with 2 border rows on each side, {@code 2x4C} one of two passes of 4 rows.
 */
class StripLayoutTest {
  private static final Pattern STRIP = Pattern.compile("(?:(\\d+)x)?(\\d+)([A-Z])(\\d+),(\\d+)");

  /** Strips as {@code crop left..right (border rows left, right)}. */
  @ParameterizedTest(name = "{0}")
  @CsvSource(
      delimiter = '|',
      textBlock =
"""
AB line is the pass centre   | centre | 4C1,1 4S1,1         | 0 12   | C -2..2 (0,1), S 2..6 (1,1), C 6..10 (1,1), S 10..14 (1,0)
AB line is the strip edge    | edge   | 4C1,1 4S1,1         | 0 12   | C 0..4 (0,1), S 4..8 (1,1), C 8..12 (1,0)
centre of the first pass     | centre | 2x4C1,1 4S1,1       | 0 12   | C -2..6 (0,1), S 6..10 (1,1), C 10..18 (1,0)
backwards to the left        | edge   | 4C1,1 2S1,1         | -9 3   | S -8..-6 (1,1), C -6..-2 (1,1), S -2..0 (1,1), C 0..4 (1,0), C -12..-8 (0,1)
all left of the AB line      | edge   | 4C1,1 2S1,1         | -9 -7  | C -12..-8 (0,1), S -8..-6 (1,0)
three crops                  | edge   | 2C1,1 2S1,1 2W1,1   | 0 8    | C 0..2 (0,1), S 2..4 (1,1), W 4..6 (1,1), C 6..8 (1,0)
same crop beside itself      | edge   | 4C1,1 4C1,1 4S2,2   | 0 12   | C 0..4 (0,0), C 4..8 (0,1), S 8..12 (2,0)
around the period's end      | edge   | 4C1,1 4S2,2 4C1,1   | 4 24   | S 4..8 (0,2), C 8..12 (1,0), C 12..16 (0,1), S 16..20 (2,2), C 20..24 (1,0)
border rows on one side only | edge   | 4C0,2 4S1,0         | 0 12   | C 0..4 (0,2), S 4..8 (1,0), C 8..12 (0,0)
one strip, no neighbour      | edge   | 4C2,2               | 0 10   | C 0..4 (0,0), C 4..8 (0,0), C 8..12 (0,0)
field inside one strip       | edge   | 4C1,1 4S1,1         | 1 3    | C 0..4 (0,0)
overhang below 1 cm          | edge   | 4C1,1 4S1,1         | -0.009 4.009 | C 0..4 (0,0)
overhang above 1 cm          | edge   | 4C1,1 4S1,1         | -0.011 4.011 | S -4..0 (0,1), C 0..4 (1,1), S 4..8 (1,0)
narrower than 2 cm           | edge   | 4C1,1 4S1,1         | 3.995 4.005  | S 4..8 (0,0)
""")
  void strips(String name, String ab, String pattern, String reach, String expected) {
    String[] ends = reach.split(" ", -1);
    double from = Double.parseDouble(ends[0]);
    double to = Double.parseDouble(ends[1]);
    StripPattern laid = pattern(ab, pattern);
    StripLayout layout = laid.over(from, to, solid(from, to));
    List<String> parts = new ArrayList<>(List.of(expected.split(", ", -1)));
    parts.sort((p, q) -> Double.compare(left(p), left(q)));
    assertThat(drawn(laid, layout)).containsExactlyElementsOf(parts);
    for (int i = 0; i < layout.strips().size(); i++) {
      assertThat(layout.strips().get(i).number()).isEqualTo(i + 1);
    }
  }

  /** A pattern shifted by 1 m over a field lies as the pattern over the field 1 m to the left. */
  @Test
  void shifted() {
    StripPattern pattern = pattern("centre", "4C1,1 4S1,1");
    StripLayout there = pattern.shifted(1).over(0.5, 12.5, solid(0.5, 12.5));
    StripLayout here = pattern.over(-0.5, 11.5, solid(-0.5, 11.5));
    assertThat(there.strips())
        .extracting(Strip::leftMetres)
        .containsExactlyElementsOf(here.strips().stream().map(s -> s.leftMetres() + 1).toList());
    assertThat(pattern.shifted(1).originMetres()).isEqualTo(pattern.originMetres() + 1);
  }

  @Test
  @DisplayName(
      "a strip that falls in the gap between two parts of a field is left out, and neither"
          + " neighbour has border rows beside it")
  void gapBetweenParts() {
    StripPattern laid = pattern("edge", "4C1,1 4S1,1 4W1,1");
    StripLayout layout =
        laid.over(0, 12, offsets -> between(offsets, new double[][] {{0, 4}, {8, 12}}));
    assertThat(drawn(laid, layout)).containsExactly("C 0..4 (0,0)", "W 8..12 (0,0)");
    assertThat(layout.bands(Set.of()).cutsMetres()).containsExactly(8);
  }

  @Test
  void passesAreNumberedThroughTheField() {
    StripLayout layout = pattern("centre", "2x4C1,1 3x2S1,1").over(-2, 12, solid(-2, 12));
    assertThat(layout.strips().get(0).passes())
        .extracting(pass -> pass.number() + " " + pass.leftMetres() + " " + pass.centreMetres())
        .containsExactly("1 -2.0 0.0", "2 2.0 4.0");
    assertThat(layout.strips().get(1).passes())
        .extracting(pass -> pass.number() + " " + pass.leftMetres() + " " + pass.centreMetres())
        .containsExactly("3 6.0 7.0", "4 8.0 9.0", "5 10.0 11.0");
    assertThat(layout.passBands().cutsMetres()).containsExactly(2, 6, 8, 10);
    assertThat(layout.passBands().list()).extracting(Band::pass).containsExactly(1, 2, 3, 4, 5);
    assertThat(layout.passBands().list()).extracting(Band::strip).containsExactly(1, 1, 2, 2, 2);
  }

  @Test
  void patternShiftedByItsPeriodGivesTheSameStrips() {
    StripPattern pattern = pattern("edge", "4C1,1 3S1,1 2x2W2,1");
    assertThat(pattern.periodMetres()).isEqualTo(11);
    for (double shift = -33; shift <= 33; shift += 11) {
      double from = 1.5 + shift;
      double to = 20.25 + shift;
      StripLayout layout = pattern.over(from, to, solid(from, to));
      double back = shift;
      assertThat(
              Arrays.stream(layout.bands(Set.of()).cutsMetres()).map(cut -> cut - back).toArray())
          .containsExactly(3, 4, 5, 6, 7, 9, 10, 11, 12, 14, 15, 16, 17, 18, 20);
    }
  }

  @Test
  void aFieldWithoutAreaHasNoStrips() {
    StripLayout layout = pattern("edge", "4C1,1").over(0, 1, offsets -> new double[1]);
    assertThat(layout.strips()).isEmpty();
    assertThat(layout.bands(Set.of()).list()).isEmpty();
    assertThat(layout.bands(Set.of()).cutsMetres()).isEmpty();
  }

  @Test
  void refusesStripsThatAreNone() {
    assertThatThrownBy(() -> new PatternStrip("C", 0, 4, 1, 0, 0)).hasMessageContaining("0 x 4");
    assertThatThrownBy(() -> new PatternStrip("C", 1, 0, 1, 0, 0)).hasMessageContaining("1 x 0");
    assertThatThrownBy(() -> new PatternStrip("C", 1, 4, Double.NaN, 0, 0))
        .isInstanceOf(IllegalArgumentException.class);
    assertThatThrownBy(() -> new PatternStrip("C", 1, 4, 1, 3, 2))
        .isInstanceOf(IllegalArgumentException.class);
    assertThatThrownBy(() -> new PatternStrip("C", 1, 4, 1, -1, 0))
        .isInstanceOf(IllegalArgumentException.class);
    assertThatThrownBy(() -> StripPattern.fromStripEdge(List.of()))
        .isInstanceOf(IllegalArgumentException.class);
    assertThatThrownBy(() -> StripPattern.fromPassCentre(List.of()))
        .isInstanceOf(IllegalArgumentException.class);
  }

  /** Reads a pattern such as {@code 2x4C1,1 4S}. */
  static StripPattern pattern(String ab, String text) {
    List<PatternStrip> strips =
        Arrays.stream(text.split(" ", -1)).map(StripLayoutTest::strip).toList();
    return ab.equals("centre")
        ? StripPattern.fromPassCentre(strips)
        : StripPattern.fromStripEdge(strips);
  }

  private static PatternStrip strip(String text) {
    Matcher parts = STRIP.matcher(text);
    if (!parts.matches()) {
      throw new IllegalArgumentException(text);
    }
    return new PatternStrip(
        parts.group(3),
        parts.group(1) == null ? 1 : Integer.parseInt(parts.group(1)),
        Integer.parseInt(parts.group(2)),
        1,
        Integer.parseInt(parts.group(4)),
        Integer.parseInt(parts.group(5)));
  }

  /** A field that is 100 m long everywhere between two offsets. */
  static FieldAreas solid(double from, double to) {
    return offsets -> between(offsets, new double[][] {{from, to}});
  }

  private static double[] between(double[] offsets, double[][] parts) {
    double[] areas = new double[offsets.length + 1];
    for (int i = 0; i < areas.length; i++) {
      double left = i == 0 ? Double.NEGATIVE_INFINITY : offsets[i - 1];
      double right = i == offsets.length ? Double.POSITIVE_INFINITY : offsets[i];
      for (double[] part : parts) {
        areas[i] += 100 * Math.max(0, Math.min(right, part[1]) - Math.max(left, part[0]));
      }
    }
    return areas;
  }

  private static double left(String strip) {
    return Double.parseDouble(strip.substring(2, strip.indexOf("..")));
  }

  private static List<String> drawn(StripPattern pattern, StripLayout layout) {
    return layout.strips().stream()
        .map(
            strip ->
                String.format(
                    Locale.ROOT,
                    "%s %.0f..%.0f (%d,%d)",
                    pattern.strips().get(strip.inPattern()).crop(),
                    strip.leftMetres(),
                    strip.rightMetres(),
                    strip.borderRowsLeft(),
                    strip.borderRowsRight()))
        .toList();
  }
}
