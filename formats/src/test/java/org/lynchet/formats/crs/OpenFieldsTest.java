package org.lynchet.formats.crs;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeFalse;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.locationtech.jts.algorithm.distance.DiscreteHausdorffDistance;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.lynchet.formats.DeclaredCrs;
import org.lynchet.formats.ExternalTool;
import org.lynchet.formats.FeatureTable;
import org.lynchet.formats.FormatException;
import org.lynchet.formats.geojson.GeoJson;
import org.lynchet.formats.shapefile.Shapefile;

/**
 * Holds reading and reprojection against boundaries that their providers publish in national grids
 * and that GDAL 3.6.2 with PROJ 9.1.1 brought to WGS 84.
 */
class OpenFieldsTest {
  private static final double METRES_PER_DEGREE = 111_320;
  private Path fields = Path.of("");

  @BeforeEach
  void findFolder() {
    String folder = System.getProperty("lynchet.fields", "");
    assumeFalse(folder.isEmpty(), "no folder of open fields: -Dlynchet.fields is not set");
    fields = Path.of(folder);
  }

  @ParameterizedTest
  @CsvSource({
    "au_vic_field_shp/au_vic_field.shp, au_vic_field, 0.001", // 1 mm; GDA94 / MGA zone 54
    "se_shapefile.zip, se, 0.001", // 1 mm; SWEREF99 TM
    "sk_shapefile_krovak5514.zip, sk, 0.01" // 1 cm; Krovak East North, EPSG:4836 has few digits
  })
  void nationalGridsComeOutWhereProjPutsThem(String original, String name, double metres)
      throws FormatException {
    Path file = fields.resolveSibling("original").resolve(original);
    FeatureTable found = LonLat.of(Shapefile.reader().read(file), original).table();
    FeatureTable expected = GeoJson.reader().read(fields.resolve(name + ".geojson"));
    assertThat(found.crs()).isEqualTo(DeclaredCrs.LON_LAT);
    assertThat(found.features()).hasSameSizeAs(expected.features());
    for (int i = 0; i < found.features().size(); i++) {
      assertThat(
              farthest(
                  found.features().get(i).geometry().getCoordinates(),
                  expected.features().get(i).geometry().getCoordinates()))
          .as("%s, feature %d", name, i)
          .isLessThan(metres);
    }
  }

  /** The grids that the providers of the open fields use, written by GDAL with ESRI's .prj. */
  @ParameterizedTest
  @CsvSource({
    // set, its provider's system, metres
    "at, EPSG:31287, 0.02",
    "be_vlg, EPSG:31370, 0.02",
    "bg, EPSG:32635, 0.002",
    "ch, EPSG:2056, 0.02",
    "cz, EPSG:4258, 0.002",
    "de_bb, EPSG:25833, 0.002",
    "dk, EPSG:25832, 0.002",
    "es_cat, EPSG:25831, 0.002",
    "fi, EPSG:3067, 0.002",
    "fr, EPSG:2154, 0.002",
    "it_tuscany, EPSG:3035, 0.002",
    "jp_fude, EPSG:6668, 0.002",
    "kh_ai4sf, EPSG:32648, 0.002",
    "lv_ec, EPSG:3059, 0.002",
    "nl, EPSG:28992, 0.02",
    "nz_irrig, EPSG:2193, 0.002",
    "se, EPSG:3006, 0.002",
    "sk, EPSG:5514, 0.02",
    "us_csb, EPSG:5070, 0.002",
    "us_cornbelt_osm, EPSG:26916, 0.002",
    "us_cornbelt_osm, EPSG:3857, 0.002",
    "us_cornbelt_osm, EPSG:3417, 0.002"
  })
  void whatGdalProjectsComesBack(String name, String system, double metres, @TempDir Path folder)
      throws FormatException {
    ExternalTool.assumeRuns("ogr2ogr", "--version");
    Path geojson = fields.resolve(name + ".geojson");
    Path shp = folder.resolve("projected.shp");
    ExternalTool.run(
        "ogr2ogr", "-t_srs", system, "-f", "ESRI Shapefile", shp.toString(), geojson.toString());
    LonLatTable found = LonLat.of(Shapefile.reader().read(shp), "projected.shp");
    FeatureTable expected = GeoJson.reader().read(geojson);
    assertThat(found.table().features()).hasSameSizeAs(expected.features());
    for (int i = 0; i < expected.features().size(); i++) {
      Geometry back = found.table().features().get(i).geometry();
      Geometry sent = expected.features().get(i).geometry();
      assertThat(DiscreteHausdorffDistance.distance(back, sent) * METRES_PER_DEGREE)
          .as("%s in %s, feature %d: %s", name, system, i, found.notes())
          .isLessThan(metres);
    }
  }

  @Test
  void everyOpenFieldIsRead() throws Exception {
    try (var files = Files.list(fields)) {
      List<Path> all = files.filter(f -> f.toString().endsWith(".geojson")).sorted().toList();
      int parcels = 0;
      for (Path file : all) {
        FeatureTable table = GeoJson.reader().read(file);
        assertThat(table.crs()).as(file.toString()).isEqualTo(DeclaredCrs.LON_LAT);
        parcels += table.features().size();
      }
      assertThat(parcels).as("parcels in the folder's own list").isEqualTo(1861);
    }
  }

  private static double farthest(Coordinate[] found, Coordinate[] expected) {
    assertThat(found).hasSameSizeAs(expected);
    double farthest = 0;
    for (int i = 0; i < found.length; i++) {
      double east = (found[i].x - expected[i].x) * Math.cos(Math.toRadians(found[i].y));
      farthest = Math.max(farthest, Math.hypot(east, found[i].y - expected[i].y));
    }
    return farthest * METRES_PER_DEGREE;
  }
}
