package org.lynchet.prescription.light;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Holds strips with bare paths against the block model of row crops (Goudriaan 1977; Gijzen and
 * Goudriaan 1989; equations from memory, values worked out): strip and path 15 ft wide.
 */
class BlockModelTest {
  private static final double WIDTH = 4.572;
  private static final double LEAF = 2.5;
  private static final double K = 0.65;
  private static final LocalDate DAY = LocalDate.of(2025, 7, 20);

  /** Evenly diffuse light on strips of a height and leaf area index on the strip's own ground. */
  private static Receipts underEvenSky(double height, double leafAreaIndex) {
    CanopyTraits canopy = SampleRows.standing(height, leafAreaIndex, K, DAY);
    List<CanopyRow> rows = new SampleRows().strip("corn", 1, WIDTH, canopy).bare(WIDTH).rows();
    CrossSection section = new CrossSection(rows);
    section.grow(DAY.toEpochDay() + 0.5);
    Receipts receipts = new Receipts(2);
    SkyDome sky = new SkyDome(120, 4);
    RayComb comb = new RayComb(WIDTH / 30);
    for (int i = 0; i < sky.share.length; i++) {
      section.send(comb, sky.shift[i], sky.path[i], sky.share[i], 0.5, receipts);
    }
    return receipts;
  }

  private static double captured(double height, double leafAreaIndex) {
    return underEvenSky(height, leafAreaIndex).absorbed[0] / (2 * WIDTH);
  }

  /** What leaves of this k let through where they are spread over all the ground. */
  private static double transmission(double spread, double leafAreaIndex) {
    return LeafExtinction.diffuseTransmission(
        LeafExtinction.facingShare(K, leafAreaIndex) * spread);
  }

  @Test
  void veryLowStripsCoverTheirOwnGroundOnly() {
    // (1 - e^(-k Lc)) W / (W + P) = 0.4806 for Lc = 2 L.
    assertThat(captured(1e-4, 2 * LEAF)).isCloseTo(0.4806, within(2e-3));
  }

  @Test
  void veryHighStripsAreAsLeavesSpreadOverAllTheGround() {
    // 1 - e^(-k L), with the even sky's mean in place of e^(-k L): k holds for one leaf area.
    double expected = 1 - transmission(LEAF, 2 * LEAF);
    assertThat(captured(1e4, 2 * LEAF)).isCloseTo(expected, within(3e-3));
    assertThat(expected).isCloseTo(0.8031, within(0.03));
  }

  /** Between those the model gives 0.5789 at a height of 1.7 m. */
  @Test
  void capturesWithHeightAsTheBlockModelSays() {
    assertThat(captured(1.7, 2 * LEAF)).isCloseTo(0.5789, within(0.03));
    assertThat(captured(0.5, 2 * LEAF)).isBetween(captured(1e-4, 2 * LEAF), captured(1.7, 5));
  }

  /** The ground between opaque walls sees (sqrt(H^2 + P^2) - H) / P of the sky: exact geometry. */
  @Test
  void groundBetweenOpaqueWallsSeesItsShareOfTheSky() {
    assertThat(underEvenSky(1.7, 4000).ground() / WIDTH).isCloseTo(0.6951, within(1e-3));
  }

  /** Beer's law 1 - exp(-k L) for a closed canopy under an even sky. */
  @ParameterizedTest
  @CsvSource({"0.65, 1, 0.4780", "0.65, 3, 0.8577", "0.65, 6, 0.9798", "0.45, 3, 0.7408"})
  void closedCanopyStopsWhatItsExtinctionSays(double k, double leaf, double share) {
    double facing = LeafExtinction.facingShare(k, leaf);
    assertThat(1 - LeafExtinction.diffuseTransmission(facing * leaf))
        .isCloseTo(share, within(1e-4));
  }
}
