package org.lynchet.integration.endtoend;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.locationtech.jts.geom.Geometry;
import org.lynchet.integration.program.Program;
import org.lynchet.integration.program.Run;
import org.lynchet.integration.reader.ExternalReaders;
import org.lynchet.integration.reader.Layer;
import org.lynchet.integration.witness.coverage.Polygons;
import org.lynchet.integration.witness.ground.GroundTruth;

/** What others read in the example's output is what the program says is in it. */
class OutsideReadersIT {
  /** The part that areas may differ by: rounding to 9 decimals, and three ways to an area. */
  private static final double SAME_AREA = 1e-6;

  @TempDir static Path folder;
  private static Path out = Path.of("");

  @BeforeAll
  static void planTheExample() throws IOException, InterruptedException {
    Example example = Example.copyInto(folder);
    out = folder.resolve("out");
    Run run = Program.jar().run(folder, "plan", example.plan().toString(), "--out", out.toString());
    assertThat(run.exitCode()).as(run.toString()).isZero();
  }

  @Test
  void summaryIsTheSumOfTheZones() throws IOException {
    double sum = 0;
    for (JsonNode feature : Polygons.features(plan())) {
      sum += feature.path("properties").path("area_m2").asDouble();
    }
    assertThat(summaryArea()).isCloseTo(sum, within(1e-3)); // summary.json has 4 decimals
  }

  @Test
  void areasAreGroundTruth() throws IOException {
    double truth = 0;
    for (Geometry zone : Polygons.read(plan())) {
      truth += GroundTruth.areaSquareMetres(zone);
    }
    assertThat(summaryArea()).isCloseTo(truth, within(SAME_AREA * truth));
  }

  @Test
  void gdalMeasuresTheSameArea() throws IOException, InterruptedException {
    Layer layer = ExternalReaders.gdal(plan());
    assertThat(layer.faults()).isEmpty();
    double area = summaryArea();
    assertThat(layer.areaSquareMetres()).isCloseTo(area, within(SAME_AREA * area));
  }

  /** The planting files together plant the field once, as GDAL reads them. */
  @Test
  void gdalReadsThePlanInThePlantingFiles() throws IOException, InterruptedException {
    SortedMap<String, Double> planted = new TreeMap<>();
    for (Path shp : shapefiles()) {
      Layer layer = ExternalReaders.gdal(shp);
      assertThat(layer.crs()).isEqualTo("EPSG:4326");
      assertThat(layer.faults()).isEmpty();
      for (Layer.Read read : layer.features()) {
        if (read.values().path("RATE").asDouble() > 0) {
          planted.merge(
              read.values().path("PRODUCT").asText(), read.areaSquareMetres(), Double::sum);
        }
      }
    }
    SortedMap<String, Double> meant = new TreeMap<>();
    for (JsonNode feature : Polygons.features(plan())) {
      JsonNode zone = feature.path("properties");
      meant.merge(zone.path("product").asText(), zone.path("area_m2").asDouble(), Double::sum);
    }
    assertThat(planted.keySet()).isEqualTo(meant.keySet());
    // Border zones are narrow, so rounding to 0.1 mm is a larger part of them.
    meant.forEach(
        (seed, area) ->
            assertThat(planted.get(seed)).as(seed).isCloseTo(area, within(1e-4 * area)));
  }

  @Test
  void areaColumnIsTheArea() throws IOException, InterruptedException {
    for (Path shp : shapefiles()) {
      Layer layer = ExternalReaders.gdal(shp);
      boolean acres = layer.columns().contains("AREA_AC");
      double squareMetres = acres ? 4046.8564224 : 10_000; // international acre; hectare
      for (Layer.Read read : layer.features()) {
        double column = read.values().path(acres ? "AREA_AC" : "AREA_HA").asDouble();
        // The column has 4 decimals.
        assertThat(column * squareMetres)
            .isCloseTo(read.areaSquareMetres(), within(0.5e-4 * squareMetres + 0.2));
      }
    }
  }

  @Test
  void pyshpAndShapelibReadWhatGdalReads() throws IOException, InterruptedException {
    for (Path shp : shapefiles()) {
      Layer gdal = ExternalReaders.gdal(shp);
      Layer pyshp = ExternalReaders.pyshp(shp);
      assertThat(pyshp.faults()).isEmpty();
      assertThat(pyshp.columns()).isEqualTo(gdal.columns());
      assertThat(rows(pyshp)).isEqualTo(rows(gdal));
      assertThat(ExternalReaders.shpdumpShapes(shp)).isEqualTo(gdal.features().size());
      assertThat(ExternalReaders.ogrinfoComplaints(shp)).isEmpty();
    }
  }

  @Test
  void geoJsonBesideAShapefileSaysTheSame() throws IOException, InterruptedException {
    for (Path shp : shapefiles()) {
      String name = shp.getFileName().toString().replace(".shp", ".geojson");
      assertThat(rows(ExternalReaders.gdal(shp.resolveSibling(name))))
          .isEqualTo(rows(ExternalReaders.gdal(shp)));
    }
  }

  @Test
  void shapelyFindsNoFault() throws IOException, InterruptedException {
    assertThat(ExternalReaders.shapely(plan()).faults()).isEmpty();
  }

  /** Rows as text by column, numbers in one spelling. */
  private static List<String> rows(Layer layer) {
    return layer.features().stream()
        .map(
            feature ->
                layer.columns().stream()
                    .map(column -> text(feature.values().path(column)))
                    .toList()
                    .toString())
        .toList();
  }

  private static String text(JsonNode value) {
    return value.isNumber() ? Double.toString(value.asDouble()) : value.asText();
  }

  private static double summaryArea() throws IOException {
    return new ObjectMapper()
        .readTree(out.resolve("summary.json").toFile())
        .path("area_m2")
        .asDouble();
  }

  private static Path plan() {
    return out.resolve("plan.geojson");
  }

  private static List<Path> shapefiles() throws IOException {
    try (Stream<Path> files = Files.list(out.resolve("planting"))) {
      List<Path> shp = files.filter(file -> file.toString().endsWith(".shp")).sorted().toList();
      assertThat(shp).isNotEmpty();
      return shp;
    }
  }
}
