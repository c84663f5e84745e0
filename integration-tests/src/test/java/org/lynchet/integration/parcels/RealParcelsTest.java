package org.lynchet.integration.parcels;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

/**
 * Every parcel is planned into a valid coverage or refused for what is wrong with it, at several
 * headings, with two patterns, with a headland and with management zones.
 */
class RealParcelsTest {
  private static final int INVENTED = 10;
  private static final int INVENTED_INVALID = 2;

  /** One layout in so many may lose something finer than the last decimal of its coordinates. */
  private static final int THIN_IN = 500;

  @TempDir static Path files;

  private static final List<Parcel> PARCELS = new ArrayList<>();
  private static final List<ParcelFolder.Guided> GUIDED = new ArrayList<>();

  /** By pid, from the folders' indexes: whether another program found the parcel valid. */
  private static final Map<String, Boolean> VALID = new HashMap<>();

  @BeforeAll
  static void writeEachIntoFilesOfItsOwn() throws IOException {
    for (Path folder : ParcelFolder.all()) {
      VALID.putAll(ParcelFolder.index(folder));
      PARCELS.addAll(ParcelFolder.read(folder, files));
      GUIDED.addAll(ParcelFolder.readGuided(folder, files));
      for (Parcel parcel : ParcelFolder.readBoundaries(folder, files)) {
        VALID.put(parcel.id(), true);
        PARCELS.add(parcel);
      }
    }
  }

  @Test
  void thereAreParcels() {
    assertThat(PARCELS)
        .extracting(Parcel::id)
        .doesNotHaveDuplicates()
        .hasSameSizeAs(VALID.keySet());
    assertThat(VALID).hasSizeGreaterThanOrEqualTo(INVENTED);
    assertThat(VALID.values())
        .filteredOn(valid -> !valid)
        .hasSizeGreaterThanOrEqualTo(INVENTED_INVALID);
    assertThat(GUIDED).hasSizeGreaterThanOrEqualTo(2);
  }

  @ParameterizedTest
  @CsvSource({
    "CORN_AND_SOYBEAN,   0, false, false",
    "CORN_AND_SOYBEAN,  13,  true, false",
    "CORN_AND_SOYBEAN,  90, false,  true",
    "CORN_AND_SOYBEAN, 211.7, false, false",
    "THREE_CROPS,        0, false, false",
    "THREE_CROPS,       13,  true, false",
    "THREE_CROPS,       90, false,  true",
    "THREE_CROPS,    211.7, false, false",
  })
  void everyValidParcelIsPlannedAndNoOther(
      Pattern pattern, double headingDegrees, boolean headland, boolean managementZones) {
    List<String> zones = managementZones ? Parcel.HALVES : List.of();
    planEach(new ParcelPlans(pattern, headland, zones, false), headingDegrees);
  }

  /** Rows along, across and aslant; with management zones too. */
  @ParameterizedTest
  @CsvSource({
    "CORN_AND_SOYBEAN,  0, false",
    "CORN_AND_SOYBEAN, 13,  true",
    "THREE_CROPS, 90, false",
  })
  void headlandAtTheEndsOfRowsKeepsTheSameLaws(
      Pattern pattern, double headingDegrees, boolean managementZones) {
    List<String> zones = managementZones ? Parcel.HALVES : List.of();
    planEach(new ParcelPlans(pattern, ParcelPlans.Where.ENDS, zones, false), headingDegrees);
  }

  private static void planEach(ParcelPlans plans, double headingDegrees) {
    List<Outcome> outcomes =
        PARCELS.parallelStream()
            .map(p -> Outcome.of(p.id(), p.plan(plans, p.abLine(headingDegrees))))
            .toList();

    assertThat(outcomes).flatExtracting(Outcome::wrong).isEmpty();
    assertThat(outcomes)
        .filteredOn(outcome -> !outcome.thin().isEmpty())
        .hasSizeLessThanOrEqualTo(outcomes.size() / THIN_IN);
    assertThat(outcomes)
        .filteredOn(outcome -> outcome.planned() != VALID.getOrDefault(outcome.id(), false))
        .isEmpty();
    assertThat(outcomes).hasSameSizeAs(VALID.keySet());
  }

  @ParameterizedTest
  @EnumSource
  void everyAbLineOfTwoPointsIsTaken(Pattern pattern) {
    ParcelPlans plans = new ParcelPlans(pattern, true, Parcel.HALVES, false);

    List<Outcome> outcomes =
        GUIDED.parallelStream()
            .map(guided -> Outcome.of(guided.line(), guided.parcel().plan(plans, guided.abLine())))
            .toList();

    assertThat(outcomes).hasSameSizeAs(GUIDED).flatExtracting(Outcome::wrong).isEmpty();
    assertThat(outcomes).flatExtracting(Outcome::thin).isEmpty();
    assertThat(outcomes).allMatch(Outcome::planned);
  }

  @ParameterizedTest
  @EnumSource
  void anInvalidParcelIsRefusedWithAPlaceOrRepaired(Pattern pattern) {
    List<Parcel> invalid = PARCELS.stream().filter(p -> !VALID.getOrDefault(p.id(), true)).toList();
    ParcelPlans strict = new ParcelPlans(pattern, true, Parcel.HALVES, false);
    ParcelPlans repairing = new ParcelPlans(pattern, true, Parcel.HALVES, true);

    assertThat(invalid)
        .hasSizeGreaterThanOrEqualTo(INVENTED_INVALID)
        .allSatisfy(
            parcel ->
                assertThat(Outcome.of(parcel.id(), parcel.plan(strict, parcel.abLine(13))).faults())
                    .singleElement()
                    .satisfies(
                        fault -> {
                          assertThat(fault.what())
                              .containsPattern(
                                  "at longitude -?\\d+\\.\\d+, latitude -?\\d+\\.\\d+");
                          assertThat(fault.where()).contains(parcel.id(), "feature 1");
                          assertThat(fault.next()).contains("field.repair: true");
                        }))
        .allSatisfy(
            parcel -> {
              Outcome repaired = Outcome.of(parcel.id(), parcel.plan(repairing, parcel.abLine(13)));
              assertThat(repaired.wrong()).isEmpty();
              assertThat(repaired.thin()).isEmpty();
              assertThat(repaired.planned()).isTrue();
            });
  }
}
