package org.lynchet.prescription.driving;

import static org.assertj.core.api.Assertions.assertThat;
import static org.lynchet.prescription.driving.Passes.drawn;
import static org.lynchet.prescription.driving.Passes.strips;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.lynchet.prescription.driving.LoadingChart.Misplanted;
import org.lynchet.prescription.driving.LoadingChart.Serves;
import org.lynchet.prescription.driving.PassOrder.Kind;
import org.lynchet.prescription.machine.Handling;

/** Strips are drawn a letter a row, b for border and c for centre, passes apart by a bar. */
class LoadingChartTest {

  private static LoadingChart chart(PassOrder order, List<PlantedPass> passes) {
    return LoadingChart.of(order.drive(passes));
  }

  private static Loading.Charted charted(PassOrder order, List<PlantedPass> passes) {
    return Loading.Charted.of(DrivingPlan.of(order, passes, Handling.PLANTER));
  }

  /** By hand: driven against, row k is planted by unit n + 1 - k. */
  @ParameterizedTest
  @CsvSource({
    // symmetric borders on one pass: both ways are alike
    "bbccbb, IN_SEQUENCE, 1, bbccbb",
    "bbccbb, EVERY_NTH, 2, bbccbb",
    "bbccbb, ONE_WAY, 1, bbccbb",
    // one-sided on one pass: one direction only
    "bccccc, ONE_WAY, 1, bccccc",
    "cccccb, ONE_WAY, 1, cccccb",
    "bccccc, IN_SEQUENCE, 1, ''",
    // two passes: pass 1 along, pass 2 against, so both borders fall on units 1 and 2
    "bbcccc|ccccbb, IN_SEQUENCE, 1, bbcccc",
    "bbcccc|ccccbb, ONE_WAY, 1, ''",
    "bbcccc|ccccbb, EVERY_NTH, 2, ''",
    "bbcccc|ccccbb, EVERY_NTH, 3, bbcccc",
    // two passes, one-sided: one of them has no border at all
    "bbcccc|cccccc, IN_SEQUENCE, 1, ''",
    // three passes: the middle one has none
    "bbcccc|cccccc|ccccbb, IN_SEQUENCE, 1, ''",
    // the border is a whole pass
    "bbbbbb|cccccc, IN_SEQUENCE, 1, ''",
    // one product
    "cccccc|cccccc, IN_SEQUENCE, 1, cccccc",
  })
  void workedByHand(String strip, Kind kind, int jump, String expected) {
    LoadingChart chart = chart(new PassOrder(kind, jump), strips(12, strip));
    if (expected.isEmpty()) {
      assertThat(chart.serves()).isEqualTo(Serves.TOO_FEW_PASSES);
      assertThat(chart.exceptions()).isNotEmpty();
    } else {
      assertThat(chart.serves()).isEqualTo(Serves.EVERY_PASS);
      assertThat(drawn(chart)).isEqualTo(expected);
    }
  }

  @Test
  void anEdgeStripWithoutABorderIsAnException() {
    List<PlantedPass> passes = new ArrayList<>(strips(7, "bbccbb"));
    passes.addAll(Passes.strip(8, 8, "bbcccc"));
    LoadingChart chart = chart(PassOrder.IN_SEQUENCE, passes);
    assertThat(drawn(chart)).isEqualTo("bbccbb");
    assertThat(chart.serves()).isEqualTo(Serves.MOST_PASSES);
    // Pass 8 is driven against: its rows 5 and 6 are planted by units 2 and 1.
    assertThat(chart.exceptions())
        .containsExactly(new Misplanted(8, 8, List.of(1, 2), "c", "b", 200));
  }

  @Test
  void aQuarterOfThePassesIsFewMoreIsNot() {
    List<PlantedPass> passes = new ArrayList<>(strips(3, "bccb"));
    passes.addAll(Passes.strip(4, 4, "bccc"));
    assertThat(chart(PassOrder.IN_SEQUENCE, passes).serves()).isEqualTo(Serves.MOST_PASSES);
    passes.remove(0);
    assertThat(chart(PassOrder.IN_SEQUENCE, passes).serves()).isEqualTo(Serves.TOO_FEW_PASSES);
  }

  @Test
  void theOrderWithTheFewestExceptionsIsTheOneToLoadBy() {
    List<PlantedPass> one = new ArrayList<>(strips(7, "bccb"));
    one.addAll(Passes.strip(8, 8, "bccc"));
    PassOrder second = new PassOrder(Kind.EVERY_NTH, 2);
    PassOrder third = new PassOrder(Kind.EVERY_NTH, 3);
    assertThat(
            Loading.findFewestExceptions(
                List.of(
                    charted(PassOrder.IN_SEQUENCE, one),
                    charted(second, strips(8, "bccb")),
                    charted(third, strips(8, "bccb")))))
        .map(found -> found.plan().order())
        .contains(second);
  }

  @Test
  void rowsOutsideTheFieldAskForNothing() {
    List<PlantedPass> passes = new ArrayList<>(strips(3, "bccb"));
    passes.add(
        new PlantedPass(
            4, 4, 40, 0, 100, 100, List.of("b", "c", "c", "c"), List.of(100.0, 100.0, 50.0, 0.0)));
    LoadingChart chart = chart(PassOrder.IN_SEQUENCE, passes);
    assertThat(chart.serves()).isEqualTo(Serves.EVERY_PASS);
    assertThat(drawn(chart)).isEqualTo("bccb");
  }

  /** A mirrored pattern, driven the same way, mirrors the chart and its exceptions. */
  @ParameterizedTest
  @CsvSource({"bbcccc|ccccbb", "bccccc", "bbccbb", "bcc|ccc|ccb", "bbccc|ccccb"})
  void aMirroredPatternMirrorsTheChart(String strip) {
    List<PlantedPass> passes = strips(9, strip);
    List<PlantedPass> mirrored = passes.stream().map(LoadingChartTest::mirrored).toList();
    for (PassOrder order : PassOrder.backAndForth(passes.size())) {
      LoadingChart one = chart(order, passes);
      LoadingChart other = chart(order, mirrored);
      assertThat(other.products()).isEqualTo(reversed(one.products()));
      assertThat(other.exceptedPasses()).isEqualTo(one.exceptedPasses());
    }
  }

  private static PlantedPass mirrored(PlantedPass pass) {
    return new PlantedPass(
        pass.number(),
        pass.strip(),
        pass.centreMetres(),
        pass.fromMetres(),
        pass.toMetres(),
        pass.inRowMetres(),
        reversed(pass.products()),
        reversed(pass.rowMetres()));
  }

  private static <T> List<T> reversed(List<T> list) {
    List<T> copy = new ArrayList<>(list);
    Collections.reverse(copy);
    return copy;
  }
}
