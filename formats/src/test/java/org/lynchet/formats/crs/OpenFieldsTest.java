package org.lynchet.formats.crs;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeFalse;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.locationtech.jts.geom.Coordinate;
import org.lynchet.formats.DeclaredCrs;
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
