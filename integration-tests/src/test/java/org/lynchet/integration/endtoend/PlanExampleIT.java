package org.lynchet.integration.endtoend;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.operation.union.UnaryUnionOp;
import org.lynchet.integration.program.Program;
import org.lynchet.integration.program.Run;
import org.lynchet.integration.witness.coverage.CoverageWitness;
import org.lynchet.integration.witness.coverage.Polygons;
import org.lynchet.integration.witness.geojson.GeoJsonText;
import org.lynchet.integration.witness.shapefile.ShapefileBytes;

/** The example's output: every file is there, and no witness finds anything. */
class PlanExampleIT {
  private static final Set<String> ZONES = Set.of("border", "centre", "headland");

  @TempDir static Path folder;
  private static Example example = new Example(Path.of(""));
  private static Path out = Path.of("");
  private static Run run = new Run(List.of(), -1, "", "");

  @BeforeAll
  static void planTheExample() throws IOException, InterruptedException {
    example = Example.copyInto(folder);
    out = folder.resolve("out");
    run = Program.jar().run(folder, "plan", example.plan().toString(), "--out", out.toString());
    assertThat(run.exitCode()).as(run.toString()).isZero();
  }

  @Test
  void writesEveryFileAndNoOther() throws IOException {
    Set<String> expected = new TreeSet<>();
    expected.addAll(
        List.of(
            "README.txt",
            "guidance/headland.geojson",
            "guidance/passes.geojson",
            "map.svg",
            "plan.geojson",
            "summary.json"));
    for (String crop : crops()) {
      for (String ending : List.of("shp", "shx", "dbf", "prj", "cpg", "geojson")) {
        expected.add("planting/" + crop + "." + ending);
        expected.add("spraying/" + crop + "." + ending);
        expected.add("spraying/lines/" + crop + "." + ending);
      }
    }
    assertThat(Folders.digests(out).keySet()).containsExactlyElementsOf(expected);
  }

  @Test
  void tableFitsHundredColumns() {
    assertThat(run.out().lines())
        .isNotEmpty()
        .allSatisfy(line -> assertThat(line).hasSizeLessThan(101));
  }

  @Test
  void everyGeoJsonFollowsRfc7946() throws IOException {
    for (String file : Folders.digests(out).keySet()) {
      if (file.endsWith(".geojson")) {
        assertThat(GeoJsonText.inspect(out.resolve(file))).as(file).isEmpty();
      }
    }
  }

  @Test
  void everyShapefileFollowsItsDescription() throws IOException {
    for (String crop : crops()) {
      assertThat(ShapefileBytes.inspect(planting(crop, "shp"))).as(crop).isEmpty();
      Path sprayed = out.resolve("spraying").resolve(crop + ".shp");
      assertThat(ShapefileBytes.inspect(sprayed)).as(crop).isEmpty();
    }
  }

  @Test
  void zonesAreAnEdgeMatchedPartitionOfTheField() throws IOException {
    Geometry field = UnaryUnionOp.union(Polygons.read(example.boundary()));
    assertThat(CoverageWitness.inspect(Polygons.read(plan()), field)).isEmpty();
  }

  /** Properties of DESIGN: crop, strip, zone, product, rate, rate_unit, area_m2, partial. */
  @Test
  void everyZoneSaysWhatToPlant() throws IOException {
    for (JsonNode feature : Polygons.features(plan())) {
      JsonNode zone = feature.path("properties");
      assertThat(zone.path("crop").asText()).isNotBlank();
      assertThat(ZONES).contains(zone.path("zone").asText());
      assertThat(zone.path("strip").isIntegralNumber()).isTrue();
      assertThat(zone.path("strip").asInt() == 0)
          .isEqualTo(zone.path("zone").asText().equals("headland"));
      assertThat(zone.path("product").asText()).isNotBlank();
      assertThat(zone.path("rate").isNumber()).isTrue();
      assertThat(zone.path("rate").asDouble()).isPositive();
      assertThat(zone.path("rate_unit").asText()).matches("seeds/(ac|ha|m2)");
      assertThat(zone.path("area_m2").asDouble()).isPositive();
      assertThat(zone.path("partial").isBoolean()).isTrue();
    }
  }

  @Test
  void summaryListsTheDigestOfEveryOtherFile() throws IOException {
    JsonNode summary = new ObjectMapper().readTree(out.resolve("summary.json").toFile());
    assertThat(summary.path("schemaVersion").asInt()).isEqualTo(1);
    var digests = Folders.digests(out);
    digests.remove("summary.json");
    assertThat(summary.path("files")).hasSize(digests.size());
    for (JsonNode file : summary.path("files")) {
      String path = file.path("path").asText();
      assertThat(file.path("sha256").asText()).as(path).isEqualTo(digests.get(path));
    }
  }

  private static Path plan() {
    return out.resolve("plan.geojson");
  }

  private static Path planting(String crop, String ending) {
    return out.resolve("planting").resolve(crop + "." + ending);
  }

  private static Set<String> crops() throws IOException {
    return Polygons.features(plan()).stream()
        .map(feature -> feature.path("properties").path("crop").asText())
        .collect(Collectors.toCollection(TreeSet::new));
  }
}
