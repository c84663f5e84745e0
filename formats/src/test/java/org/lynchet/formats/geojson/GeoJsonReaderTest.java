package org.lynchet.formats.geojson;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.lynchet.formats.Column;
import org.lynchet.formats.DeclaredCrs;
import org.lynchet.formats.Fault;
import org.lynchet.formats.FaultList;
import org.lynchet.formats.FeatureTable;
import org.lynchet.formats.FormatException;

/** Reads what RFC 7946 allows, what came before it, and what is wrong. */
class GeoJsonReaderTest {
  private static final String RING = "[[0,0],[1,0],[1,1],[0,0]]";
  @TempDir Path folder;

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "{'type':'Point','coordinates':[1,2,300]}                     | POINT (1 2)",
        "{'coordinates':[[1,2],[3,4]],'type':'LineString'}            | LINESTRING (1 2, 3 4)",
        "{'type':'MultiPoint','coordinates':[[1,2],[3,4]]}            | MULTIPOINT ((1 2), (3 4))",
        "{'type':'MultiLineString','coordinates':[[[1,2],[3,4]]]}     | MULTILINESTRING ((1 2, 3 4))",
        "{'type':'Polygon','coordinates':[[[0,0],[0,1],[1,1],[0,0]]]} | POLYGON ((0 0, 0 1, 1 1, 0 0))",
        "{'type':'MultiPolygon','coordinates':[[[[0,0],[1,0],[1,1],[0,0]]]]} | MULTIPOLYGON (((0 0, 1 0, 1 1, 0 0)))",
        "{'type':'GeometryCollection','geometries':[{'type':'Polygon','coordinates':[[[0,0],[1,0],[1,1],[0,0]]]}]} | MULTIPOLYGON (((0 0, 1 0, 1 1, 0 0)))",
        "{'type':'Feature','properties':null,'geometry':{'type':'Point','coordinates':[1,2]}} | POINT (1 2)"
      })
  void everyKindOfObjectIsRead(String json, String wkt) throws Exception {
    FeatureTable table = read(json);
    assertThat(table.features()).hasSize(1);
    assertThat(table.features().get(0).geometry().toText()).isEqualTo(wkt);
    assertThat(table.crs()).isEqualTo(DeclaredCrs.LON_LAT);
  }

  @Test
  void columnsAreTheUnionOfAllPropertiesInOrderOfSight() throws Exception {
    FeatureTable table =
        read(
            collection(
                feature("'rate':1.5,'crop':'corn','mixed':1,'flag':true"),
                feature("'new':null,'mixed':'x','rate':2,'key':12345678901234567890"),
                feature("'nested':{'a':[1,2]},'crop':'Gr\u00FCnmais'")));
    assertThat(table.columns())
        .extracting(Column::name)
        .containsExactly("rate", "crop", "mixed", "flag", "new", "key", "nested");
    assertThat(table.columns())
        .extracting(Column::kind)
        .containsExactly(
            Column.Kind.NUMBER,
            Column.Kind.TEXT,
            Column.Kind.TEXT,
            Column.Kind.FLAG,
            Column.Kind.TEXT,
            Column.Kind.TEXT,
            Column.Kind.TEXT);
    assertThat(table.columns().get(1).width()).as("bytes of UTF-8").isEqualTo(9);
    assertThat(table.features().get(0).values())
        .isEqualTo(Arrays.asList(1.5, "corn", "1", true, null, null, null));
    assertThat(table.features().get(1).values())
        .isEqualTo(Arrays.asList(2.0, null, "x", null, null, "12345678901234567890", null));
    assertThat(table.features().get(2).values())
        .isEqualTo(Arrays.asList(null, "Gr\u00FCnmais", null, null, null, null, "{\"a\":[1,2]}"));
  }

  /** The crs member of the GeoJSON of 2008, section 3. */
  @ParameterizedTest
  @CsvSource(
      nullValues = "-",
      value = {
        "urn:ogc:def:crs:OGC:1.3:CRS84, -",
        "urn:ogc:def:crs:OGC::CRS84, -",
        "EPSG:4326, -",
        "urn:ogc:def:crs:EPSG::4326, -",
        "urn:ogc:def:crs:EPSG::28992, EPSG:28992",
        "urn:ogc:def:crs:EPSG:9.9:5514, EPSG:5514",
        "EPSG:3006, EPSG:3006",
        "http://www.opengis.net/def/crs/EPSG/0/28354, EPSG:28354"
      })
  void oldCrsMembersAreUnderstood(String name, @Nullable String code) throws Exception {
    FeatureTable table =
        read(
            "{'crs':{'type':'name','properties':{'name':'"
                + name
                + "'}},'type':'Point','coordinates':[1,2]}");
    assertThat(table.crs()).isEqualTo(code == null ? DeclaredCrs.LON_LAT : DeclaredCrs.code(code));
  }

  @Test
  void aCrsOfNullDeclaresNothing() throws Exception {
    assertThat(read("{'crs':null,'type':'Point','coordinates':[1,2]}").crs())
        .isEqualTo(DeclaredCrs.NONE);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "''                                                          | empty",
        "[1,2]                                                       | an array",
        "{'type':'Point','coordinates':[1,2]                         | ends before",
        "{'type':'Point','coordinates':[1,NaN]}                      | not JSON",
        "{'type':'Point','coordinates':[1,2]} {}                     | more after",
        "{'type':'Point','type':'Point','coordinates':[1,2]}         | not JSON",
        "{'type':'Point','coordinates':[1,1e999]}                    | beyond all bounds",
        "{'type':'Point','coordinates':[1]}                          | one number",
        "{'type':'Point','coordinates':['1',2]}                      | a text",
        "{'type':'Point','coordinates':null}                         | null",
        "{'type':'Point'}                                            | without coordinates",
        "{'type':'Square','coordinates':[[1,2]]}                     | Square",
        "{'type':7,'coordinates':[[1,2]]}                            | a number",
        "{'coordinates':[1,2]}                                       | its type is",
        "{'type':'FeatureCollection'}                                | no features",
        "{'type':'FeatureCollection','features':{}}                  | an object",
        "{'type':'FeatureCollection','features':[]}                  | no geometry",
        "{'type':'FeatureCollection','features':[3]}                 | a number",
        "{'type':'Feature','properties':[],'geometry':null}          | an array",
        "{'type':'Feature','geometry':'x'}                           | a text",
        "{'type':'GeometryCollection'}                               | no geometries",
        "{'type':'Polygon','coordinates':[[[0,0],[1,0],[1,1],[0,1]]]} | not closed",
        "{'type':'Polygon','coordinates':[[[0,0],[1,0],[0,0]]]}      | 3 positions",
        "{'type':'Polygon','coordinates':[[0,0],[1,0],[0,0]]}        | one position",
        "{'type':'Polygon','coordinates':[]}                         | no geometry",
        "{'type':'LineString','coordinates':[[1,2]]}                 | one position",
        "{'crs':{'type':'link','properties':{'href':'x'}},'type':'Point','coordinates':[1,2]} | without a name",
        "{'crs':{'type':'name','properties':{'name':'mine'}},'type':'Point','coordinates':[1,2]} | mine"
      })
  void whatIsWrongIsTold(String json, String what) throws IOException {
    List<Fault> faults = refused(json.equals("''") ? "" : json);
    assertThat(faults.get(0).what()).contains(what);
    assertThat(faults.get(0).where()).contains("a.geojson, line 1, column ");
  }

  @Test
  void theFaultNamesTheVertex() throws IOException {
    String good =
        "{'type':'Feature','properties':{},'geometry':{'type':'Polygon','coordinates':["
            + RING
            + "]}}";
    String bad = good.replace("[1,1]", "[1,\n'x']");
    assertThat(refused(collection(good, good, good, bad)))
        .hasSize(1)
        .first()
        .extracting(Fault::where)
        .asString()
        .endsWith(", line 2, column 1, features[3].geometry.coordinates[0][2]");
  }

  @Test
  void allFaultsAreToldUpToFifty() throws IOException {
    String[] bad = new String[60];
    Arrays.fill(bad, "{'type':'Feature','properties':{},'geometry':{'type':'Point'}}");
    List<Fault> faults = refused(collection(bad));
    assertThat(faults).hasSize(FaultList.LIMIT + 1);
    assertThat(faults.get(FaultList.LIMIT).what()).isEqualTo("and 10 more");
  }

  @ParameterizedTest
  @ValueSource(ints = {100, 100_000})
  void depthIsLimited(int depth) throws IOException {
    String open = "[".repeat(depth);
    assertThat(refused("{'type':'Polygon','coordinates':" + open + "]".repeat(depth) + "}"))
        .isNotEmpty();
    assertThat(refused("{'type':'Polygon','properties':" + open)).isNotEmpty();
    assertThat(refused("{'geometry':".repeat(depth))).isNotEmpty();
  }

  private static String feature(String properties) {
    return "{'type':'Feature','properties':{"
        + properties
        + "},'geometry':{'type':'Point','coordinates':[1,2]}}";
  }

  private static String collection(String... features) {
    return "{'type':'FeatureCollection','features':[" + String.join(",", features) + "]}";
  }

  private FeatureTable read(String json) throws IOException, FormatException {
    Path file = folder.resolve("a.geojson");
    Files.writeString(file, json.replace('\'', '"'));
    return GeoJson.reader().read(file);
  }

  private List<Fault> refused(String json) throws IOException {
    Path file = folder.resolve("a.geojson");
    Files.writeString(file, json.replace('\'', '"'));
    FormatException refused =
        catchThrowableOfType(FormatException.class, () -> GeoJson.reader().read(file));
    assertThat(refused).isNotNull();
    return refused.faults();
  }
}
