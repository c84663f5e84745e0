package org.lynchet.formats.geojson;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.lynchet.formats.DeclaredCrs;
import org.lynchet.formats.ExternalTool;
import org.lynchet.formats.FeatureTable;
import org.lynchet.formats.Samples;

/** Lets GDAL read what is written here, and reads what GDAL writes. */
class GdalTest {
  @TempDir Path folder;

  @Test
  void gdalReadsTheSame() throws Exception {
    ExternalTool.assumeRuns("ogrinfo", "--version");
    Path file = folder.resolve("a.geojson");
    GeoJson.writer().write(Samples.planting(), file);
    assertThat(ExternalTool.run("ogrinfo", "-al", file.toString()))
        .contains("Layer name: sample")
        .contains("Feature Count: 2")
        .contains("ID[\"EPSG\",4326]")
        .contains("PRODUCT (String) = Grünmais")
        .contains("RATE (Real) = 34000.125")
        .contains("PARTIAL (Integer(Boolean)) = 1")
        .doesNotContain("Warning")
        .doesNotContain("ERROR");
  }

  @ParameterizedTest
  @CsvSource({"EPSG:4326, LON_LAT, ''", "EPSG:3857, CODE, EPSG:3857"})
  void whatGdalWritesIsRead(String crs, DeclaredCrs.Kind kind, String code) throws Exception {
    ExternalTool.assumeRuns("ogr2ogr", "--version");
    Path file = folder.resolve("a.geojson");
    Path made = folder.resolve("made.geojson");
    GeoJson.writer().write(Samples.planting(), file);
    ExternalTool.run("ogr2ogr", "-f", "GeoJSON", "-t_srs", crs, made.toString(), file.toString());
    FeatureTable table = GeoJson.reader().read(made);
    assertThat(table.crs()).isEqualTo(new DeclaredCrs(kind, code));
    assertThat(table.features()).hasSize(2);
    assertThat(table.features().get(0).values().get(1)).isEqualTo(34000.125);
  }
}
