package org.lynchet.prescription.setback;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.lynchet.prescription.setback.ExclusionZone.Droplets;
import org.lynchet.prescription.setback.ExclusionZone.Way;

/** 40 CFR 170.405(a), final rule effective 3 December 2024. */
class ExclusionZoneTest {

  @ParameterizedTest
  @CsvSource({
    "AERIAL, COARSE, 120, 100",
    "AIR_BLAST, COARSE, 20, 100",
    "FOG_OR_MIST, MEDIUM, 6, 100",
    "GROUND_SPRAY, FINE, 20, 100",
    "GROUND_SPRAY, FINE, 6, 100",
    "GROUND_SPRAY, MEDIUM, 20, 25",
    "GROUND_SPRAY, COARSE, 12.5, 25",
    "GROUND_SPRAY, MEDIUM, 12, 0",
    "GROUND_SPRAY, MEDIUM, 10, 0",
    "GROUND_SPRAY, COARSE, 10, 0",
  })
  void distancesAreThoseOfTheRule(Way way, Droplets droplets, double inches, int feet) {
    assertThat(ExclusionZone.feet(way, droplets, inches)).isEqualTo(feet);
  }
}
