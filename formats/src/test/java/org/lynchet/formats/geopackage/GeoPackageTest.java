package org.lynchet.formats.geopackage;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.catchThrowableOfType;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Objects;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.locationtech.jts.geom.Point;
import org.locationtech.jts.io.ParseException;
import org.lynchet.formats.Column;
import org.lynchet.formats.DeclaredCrs;
import org.lynchet.formats.ExternalTool;
import org.lynchet.formats.FeatureTable;
import org.lynchet.formats.FormatException;
import org.lynchet.formats.Samples;
import org.lynchet.formats.crs.LonLat;
import org.lynchet.formats.geojson.GeoJson;

/** Writes GeoPackages, reads them back, and has GDAL read and judge them. */
class GeoPackageTest {
  private static final LocalDate DATE = LocalDate.of(2000, 1, 1);

  /** 1e-5 degree, about 1 m: what two programs' datum shifts may differ by. */
  private static final double NEAR_DEGREES = 1e-5;

  @TempDir Path folder;

  private static FeatureTable lines() {
    return new FeatureTable(
        "pass \"lines\"",
        DeclaredCrs.LON_LAT,
        List.of(Column.text("machine", 20), Column.number("strip", 9, 0)),
        List.of(
            Samples.feature("LINESTRING (-94 43, -94 43.01)", "planter", 1.0),
            Samples.feature("GEOMETRYCOLLECTION EMPTY", null, null)));
  }

  private Path written() throws IOException {
    Path file = folder.resolve("a b#1.gpkg");
    GeoPackage.write(List.of(Samples.planting(), lines()), DATE, file);
    return file;
  }

  @Test
  void layersComeBackAsTheyWere() throws Exception {
    Path file = written();
    for (FeatureTable table : List.of(Samples.planting(), lines())) {
      FeatureTable read = GeoPackage.reader(table.name()).read(file);
      assertThat(read.crs()).isEqualTo(DeclaredCrs.LON_LAT);
      for (int i = 0; i < 2; i++) {
        assertThat(read.features().get(i).values()).isEqualTo(table.features().get(i).values());
        assertThat((Object) read.features().get(i).geometry())
            .isEqualTo(table.features().get(i).geometry());
      }
    }
  }

  /** OGC 12-128r17, requirements 1, 2 and 19: application id, version, blob. */
  @Test
  void theBytesOfTheStandard() throws IOException {
    ByteBuffer bytes = ByteBuffer.wrap(Files.readAllBytes(written()));
    assertThat(bytes.getInt(68)).isEqualTo(0x47504B47);
    assertThat(bytes.getInt(60)).isEqualTo(10300);
    assertThat(Blob.of(Samples.wkt("POINT (1 2)"), 4326))
        .startsWith('G', 'P', 0, 3, 0xE6, 0x10, 0, 0)
        .hasSize(8 + 32 + 21);
  }

  @Test
  void sameTablesSameBytes() throws IOException {
    byte[] once = Files.readAllBytes(written());
    assertThat(written()).hasBinaryContent(once);
  }

  @Test
  void gdalsConformanceCheckIsSilent() throws IOException {
    ExternalTool.assumeRuns("/usr/bin/python3", "-c", "import osgeo_utils.samples.validate_gpkg");
    assertThat(
            ExternalTool.run(
                "/usr/bin/python3",
                "-m",
                "osgeo_utils.samples.validate_gpkg",
                written().toString()))
        .isEmpty();
  }

  @Test
  void gdalReadsTheSameByPlaceToo() throws IOException {
    ExternalTool.assumeRuns("ogrinfo", "--version");
    String file = written().toString();
    assertThat(ExternalTool.run("ogrinfo", "-al", file))
        .contains("Layer name: sample", "Layer name: pass \"lines\"", "Feature Count: 2")
        .contains("ID[\"EPSG\",4326]")
        .contains("PRODUCT (String) = Gr\u00fcnmais", "RATE (Real) = 34000.125")
        .contains("PARTIAL (Integer(Boolean)) = 1")
        .doesNotContain("Warning", "ERROR");
    String[] box = {"-spat", "-93.001", "42.9", "-91", "43.1"};
    assertThat(
            ExternalTool.run(
                "ogrinfo", "-al", "-so", file, "sample", box[0], box[1], box[2], box[3], box[4]))
        .contains("Feature Count: 1");
  }

  @Test
  void whatGdalWritesIsRead() throws Exception {
    ExternalTool.assumeRuns("ogr2ogr", "--version");
    Path made = folder.resolve("made.gpkg");
    ExternalTool.run("ogr2ogr", "-f", "GPKG", made.toString(), written().toString(), "sample");
    FeatureTable read = GeoPackage.reader("").read(made);
    assertThat(read.features().get(0).values())
        .isEqualTo(Samples.planting().features().get(0).values());
  }

  /** The Dutch parcels as they were published, in EPSG:28992, and as GDAL and PROJ moved them. */
  @Test
  void aPublishedFileIsReadAndMoved() throws Exception {
    String fields = System.getProperty("lynchet.fields", "");
    Path original = Path.of(fields).resolveSibling("original/nl.gpkg");
    assumeTrue(
        !fields.isEmpty() && Files.exists(original),
        "no folder original beside the one that -Dlynchet.fields names");
    FeatureTable read = GeoPackage.reader("").read(original);
    assertThat(read.crs()).isEqualTo(DeclaredCrs.code("EPSG:28992"));
    FeatureTable moved = LonLat.of(read, "nl.gpkg").table();
    FeatureTable truth = GeoJson.reader().read(Path.of(fields).resolve("nl.geojson"));
    assertThat(moved.features()).hasSameSizeAs(truth.features());
    Point there = truth.features().get(0).geometry().getCentroid();
    assertThat(moved.features())
        .anySatisfy(
            f -> assertThat(f.geometry().getCentroid().distance(there)).isLessThan(NEAR_DEGREES));
  }

  @Test
  void aLayerThatIsNotThereIsToldWithThoseThatAre() throws IOException {
    Path file = written();
    FormatException refused =
        catchThrowableOfType(FormatException.class, () -> GeoPackage.reader("x").read(file));
    assertThat(refused.faults().get(0).allowed()).contains("sample");
    refused = catchThrowableOfType(FormatException.class, () -> GeoPackage.reader("").read(file));
    assertThat(refused.faults().get(0).what()).isEqualTo("2 layers in it");
  }

  @Test
  void whatIsNoneIsRefused() throws IOException {
    Path file = Files.writeString(folder.resolve("no.gpkg"), "no database at all ".repeat(100));
    FormatException refused =
        catchThrowableOfType(FormatException.class, () -> GeoPackage.reader("").read(file));
    assertThat(refused.faults().get(0).what()).contains("cannot be read as a GeoPackage");
    Path empty = Files.createFile(folder.resolve("empty.gpkg"));
    assertThatThrownBy(() -> GeoPackage.reader("").read(empty))
        .isInstanceOf(FormatException.class)
        .hasMessageContaining("the file is empty");
    Path missing = folder.resolve("missing.gpkg");
    assertThatThrownBy(() -> GeoPackage.reader("").read(missing))
        .isInstanceOf(FormatException.class);
    assertThat(missing).doesNotExist();
  }

  /** 2147483647 rings in a blob of 60 bytes: refused before there is room made for them. */
  @Test
  void absurdCountsAreRefused() throws Exception {
    byte[] blob = Objects.requireNonNull(Blob.of(Samples.wkt(Samples.HOLED), 4326));
    int rings = 8 + 32 + 5;
    byte[] most = {-1, -1, -1, 127};
    System.arraycopy(most, 0, blob, rings, 4);
    assertThatThrownBy(() -> Blob.read(blob)).isInstanceOf(ParseException.class);
    byte[] points = Objects.requireNonNull(Blob.of(Samples.wkt(Samples.HOLED), 4326));
    System.arraycopy(most, 0, points, rings + 4, 4);
    assertThatThrownBy(() -> Blob.read(points)).isInstanceOf(ParseException.class);
  }

  /** A view can run any query that its maker likes, and keep a reader busy for ever. */
  @Test
  void viewsAreNotRead() throws Exception {
    Path file = folder.resolve("view.gpkg");
    GeoPackage.write(List.of(Samples.planting()), DATE, file);
    try (Database database = Database.create(file)) {
      database.run("ALTER TABLE sample RENAME TO other");
      database.run(
          "CREATE VIEW sample AS WITH RECURSIVE n(i) AS (SELECT 1 UNION ALL SELECT i + 1 FROM n)"
              + " SELECT i AS fid, NULL AS geom FROM n");
      database.commit();
    }
    assertThatThrownBy(() -> GeoPackage.reader("sample").read(file))
        .isInstanceOf(FormatException.class);
  }
}
