package org.lynchet.prescription.quantity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import org.junit.jupiter.api.Test;

class SpreadTest {
  private final Spread spread = new Spread(-1, 2, 4);

  @Test
  void factorsBelowZeroTurnItAround() {
    assertThat(spread.times(3)).isEqualTo(new Spread(-3, 6, 12));
    assertThat(spread.times(-3)).isEqualTo(new Spread(-12, -6, 3));
  }

  /** The least of -1 and 4 by 3 and 5 is -1 x 5, the most 4 x 5. */
  @Test
  void aProductReachesToItsCorners() {
    assertThat(spread.times(new Spread(3, 4, 5))).isEqualTo(new Spread(-5, 8, 20));
    assertThat(spread.times(new Spread(-2, 0, 1))).isEqualTo(new Spread(-8, 0, 4));
  }

  @Test
  void sumsValueByValue() {
    assertThat(spread.plus(new Spread(1, 1, 2))).isEqualTo(new Spread(0, 3, 6));
    assertThat(spread.plus(-1)).isEqualTo(new Spread(-2, 1, 3));
  }

  /** Halves go away from zero. */
  @Test
  void rounds() {
    assertThat(new Spread(-0.125, 0.125, 0.134).rounded(2))
        .isEqualTo(new Spread(-0.13, 0.13, 0.13));
  }

  @Test
  void refusesNumbersOutOfOrder() {
    assertThatIllegalArgumentException().isThrownBy(() -> new Spread(2, 1, 3));
    assertThatIllegalArgumentException().isThrownBy(() -> new Spread(0, Double.NaN, 3));
  }
}
