package org.lynchet.geometry.pass;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

class PassTest {

  @Test
  void rowsStandHalfASpacingInsideItsEdges() {
    // 12 rows at 30 in: 9.144 m
    Pass pass = new Pass(3, 100, 12, 0.762);
    assertThat(pass.rightMetres()).isCloseTo(109.144, within(1e-9));
    assertThat(pass.centreMetres()).isCloseTo(104.572, within(1e-9));
    assertThat(pass.rowMetres(1)).isCloseTo(100.381, within(1e-9));
    assertThat(pass.rowMetres(12)).isCloseTo(108.763, within(1e-9));
    assertThat((pass.rowMetres(6) + pass.rowMetres(7)) / 2).isCloseTo(104.572, within(1e-9));
  }

  /** Within 1 cm an edge is reached. */
  @Test
  void isFilledByWhatReachesBothEdges() {
    Pass pass = new Pass(1, 3, 4, 0.762);
    assertThat(pass.isFilledBy(3.009, 6.039)).isTrue();
    assertThat(pass.isFilledBy(-1, 9)).isTrue();
    assertThat(pass.isFilledBy(3.011, 9)).isFalse();
    assertThat(pass.isFilledBy(-1, 6.037)).isFalse();
  }
}
