package org.lynchet.formats.geojson;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.GeometryFactory;
import org.lynchet.formats.Column;
import org.lynchet.formats.DeclaredCrs;
import org.lynchet.formats.Feature;
import org.lynchet.formats.FeatureTable;
import org.lynchet.formats.Samples;

/** Holds what is written against RFC 7946 (August 2016); section numbers beside each check. */
class GeoJsonWriterTest {
  @TempDir Path folder;

  @Test
  void aTableIsAFeatureCollectionWithOneFeatureInALine() throws IOException {
    assertThat(written(Samples.planting()))
        .isEqualTo(
            """
            {"type":"FeatureCollection","name":"sample","features":[
            {"type":"Feature","properties":{"PRODUCT":"Grünmais","RATE":34000.125,"PARTIAL":true},\
            "geometry":{"type":"Polygon","coordinates":[\
            [[-94,43],[-93.99,43],[-93.99,43.01],[-94,43.01],[-94,43]],\
            [[-93.998,43.002],[-93.998,43.004],[-93.996,43.004],[-93.996,43.002],[-93.998,43.002]]]}},
            {"type":"Feature","properties":{"PRODUCT":"tall-108","RATE":0,"PARTIAL":false},\
            "geometry":{"type":"MultiPolygon","coordinates":[\
            [[[-93,43],[-92.99,43],[-92.99,43.01],[-93,43.01],[-93,43]]],\
            [[[-92,43],[-91.99,43],[-91.99,43.01],[-92,43]]]]}}
            ]}
            """);
  }

  /** Section 4: the crs member is gone; section 3.2: geometry and properties are always there. */
  @Test
  void membersAreThoseOfTheRfc() throws IOException {
    FeatureTable table = Samples.table(List.of(), Samples.feature("POLYGON EMPTY"));
    assertThat(written(table))
        .doesNotContain("crs")
        .contains("{\"type\":\"Feature\",\"properties\":{},\"geometry\":null}");
  }

  /** Sections 3.1.2 and 3.1.4 to 3.1.6. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "POINT (1 2)                         | {\"type\":\"Point\",\"coordinates\":[1,2]}",
        "LINESTRING (1 2, 3 4)               | {\"type\":\"LineString\",\"coordinates\":[[1,2],[3,4]]}",
        "MULTILINESTRING ((1 2, 3 4), (5 6, 7 8)) | {\"type\":\"MultiLineString\",\"coordinates\":[[[1,2],[3,4]],[[5,6],[7,8]]]}",
        "POLYGON ((0 0, 0 1, 1 1, 0 0))      | {\"type\":\"Polygon\",\"coordinates\":[[[0,0],[1,1],[0,1],[0,0]]]}"
      })
  void geometriesAreWritten(String wkt, String expected) throws IOException {
    FeatureTable table = Samples.table(List.of(), Samples.feature(wkt));
    assertThat(written(table)).contains("\"geometry\":" + expected + "}");
  }

  /** Section 11.2 leaves precision to the writer: nine decimals, and no exponent anywhere. */
  @ParameterizedTest
  @CsvSource({
    "1e-9, 0.000000001",
    "4e-10, 0",
    "-4e-10, 0",
    "-0.0, 0",
    "-93.1234567894, -93.123456789",
    "-93.1234567896, -93.12345679",
    "179.9999999999, 180",
    "12.5, 12.5"
  })
  void coordinatesHaveNineDecimals(double lon, String expected) throws IOException {
    FeatureTable table =
        Samples.table(
            List.of(),
            new Feature(new GeometryFactory().createPoint(new Coordinate(lon, 1)), List.of()));
    assertThat(written(table)).contains("[" + expected + ",1]");
  }

  @ParameterizedTest
  @CsvSource({
    "-0.0, 0",
    "9007199254740991, 9007199254740991",
    "1e21, 1000000000000000000000.0",
    "1.5e-7, 0.00000015",
    "0.1, 0.1",
    "34000, 34000",
    "123456789012.25, 123456789012.25"
  })
  void numbersAreShortestPlainDecimals(double value, String expected) throws IOException {
    FeatureTable table =
        Samples.table(List.of(Column.number("n", 10, 1)), Samples.feature("POINT (1 2)", value));
    assertThat(written(table)).contains("{\"n\":" + expected + "}");
  }

  @Test
  void textIsEscapedAndNothingIsNull() throws IOException {
    FeatureTable table =
        Samples.table(
            List.of(Column.text("a\"b", 9), Column.text("none", 9)),
            Samples.feature("POINT (1 2)", "tab\t\"quote\" \\ \u00FC \uD83C\uDF3D", null));
    assertThat(written(table))
        .contains("{\"a\\\"b\":\"tab\\t\\\"quote\\\" \\\\ \u00FC \uD83C\uDF3D\",\"none\":null}");
  }

  @Test
  void sameTableSameBytes() throws IOException {
    assertThat(written(Samples.planting())).isEqualTo(written(Samples.planting()));
  }

  @Test
  void whatGeoJsonCanNotHoldIsRefusedAndNothingIsWritten() {
    List<Column> number = List.of(Column.number("n", 9, 1));
    List<Column> text = List.of(Column.text("t", 9));
    refuse(Samples.table(number, Samples.feature("POINT (1 2)", Double.NaN)));
    refuse(Samples.table(number, Samples.feature("POINT (1 2)", "1")));
    refuse(Samples.table(text, Samples.feature("POINT (1 2)", "\uD800")));
    refuse(Samples.table(List.of(), Samples.feature("POINT (181 2)")));
    refuse(Samples.table(List.of(), Samples.feature("POINT (1 91)")));
    refuse(Samples.table(List.of(), Samples.feature("GEOMETRYCOLLECTION (POINT (1 2))")));
    refuse(new FeatureTable("a", DeclaredCrs.NONE, List.of(), List.of()));
    assertThat(folder).isEmptyDirectory();
  }

  private void refuse(FeatureTable table) {
    assertThatIllegalArgumentException()
        .isThrownBy(() -> GeoJson.writer().write(table, folder.resolve("a.geojson")));
  }

  private String written(FeatureTable table) throws IOException {
    Path file = folder.resolve("a.geojson");
    GeoJson.writer().write(table, file);
    return Files.readString(file);
  }
}
