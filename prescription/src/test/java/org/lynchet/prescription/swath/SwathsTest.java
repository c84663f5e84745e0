package org.lynchet.prescription.swath;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import net.jqwik.api.Assume;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.LongRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class SwathsTest {
  private static final long FOOT = 3048;
  private static final long TWO_INCHES = 508;

  private static Swaths inside(long boomFeet, long sectionFeet, long stripFeet) {
    SteeredMachine boom = new SteeredMachine(boomFeet * FOOT, sectionFeet * FOOT);
    return Swaths.inside(boom, stripFeet * FOOT, TWO_INCHES);
  }

  /** Worked out by hand on squared paper. */
  @ParameterizedTest(name = "{0} ft boom, {1} ft sections, {2} ft strip")
  @CsvSource({
    "90, 10,  30, '3',     6, 0",
    "90, 10,  60, '6',     3, 0",
    "90, 10,  90, '9',     0, 0",
    "90, 10, 110, '6 5',   0, 0",
    "90, 10, 120, '6 6',   0, 0",
    "60, 20, 120, '3 3',   0, 0",
    "60,  5,  75, '8 7',   0, 0",
    // Too narrow for its sections: one pass leaves 5 ft, two passes overlap by 5 ft.
    "90, 10,  25, '2',     7, -5",
    "60, 10,  65, '4 3',   0, 5",
    // Narrower than a section: reached over.
    "90, 30,  20, '1',     2, 10",
  })
  void opensSections(
      long boom, long section, long strip, String open, int shutOver, long mismatchFeet) {
    Swaths swaths = inside(boom, section, strip);

    assertThat(swaths.passes())
        .extracting(Swath::openSections)
        .hasToString("[" + open.replace(" ", ", ") + "]");
    assertThat(swaths.passes()).extracting(Swath::shutOverOther).containsOnly(shutOver);
    assertThat(swaths.mismatch()).isEqualTo(mismatchFeet * FOOT);
  }

  @Test
  void runsOnePassInTheMiddleOfTheStrip() {
    Swath pass = inside(90, 10, 30).passes().get(0);

    assertThat(pass.leftMetres()).isZero();
    assertThat(pass.rightMetres()).isCloseTo(9.144, within(1e-12));
    assertThat(pass.centreMetres()).isCloseTo(4.572, within(1e-12));
    assertThat(pass.firstOpen()).isEqualTo(4);
  }

  /** 60 of 90 ft are open: shut sections lie on the inner side, the boom ends with the strip. */
  @Test
  void holdsShutSectionsOverItsOwnStripWhereItCan() {
    List<Swath> passes = inside(90, 10, 120).passes();

    assertThat(passes).extracting(Swath::firstOpen).containsExactly(1, 4);
    assertThat(passes.get(0).centreMetres()).isCloseTo(45 * 0.3048, within(1e-12));
    assertThat(passes.get(1).centreMetres()).isCloseTo(75 * 0.3048, within(1e-12));
  }

  @Test
  void runsHalfASectionBesideTheMiddleWhenAnOddNumberIsShut() {
    Swath pass = inside(90, 10, 60).passes().get(0);

    assertThat(pass.firstOpen()).isEqualTo(2);
    assertThat(pass.centreMetres()).isCloseTo(35 * 0.3048, within(1e-12));
  }

  /** Metric sections of 3.05 m on a 30 ft strip: 6 mm over, within the tolerance. */
  @Test
  void letsSectionsReachOverWithinTheTolerance() {
    Swaths swaths = Swaths.inside(new SteeredMachine(274_500, 30_500), 91_440, TWO_INCHES);

    assertThat(swaths.mismatch()).isEqualTo(60);
    assertThat(swaths.isWithin(TWO_INCHES)).isTrue();
    assertThat(swaths.reachesOver(TWO_INCHES)).isFalse();
  }

  @ParameterizedTest(name = "{0} ft on {1} ft: {2} passes, {3} ft together")
  @CsvSource({
    "30,  30, 1,   0",
    "20,  60, 3,   0",
    "35,  30, 1,   5",
    "35,  75, 2,  -5",
    "40,  60, 2,  20",
    // As far below as above, for each pass: nothing is left standing.
    "35, 120, 4,  20",
    "30,  40, 2,  20",
    "60,  15, 1,  45",
  })
  void coversWithWholeWidths(long width, long strip, int passes, long mismatchFeet) {
    Swaths swaths = Swaths.nearest(new SteeredMachine(width * FOOT, 0), strip * FOOT, TWO_INCHES);

    assertThat(swaths.passes()).hasSize(passes);
    assertThat(swaths.mismatch()).isEqualTo(mismatchFeet * FOOT);
  }

  @Property(seed = "1804")
  void swathsAddUpToTheStripAndItsMismatch(
      @ForAll @LongRange(min = 500, max = 2_000_000) long width,
      @ForAll @LongRange(min = 500, max = 2_000_000) long section,
      @ForAll @LongRange(min = 500, max = 2_000_000) long strip) {
    Assume.that(section <= width && strip / width < 1000);
    SteeredMachine boom = new SteeredMachine(width, section);
    for (Swaths swaths :
        List.of(Swaths.nearest(boom, strip, TWO_INCHES), Swaths.inside(boom, strip, TWO_INCHES))) {
      List<Swath> passes = swaths.passes();
      long scale = passes.get(0).scale();
      long covered = passes.stream().mapToLong(pass -> pass.right() - pass.left()).sum();
      assertThat(covered).isEqualTo((strip + swaths.mismatch()) * scale);
      assertThat(passes.get(0).left() + passes.get(passes.size() - 1).right())
          .as("both edges alike")
          .isEqualTo(strip * scale);
      for (Swath pass : passes) {
        assertThat(pass.right() - pass.left()).isEqualTo(pass.openSections() * section * scale);
        assertThat(pass.firstOpen()).isPositive();
        assertThat(pass.firstOpen() - 1 + pass.openSections())
            .isLessThanOrEqualTo((int) (width / section));
      }
    }
  }

  @Property(seed = "1804")
  void openSectionsStayInsideAStripThatIsAsWideAsOne(
      @ForAll @LongRange(min = 500, max = 400_000) long width,
      @ForAll @LongRange(min = 500, max = 100_000) long section,
      @ForAll @LongRange(min = 500, max = 2_000_000) long strip) {
    Assume.that(section <= width && section <= strip);
    Swaths swaths = Swaths.inside(new SteeredMachine(width, section), strip, TWO_INCHES);

    long scale = swaths.passes().get(0).scale();
    long over = swaths.passes().size() == 1 ? TWO_INCHES * scale / 2 : 0;
    assertThat(swaths.passes())
        .allMatch(pass -> pass.left() >= -over && pass.right() <= strip * scale + over);
  }
}
