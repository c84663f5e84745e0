package org.lynchet.integration.endtoend;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.operation.union.UnaryUnionOp;
import org.lynchet.integration.program.Program;
import org.lynchet.integration.program.Run;
import org.lynchet.integration.reader.ExternalReaders;
import org.lynchet.integration.reader.Layer;
import org.lynchet.integration.witness.coverage.CoverageWitness;
import org.lynchet.integration.witness.coverage.Polygons;

/** The example with a headland at the ends of its rows only, and with a waterway of its own. */
class HeadlandIT {
  /** 6 m wide along longitude -94.098, from beyond the south edge to beyond the north one. */
  private static final String WATERWAY =
      """
      {"type": "FeatureCollection", "features": [{"type": "Feature", "properties": {},
       "geometry": {"type": "Polygon", "coordinates": [[[-94.098, 43.54], [-94.097926, 43.54],
       [-94.097926, 43.57], [-94.098, 43.57], [-94.098, 43.54]]]}}]}
      """;

  @TempDir Path folder;
  private Example example = new Example(Path.of(""));
  private Path out = Path.of("");

  @BeforeEach
  void copyTheExample() throws IOException {
    example = Example.copyInto(folder);
    out = folder.resolve("out");
  }

  private void change(String find, String replacement) throws IOException {
    String plan = Files.readString(example.plan());
    assertThat(plan).contains(find);
    Files.writeString(example.plan(), plan.replace(find, replacement));
  }

  private Run run() throws IOException, InterruptedException {
    return Program.jar().run(folder, "plan", example.plan().toString(), "--out", out.toString());
  }

  private void plan() throws IOException, InterruptedException {
    Run run = run();
    assertThat(run.exitCode()).as(run.toString()).isZero();
    Run check = Program.jar().run(folder, "check", out.toString());
    assertThat(check.exitCode()).as(check.toString()).isZero();
    Geometry field = UnaryUnionOp.union(Polygons.read(example.boundary()));
    assertThat(CoverageWitness.inspect(Polygons.read(out.resolve("plan.geojson")), field))
        .isEmpty();
  }

  private double headlandSquareMetres() throws IOException {
    double area = 0;
    for (JsonNode feature : Polygons.features(out.resolve("plan.geojson"))) {
      JsonNode zone = feature.path("properties");
      area += zone.path("zone").asText().equals("headland") ? zone.path("area_m2").asDouble() : 0;
    }
    return area;
  }

  @Test
  void gdalReadsTheLinesOfHeadlandPasses() throws IOException, InterruptedException {
    plan();
    Path lines = out.resolve("guidance/headland.geojson");
    Layer layer = ExternalReaders.gdal(lines);
    assertThat(layer.faults()).isEmpty();
    assertThat(layer.crs()).isEqualTo("EPSG:4326");
    assertThat(layer.columns()).containsExactly("machine", "crop", "pass", "distance_m");
    // Two passes, each around the field and around its hole.
    assertThat(layer.features()).hasSize(4);
    assertThat(ExternalReaders.ogrinfoComplaints(lines)).isEmpty();
  }

  @Test
  void endsTakeLessThanAllAround() throws IOException, InterruptedException {
    change("around-holes: true", "around-holes: true\n  where: ends\n  end-angle: 30");
    plan();
    // All around it is 13.69 ac: README of the example.
    assertThat(headlandSquareMetres()).isPositive().isLessThan(13.69 * 4046.856);
    Layer layer = ExternalReaders.gdal(out.resolve("guidance/headland.geojson"));
    assertThat(layer.faults()).isEmpty();
    assertThat(layer.features()).hasSizeGreaterThanOrEqualTo(4);
  }

  @Test
  void aWaterwayIsReadByGdalAndNotPlanted() throws IOException, InterruptedException {
    Files.writeString(folder.resolve("sandhill-east/ways.geojson"), WATERWAY);
    change("field:\n", "field:\n  waterways: ways.geojson\n");
    plan();
    JsonNode summary = new ObjectMapper().readTree(out.resolve("summary.json").toFile());
    double area = 0;
    for (Layer.Read read : ExternalReaders.gdal(out.resolve("plan.geojson")).features()) {
      area += read.values().path("zone").asText().equals("waterway") ? read.areaSquareMetres() : 0;
    }
    assertThat(area).isPositive();
    assertThat(summary.path("waterways_m2").asDouble()).isCloseTo(area, within(1e-6 * area + 1e-3));
  }

  @Test
  void aWaterwayOverTheWholeFieldIsAFault() throws IOException, InterruptedException {
    Files.writeString(
        folder.resolve("sandhill-east/ways.geojson"),
        WATERWAY.replace("-94.098,", "-94.2,").replace("-94.097926", "-94.0"));
    change("field:\n", "field:\n  waterways: ways.geojson\n");
    Run run = run();
    assertThat(run.exitCode()).isEqualTo(3);
    assertThat(FaultText.in(run.err()))
        .singleElement()
        .satisfies(fault -> assertThat(fault.what()).contains("cover the whole field"));
    assertThat(out).doesNotExist();
  }
}
