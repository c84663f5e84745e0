package org.lynchet.integration.endtoend;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.operation.union.UnaryUnionOp;
import org.lynchet.integration.program.Program;
import org.lynchet.integration.program.Run;
import org.lynchet.integration.reader.ExternalReaders;
import org.lynchet.integration.reader.Layer;
import org.lynchet.integration.witness.coverage.Polygons;

/** The example's spraying files, as other programs read them. */
class SprayFilesIT {
  private static final List<String> CROPS = List.of("corn", "soybean");

  @TempDir static Path folder;
  private static Path out = Path.of("");

  @BeforeAll
  static void planTheExample() throws IOException, InterruptedException {
    Example example = Example.copyInto(folder);
    out = folder.resolve("out");
    Run run = Program.jar().run(folder, "plan", example.plan().toString(), "--out", out.toString());
    assertThat(run.exitCode()).as(run.toString()).isZero();
  }

  private static Path spraying(String name) {
    return out.resolve("spraying").resolve(name);
  }

  /**
   * What is sprayed of a crop is where it is planted. Along cuts each file has vertices of its own,
   * between which edges bow by less than half a millimetre: of a strip of 9.144 m, 5e-5.
   */
  @ParameterizedTest
  @ValueSource(strings = {"corn", "soybean"})
  void sprayedIsWhatIsPlanted(String crop) throws IOException {
    List<Geometry> planted = new ArrayList<>();
    List<Geometry> zones = Polygons.read(out.resolve("plan.geojson"));
    List<JsonNode> features = Polygons.features(out.resolve("plan.geojson"));
    for (int i = 0; i < zones.size(); i++) {
      if (features.get(i).path("properties").path("crop").asText().equals(crop)) {
        planted.add(zones.get(i));
      }
    }
    Geometry sprayed = UnaryUnionOp.union(Polygons.read(spraying(crop + ".geojson")));
    Geometry meant = UnaryUnionOp.union(planted);
    assertThat(sprayed.symDifference(meant).getArea()).isLessThan(5e-5 * meant.getArea());
  }

  @Test
  void gdalMeasuresTheAreaColumn() throws IOException, InterruptedException {
    for (String crop : CROPS) {
      Layer layer = ExternalReaders.gdal(spraying(crop + ".shp"));
      assertThat(layer.crs()).isEqualTo("EPSG:4326");
      assertThat(layer.faults()).isEmpty();
      assertThat(layer.columns())
          .containsExactly("CROP", "STRIP", "PASS", "OPEN_FROM", "OPEN_TO", "AREA_AC");
      for (Layer.Read read : layer.features()) {
        // The column has 4 decimals; an international acre.
        assertThat(read.values().path("AREA_AC").asDouble() * 4046.8564224)
            .isCloseTo(read.areaSquareMetres(), within(0.5e-4 * 4046.8564224 + 0.2));
      }
    }
  }

  /** A 90 ft boom of nine sections over strips of 30 ft: the middle three, in 29 and 28 passes. */
  @Test
  void linesAreOneForEachPassOfTheExample() throws IOException, InterruptedException {
    List<Integer> counts = new ArrayList<>();
    for (String crop : CROPS) {
      Layer layer = ExternalReaders.gdal(spraying("lines/" + crop + ".shp"));
      counts.add(layer.features().size());
      assertThat(layer.columns())
          .containsExactly("CROP", "STRIP", "PASS", "OPEN_FROM", "OPEN_TO", "OFFSET_M");
      assertThat(layer.features())
          .allMatch(read -> read.values().path("OPEN_FROM").asInt() == 4)
          .allMatch(read -> read.values().path("OPEN_TO").asInt() == 6);
    }
    assertThat(counts).containsExactly(29, 28);
  }

  @Test
  void pyshpAndShapelibReadWhatGdalReads() throws IOException, InterruptedException {
    for (String name : List.of("corn.shp", "soybean.shp", "lines/corn.shp", "lines/soybean.shp")) {
      Layer gdal = ExternalReaders.gdal(spraying(name));
      Layer pyshp = ExternalReaders.pyshp(spraying(name));
      assertThat(pyshp.faults()).isEmpty();
      assertThat(pyshp.columns()).isEqualTo(gdal.columns());
      assertThat(pyshp.features()).hasSameSizeAs(gdal.features());
      assertThat(ExternalReaders.shpdumpShapes(spraying(name))).isEqualTo(gdal.features().size());
      assertThat(ExternalReaders.ogrinfoComplaints(spraying(name))).isEmpty();
    }
  }
}
