package org.lynchet.prescription.quantity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Holds shrink against worked examples of extension. */
class ShrinkTest {

  /** South Dakota State, column of 2019: corn from 25 to 15.5 % shrinks by 11.24 %. */
  @Test
  void cornOfTwentyFivePerCent() {
    assertThat(new Shrink(0.25, 0.155, 0).share()).isCloseTo(0.112426, within(5e-7));
  }

  /**
   * Shrink by point of moisture: South Dakota State, the same column. At 11 % it has 1.13 in print,
   * where exact arithmetic gives 1.1236; 1 / (1 - moisture) is tested there.
   */
  @ParameterizedTest(name = "to {0} %: {1}")
  @CsvSource({"15.5, 1.18", "15, 1.18", "14, 1.16", "13, 1.15", "12, 1.14", "11, 1.12", "10, 1.11"})
  void shrinkOfAPoint(double standard, double factor) {
    Shrink point = new Shrink((standard + 1) / 100, standard / 100, 0);
    assertThat(100 * point.share()).isCloseTo(factor, within(0.005));
  }

  /** 1,000 lb of corn at 25.5 % sold at 15.5 %: 11.8343 %; with half a per cent lost 12.33 %. */
  @Test
  void aThousandPounds() {
    assertThat(new Shrink(0.255, 0.155, 0).share()).isCloseTo(0.118343, within(5e-7));
    Shrink withLoss = new Shrink(0.255, 0.155, 0.005);
    assertThat(withLoss.share()).isCloseTo(0.1233, within(5e-5));
    assertThat(1000 * withLoss.kept()).isCloseTo(876.7, within(0.05));
  }

  /**
   * Mulvaney and Devkota, U. Florida AG442: dry matter stays. 10,000 lb at 20 % are 9,467.46 lb at
   * 15.5 %; adding 15.5 % of the dry matter to it would be 9,240 lb, and wrong.
   */
  @Test
  void waterIsAShareOfTheWholeWeight() {
    double pounds = 10_000 * new Shrink(0.20, 0.155, 0).kept();
    assertThat(pounds).isCloseTo(9467.46, within(0.005)).isNotCloseTo(9240, within(200.0));
  }

  /** U. Wisconsin, Rankin: a bushel of corn, 56 lb at 15.5 %, is 47.3 lb of dry matter; 47.32. */
  @Test
  void dryMatterOfABushel() {
    assertThat(56 * new Shrink(0.155, 0, 0).kept()).isCloseTo(47.32, within(1e-9));
  }

  /** Soybean from 16 to 13 %, by exact arithmetic. */
  @Test
  void soybean() {
    assertThat(new Shrink(0.16, 0.13, 0).kept()).isCloseTo(0.965517, within(5e-7));
  }
}
