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
}
