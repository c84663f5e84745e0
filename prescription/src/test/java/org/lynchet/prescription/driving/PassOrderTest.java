package org.lynchet.prescription.driving;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.lynchet.prescription.driving.PassOrder.Kind;

class PassOrderTest {

  @Test
  void workedByHand() {
    assertThat(PassOrder.IN_SEQUENCE.places(4)).containsExactly(0, 1, 2, 3);
    assertThat(new PassOrder(Kind.EVERY_NTH, 2).places(7)).containsExactly(0, 2, 4, 6, 5, 3, 1);
    assertThat(new PassOrder(Kind.EVERY_NTH, 3).places(7)).containsExactly(0, 3, 6, 4, 1, 2, 5);
    assertThat(new PassOrder(Kind.IN_LANDS, 2).places(4)).containsExactly(0, 2, 1, 3);
    // The second land begins in its right half: from 3 to 6, not from 3 to 4.
    assertThat(new PassOrder(Kind.IN_LANDS, 2).places(8)).containsExactly(0, 2, 1, 3, 6, 4, 7, 5);
    assertThat(new PassOrder(Kind.IN_LANDS, 2).places(5)).containsExactly(0, 3, 1, 4, 2);
  }

  @Test
  void everyPassOnceInAnyOrder() {
    for (int passes = 1; passes <= 60; passes++) {
      Integer[] all = IntStream.range(0, passes).boxed().toArray(Integer[]::new);
      for (PassOrder order : PassOrder.backAndForth(passes)) {
        assertThat(order.places(passes))
            .describedAs("%s of %d", order, passes)
            .containsExactlyInAnyOrder(all);
      }
      assertThat(PassOrder.ONE_WAY.places(passes)).containsExactly(all);
    }
  }

  /** What lands are for: neighbours are never driven one after the other. */
  @Test
  void landsHaveNoNarrowTurns() {
    for (int passes = 6; passes <= 60; passes++) {
      List<Integer> places = new PassOrder(Kind.IN_LANDS, 3).places(passes);
      for (int i = 1; i < places.size(); i++) {
        assertThat(Math.abs(places.get(i) - places.get(i - 1)))
            .describedAs("%d passes: %s", passes, places)
            .isGreaterThanOrEqualTo(2);
      }
    }
  }

  @Test
  void directionsAlternateUnlessOneWay() {
    List<PlantedPass> passes = Passes.plain(4, 10, 100);
    assertThat(PassOrder.IN_SEQUENCE.drive(passes))
        .extracting(Trip::direction)
        .containsExactly(Direction.ALONG, Direction.AGAINST, Direction.ALONG, Direction.AGAINST);
    assertThat(PassOrder.ONE_WAY.drive(passes))
        .extracting(Trip::direction)
        .containsOnly(Direction.ALONG);
  }
}
