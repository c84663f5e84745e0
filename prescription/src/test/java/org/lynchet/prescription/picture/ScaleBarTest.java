package org.lynchet.prescription.picture;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.lynchet.prescription.zone.FieldLayout;

class ScaleBarTest {

  /** The boundary's west side is 500 m long on the ground: the bar must agree with it. */
  @Test
  void isTrueToTheBoundaryInFeet() throws Exception {
    assertTrueTo(SampleLayouts.sample().layout(), "ft", 0.3048);
  }

  @Test
  void isTrueToTheBoundaryInMetres() throws Exception {
    assertTrueTo(SampleLayouts.sample().inHectares().heading(0, 0, 71).layout(), "m", 1);
  }

  private static void assertTrueTo(FieldLayout layout, String unit, double metres)
      throws Exception {
    DrawnSvg svg = DrawnSvg.of(FieldMap.of(layout));
    double[] boundary = DrawnSvg.numbers(svg.elements("boundary", "path").get(1));
    double pointsPerMetre = (boundary[1] - boundary[7]) / 500;
    double[] bar = DrawnSvg.numbers(svg.elements("scale-bar", "path").get(0));
    List<String> texts = svg.texts("scale-bar");
    assertThat(texts.get(3)).isEqualTo(unit);
    double stated = Double.parseDouble(texts.get(2).replace(",", "")) * metres;
    // two decimals of a point: 0.02 of about 150
    assertThat((bar[2] - bar[0]) / pointsPerMetre).isCloseTo(stated, within(stated * 2e-4));
  }

  @ParameterizedTest
  @CsvSource({
    "0.5, 200",
    "0.55, 200",
    "0.3, 500",
    "0.05, 2000",
    "10, 10",
    "0.17, 1000",
    "0.1700001, 500",
  })
  void isTheLongestRoundLengthThatHasRoom(double pointsPerMetre, double metres) {
    ScaleBar bar = ScaleBar.of(pointsPerMetre, UnitSystem.HECTARES);
    assertThat(bar.amount()).isEqualTo(metres);
    assertThat(bar.points()).isCloseTo(metres * pointsPerMetre, within(1e-9));
  }
}
