package org.lynchet.integration.parcels;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import org.junit.jupiter.api.Assumptions;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.lynchet.formats.Fault;
import org.lynchet.integration.witness.coverage.Polygons;
import org.lynchet.prescription.plan.PlannedGuidance.AlongCurve;

/** Parcels along curves: the recorded lines of real fields, and arcs through every parcel. */
class RealCurvesTest {
  /** Every so manieth parcel gets an arc: noding takes some tenths of a second each. */
  private static final int EVERY = 60;

  @TempDir static Path files;

  /**
   * Of the lines of the field in Iowa one curve is gentle enough; the other turns by 34 degrees in
   * one point, the spirals turn about, and the pivot is three points of a circle.
   */
  @Test
  void recordedCurvesArePlannedOrRefusedForAReason() throws IOException {
    String named = System.getProperty("lynchet.fields", "");
    Assumptions.assumeFalse(named.isEmpty(), "no folder of open fields is named");
    Path file = Path.of(named).resolveSibling("fields_with_ab").resolve("fields_and_lines.geojson");
    Assumptions.assumeTrue(Files.exists(file), "no recorded lines beside the folder");
    List<JsonNode> features = Polygons.features(file);
    Map<String, String> outcomes = new TreeMap<>();
    for (JsonNode line : features) {
      String type = line.path("properties").path("type").asText();
      if (List.of("curve", "spiral", "pivot").contains(type)) {
        Outcome outcome = along(line, features);
        assertThat(outcome.wrong()).isEmpty();
        String said =
            outcome.planned()
                ? "planned"
                : outcome.faults().stream().map(Fault::what).findFirst().orElse("nothing said");
        outcomes.put(outcome.id() + " " + type, said);
      }
    }
    assertThat(outcomes).hasSize(6);
    outcomes.forEach(
        (line, said) ->
            assertThat(said)
                .as(line)
                .containsPattern(
                    line.endsWith("spiral")
                        ? "turns back on itself|crosses itself|closed"
                        : line.endsWith("g9 curve") ? "planned|too tight" : "too tight"));
  }

  private static Outcome along(JsonNode line, List<JsonNode> features) throws IOException {
    String id = line.path("properties").path("pid").asText();
    String field = line.path("properties").path("field").asText();
    Files.writeString(files.resolve(id + ".geojson"), line.toString());
    JsonNode boundary =
        features.stream()
            .filter(f -> f.path("properties").path("pid").asText().equals(field))
            .findFirst()
            .orElseThrow();
    Parcel parcel = Parcel.write(boundary, files);
    ParcelPlans plans = new ParcelPlans(Pattern.CORN_AND_SOYBEAN, true, Parcel.HALVES, false);
    return Outcome.of(id, parcel.plan(plans, new AlongCurve(id + ".geojson", null)));
  }

  /** An arc of a kilometre's radius through the middle of a parcel, in a direction by its place. */
  @Test
  void arcsThroughParcelsMakeValidCoverages() throws IOException {
    List<Parcel> parcels = new ArrayList<>();
    int place = 0;
    for (Path folder : ParcelFolder.all()) {
      for (Parcel parcel : ParcelFolder.read(folder, files)) {
        if (place++ % EVERY == 0) {
          parcels.add(parcel);
        }
      }
    }
    List<Outcome> outcomes = new ArrayList<>();
    for (int i = 0; i < parcels.size(); i++) {
      Parcel parcel = parcels.get(i);
      String curve = parcel.id() + "-arc.csv";
      Files.writeString(parcel.folder().resolve(curve), arc(parcel, i));
      ParcelPlans plans =
          new ParcelPlans(
              Pattern.CORN_AND_SOYBEAN, i % 2 == 0, i % 3 == 0 ? Parcel.HALVES : List.of(), true);
      outcomes.add(Outcome.of(parcel.id(), parcel.plan(plans, new AlongCurve(curve, null))));
    }
    assertThat(outcomes).isNotEmpty().flatExtracting(Outcome::wrong).isEmpty();
    assertThat(outcomes)
        .filteredOn(outcome -> !outcome.planned())
        .flatExtracting(Outcome::faults)
        .extracting(Fault::what)
        .allMatch(what -> what.contains("too tight") || what.contains("boundary"));
  }

  private static String arc(Parcel parcel, int turn) {
    StringBuilder text = new StringBuilder("lon,lat\n");
    double metres = 111_194.9;
    double cosine = Math.cos(Math.toRadians(parcel.centre().y));
    for (double along = -0.3; along <= 0.3; along += 0.02) {
      double angle = turn * 0.7 + along;
      double east = 1000 * (Math.cos(angle) - Math.cos(turn * 0.7));
      double north = 1000 * (Math.sin(angle) - Math.sin(turn * 0.7));
      text.append(
          String.format(
              Locale.ROOT,
              "%.8f,%.8f%n",
              parcel.centre().x + east / metres / cosine,
              parcel.centre().y + north / metres));
    }
    return text.toString();
  }
}
