package org.lynchet.integration.reader;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.locationtech.jts.geom.Geometry;
import org.lynchet.integration.program.Child;
import org.lynchet.integration.program.Tools;
import org.lynchet.integration.witness.Sample;
import org.lynchet.integration.witness.coverage.Polygons;
import org.lynchet.integration.witness.geojson.GeoJsonText;
import org.lynchet.integration.witness.ground.GroundTruth;
import org.lynchet.integration.witness.shapefile.ShapefileBytes;

/** The outside readers read the sample alike, and complain of what they can see in a broken one. */
class ExternalReadersTest {
  private static final List<String> COLUMNS =
      List.of("CROP", "STRIP", "ZONE", "PRODUCT", "RATE", "AREA_AC");

  @TempDir Path folder;

  @Test
  void gdalReadsShapefile() throws IOException, InterruptedException {
    Layer layer = ExternalReaders.gdal(Sample.shapefile(folder));
    assertThat(layer.crs()).isEqualTo("EPSG:4326");
    checkSample(layer);
  }

  @Test
  void gdalReadsGeoJson() throws IOException, InterruptedException {
    checkSample(ExternalReaders.gdal(Sample.geoJson(folder)));
  }

  /** Two independent ways to an area: a projection (PROJ) and geodesics (Karney). */
  @Test
  void gdalAreasAreGroundTruth() throws IOException, InterruptedException {
    Path file = Sample.geoJson(folder);
    Layer layer = ExternalReaders.gdal(file);
    List<Geometry> polygons = Polygons.read(file);
    for (int i = 0; i < polygons.size(); i++) {
      double truth = GroundTruth.areaSquareMetres(polygons.get(i));
      assertThat(layer.features().get(i).areaSquareMetres()).isCloseTo(truth, within(1e-6 * truth));
    }
  }

  @Test
  void pyshpReadsShapefile() throws IOException, InterruptedException {
    checkSample(ExternalReaders.pyshp(Sample.shapefile(folder)));
  }

  @Test
  void pyshpRejectsWrongRingDirection() throws IOException {
    Path shp = Sample.shapefile(folder);
    reverseFirstRing(shp);
    assertThatThrownBy(() -> ExternalReaders.pyshp(shp)).hasMessageContaining("orientation");
  }

  @Test
  void shapelyReadsGeoJson() throws IOException, InterruptedException {
    Layer layer = ExternalReaders.shapely(Sample.geoJson(folder));
    assertThat(layer.features()).hasSize(3);
    assertThat(layer.faults()).isEmpty();
  }

  @Test
  void shapelyNamesFaults() throws IOException, InterruptedException {
    Path file = folder.resolve("broken.geojson");
    String text = Files.readString(Sample.geoJson(folder));
    Files.writeString(
        file,
        text.replace(
                "[ -94.096, 43.5 ], [ -94.096, 43.502 ]", "[ -94.096, 43.502 ], [ -94.096, 43.5 ]")
            .replace("-94.0992, 43.5015", "-94.0982, 43.5015"));
    assertThat(ExternalReaders.shapely(file).faults())
        .anyMatch(fault -> fault.contains("clockwise"))
        .anyMatch(fault -> fault.contains("Self-intersection"));
  }

  @Test
  void shapelibReadsShapefile() throws IOException, InterruptedException {
    Path shp = Sample.shapefile(folder);
    assertThat(ExternalReaders.shpdumpShapes(shp)).isEqualTo(3);
    assertThat(ExternalReaders.dbfdump(folder.resolve("strips.dbf")))
        .contains("PRODUCT: früh-9", "RATE: 34000.50");
  }

  @Test
  void shapelibRejectsWrongRingDirection() throws IOException {
    Path shp = Sample.shapefile(folder);
    reverseFirstRing(shp);
    assertThatThrownBy(() -> ExternalReaders.shpdumpShapes(shp))
        .hasMessageContaining("1 object has invalid ring orderings");
  }

  @Test
  void ogrinfoComplainsOfMissingIndex() throws IOException, InterruptedException {
    Path shp = Sample.shapefile(folder);
    assertThat(ExternalReaders.ogrinfoComplaints(shp)).isEmpty();
    Files.delete(folder.resolve("strips.shx"));
    assertThat(ExternalReaders.ogrinfoComplaints(shp)).contains("strips.shx");
  }

  @Test
  void projectionTextIsWhatProjPrints() throws IOException, InterruptedException {
    assertThat(ExternalReaders.projinfoEsri(folder, "EPSG:4326")).isEqualTo(ShapefileBytes.WGS_84);
  }

  /** The checkers accept what the GDAL of this machine writes, not only the version kept. */
  @Test
  void checkersAreSilentOnInstalledGdal() throws IOException, InterruptedException {
    Tools.assumeInstalled("ogr2ogr");
    String source = Sample.source(folder).toString();
    ogr2ogr(
        "ESRI Shapefile",
        "-lco",
        "ENCODING=UTF-8",
        "-nlt",
        "POLYGON",
        "-sql",
        "SELECT CROP, CAST(RATE AS numeric(12,2)) FROM strips",
        "new.shp",
        source);
    ogr2ogr(
        "GeoJSON", "-lco", "RFC7946=YES", "-lco", "COORDINATE_PRECISION=9", "new.geojson", source);
    assertThat(ShapefileBytes.inspect(folder.resolve("new.shp"))).isEmpty();
    assertThat(GeoJsonText.inspect(folder.resolve("new.geojson"))).isEmpty();
  }

  private void ogr2ogr(String format, String... arguments)
      throws IOException, InterruptedException {
    List<String> command = new ArrayList<>(List.of("ogr2ogr", "-f", format));
    command.addAll(List.of(arguments));
    Child.of(folder, command).run().outOrThrow();
  }

  private static void checkSample(Layer layer) {
    assertThat(layer.columns()).isEqualTo(COLUMNS);
    assertThat(layer.faults()).isEmpty();
    assertThat(layer.features())
        .extracting(feature -> feature.values().path("PRODUCT").asText())
        .containsExactly("tall-108", "früh-9", "tall-108");
    assertThat(layer.features())
        .extracting(feature -> feature.values().path("RATE").asDouble())
        .containsExactly(36000.0, 34000.0, 34000.5);
  }

  /** The five points of the first ring stand at byte 160; the second and the fourth change. */
  private static void reverseFirstRing(Path shp) throws IOException {
    byte[] bytes = Files.readAllBytes(shp);
    byte[] second = Arrays.copyOfRange(bytes, 176, 192);
    System.arraycopy(bytes, 208, bytes, 176, 16);
    System.arraycopy(second, 0, bytes, 208, 16);
    Files.write(shp, bytes);
  }
}
