package org.lynchet.prescription.light;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.lynchet.prescription.light.SampleRows.absorbed;
import static org.lynchet.prescription.light.SampleRows.cornAndSoybean;

import org.junit.jupiter.api.Test;

/**
 * Holds the order of rows against yields of strips of six rows in southern Minnesota, 1991-94
 * ("Border effects on yields in a strip-intercropped soybean, corn, and wheat production system",
 * J. Prod. Agric. 9, 1996): east-west soybean -34 % just north of corn and -11 % just south of it,
 * north-south -19 and -21 %; corn +18 % facing south, +6 % facing north.
 */
class TrialOrderTest {
  /** Heading east, right is south: corn in the north of the pattern, soybean south of it. */
  private final double[] eastWest = absorbed(SeasonLight.of(cornAndSoybean(6).request(90, 0.75)));

  private final double[] northSouth = absorbed(SeasonLight.of(cornAndSoybean(6).request(0, 0.75)));

  private final double justSouthOfCorn = eastWest[6];
  private final double justNorthOfCorn = eastWest[11];

  @Test
  void soybeanJustNorthOfCornIsWorstAndJustSouthBestOfTheBorders() {
    assertThat(justNorthOfCorn).isLessThan(northSouth[6] - 0.02).isLessThan(northSouth[11] - 0.02);
    assertThat(justSouthOfCorn)
        .isGreaterThan(northSouth[6] + 0.02)
        .isGreaterThan(northSouth[11] + 0.02);
    assertThat(northSouth[6]).isCloseTo(northSouth[11], within(0.01));
  }

  @Test
  void cornThatFacesSouthIsAboveCornThatFacesNorth() {
    assertThat(eastWest[5]).isGreaterThan(eastWest[0] + 0.05);
  }

  @Test
  void eastWestCostsSoybeanLess() {
    assertThat(SeasonLight.of(cornAndSoybean(6).request(42, 90, 0.75)).meanAbsorbed("soybean"))
        .isGreaterThan(
            SeasonLight.of(cornAndSoybean(6).request(42, 0, 0.75)).meanAbsorbed("soybean") + 0.02);
  }

  @Test
  void narrowerStripsRaiseCornAndLowerSoybean() {
    LightResult six = SeasonLight.of(cornAndSoybean(6).request(90, 0.75));
    LightResult twelve = SeasonLight.of(cornAndSoybean(12).request(90, 0.75));
    LightResult widest = SeasonLight.of(cornAndSoybean(24).request(90, 0.75));
    assertThat(six.meanAbsorbed("corn")).isGreaterThan(twelve.meanAbsorbed("corn") + 0.01);
    assertThat(twelve.meanAbsorbed("corn")).isGreaterThan(widest.meanAbsorbed("corn") + 0.01);
    assertThat(six.meanAbsorbed("soybean")).isLessThan(twelve.meanAbsorbed("soybean") - 0.01);
    assertThat(twelve.meanAbsorbed("soybean")).isLessThan(widest.meanAbsorbed("soybean") - 0.01);
  }
}
