package org.lynchet.prescription.compare;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;

/** Holds the headings that are tried against what a compass rose says. */
class HeadingsTest {

  @Test
  void ownThenEastWestThenNorthSouth() {
    assertThat(Headings.turns(30, List.of())).containsExactly(0.0, 60.0, -30.0);
  }

  @Test
  void theNearerOfAHeadingAndItsOpposite() {
    assertThat(Headings.turns(200, List.of())).containsExactly(0.0, 70.0, -20.0);
    assertThat(Headings.turns(0, List.of())).containsExactly(0.0, 90.0);
    assertThat(Headings.turns(180, List.of())).containsExactly(0.0, 90.0);
  }

  @Test
  void headingsWithinADegreeAreOne() {
    assertThat(Headings.turns(90.9, List.of(271.5))).containsExactly(0.0, 89.1);
    assertThat(Headings.turns(91.1, List.of())).hasSize(3);
    assertThat(Headings.turns(0, List.of(179.5, 45.0))).containsExactly(0.0, 90.0, 45.0);
  }
}
