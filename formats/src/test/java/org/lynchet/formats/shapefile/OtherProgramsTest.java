package org.lynchet.formats.shapefile;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.lynchet.formats.Column;
import org.lynchet.formats.DeclaredCrs;
import org.lynchet.formats.ExternalTool;
import org.lynchet.formats.FeatureTable;
import org.lynchet.formats.Samples;

/** Lets GDAL and pyshp read what is written here, and reads what GDAL writes. */
class OtherProgramsTest {
  private static final String GEOJSON =
      """
      {"type":"FeatureCollection","features":[
      {"type":"Feature","properties":{"PRODUCT":"Grünmais","RATE":34000.5,"KEY":7},"geometry":
      {"type":"Polygon","coordinates":[[[5,52],[5.01,52],[5.01,52.01],[5,52.01],[5,52]],
      [[5.002,52.002],[5.002,52.004],[5.004,52.004],[5.004,52.002],[5.002,52.002]]]}},
      {"type":"Feature","properties":{"PRODUCT":"b","RATE":null,"KEY":null},"geometry":
      {"type":"MultiPolygon","coordinates":[[[[6,52],[6.01,52],[6.01,52.01],[6,52]]],
      [[[7,52],[7.01,52],[7.01,52.01],[7,52]]]]}}]}
      """;

  @TempDir Path folder;
  private Path shp = Path.of("");
  private Path json = Path.of("");

  @BeforeEach
  void write() throws IOException {
    shp = folder.resolve("a.shp");
    json = folder.resolve("in.geojson");
    Shapefile.writer().write(Samples.planting(), shp);
    Files.writeString(json, GEOJSON);
  }

  @Test
  void gdalReadsTheSame() {
    ExternalTool.assumeRuns("ogrinfo", "--version");
    String said = ExternalTool.run("ogrinfo", "-al", shp.toString());
    assertThat(said)
        .contains("Feature Count: 2")
        .contains("ID[\"EPSG\",4326]")
        .contains("DBF_DATE_LAST_UPDATE=2000-01-01")
        .contains("PRODUCT: String (12.0)")
        .contains("RATE: Real (10.2)")
        .contains("PRODUCT (String) = Grünmais")
        .contains("RATE (Real) = 34000.13")
        .contains(
            "POLYGON ((-94 43,-94 43.01,-93.99 43.01,-93.99 43.0,-94 43),"
                + "(-93.998 43.002,-93.996 43.002,-93.996 43.004,-93.998 43.004,-93.998 43.002))")
        .doesNotContain("Warning")
        .doesNotContain("ERROR");
  }

  /** With warnings as errors pyshp is strict about the direction of rings. */
  @Test
  void pyshpReadsTheSame() {
    ExternalTool.assumeRuns("/usr/bin/python3", "-c", "import shapefile");
    String said =
        ExternalTool.python(
            """
            import shapefile, sys, warnings
            warnings.simplefilter("error")
            shapefile.VERBOSE = True
            with shapefile.Reader(sys.argv[1]) as r:
                print(r.shapeTypeName, len(r), r.fields[1:])
                for s in r.iterShapeRecords():
                    g = s.shape.__geo_interface__
                    print(g["type"], [len(p) for p in g["coordinates"]], list(s.record))
            """,
            shp.toString());
    assertThat(said.lines())
        .containsExactly(
            "POLYGON 2 [['PRODUCT', 'C', 12, 0], ['RATE', 'N', 10, 2], ['PARTIAL', 'L', 1, 0]]",
            "Polygon [5, 5] ['Grünmais', 34000.13, True]",
            "MultiPolygon [1, 1] ['tall-108', 0.0, False]");
  }

  @ParameterizedTest
  @CsvSource({"UTF-8", "ISO-8859-1", "CP1252", "CP850"})
  void whatGdalWritesIsRead(String encoding) throws Exception {
    FeatureTable table = fromGdal("-lco", "ENCODING=" + encoding);
    assertThat(table.crs()).isEqualTo(DeclaredCrs.LON_LAT);
    assertThat(table.columns()).extracting(Column::name).containsExactly("PRODUCT", "RATE", "KEY");
    assertThat(table.features().get(0).values()).isEqualTo(List.of("Grünmais", 34000.5, 7.0));
    assertThat(table.features().get(1).values()).isEqualTo(Arrays.asList("b", null, null));
    assertThat(table.features().get(0).geometry().getArea()).isEqualTo(1e-4 - 4e-6, within());
    assertThat(table.features().get(1).geometry().getNumGeometries()).isEqualTo(2);
  }

  @ParameterizedTest
  @CsvSource({"POLYGONZ", "POLYGONM", "POLYGONZM"})
  void heightsAndMeasuresAreLeftOut(String type) throws Exception {
    FeatureTable table = fromGdal("-lco", "SHPT=" + type);
    assertThat(table.features().get(0).geometry().getArea()).isEqualTo(1e-4 - 4e-6, within());
    assertThat(table.features().get(0).geometry().getCoordinate().getZ()).isNaN();
  }

  @Test
  void theTextOfAnotherSystemIsHandedOn() throws Exception {
    FeatureTable table = fromGdal("-t_srs", "EPSG:28992");
    assertThat(table.crs().kind()).isEqualTo(DeclaredCrs.Kind.WKT);
    assertThat(table.crs().definition()).startsWith("PROJCS[\"RD_New\"");
  }

  private FeatureTable fromGdal(String... options) throws Exception {
    ExternalTool.assumeRuns("ogr2ogr", "--version");
    Path made = folder.resolve("made.shp");
    String[] command = {"ogr2ogr", "-f", "ESRI Shapefile", made.toString(), json.toString()};
    String[] whole = Arrays.copyOf(command, command.length + options.length);
    System.arraycopy(options, 0, whole, command.length, options.length);
    ExternalTool.run(whole);
    return Shapefile.reader().read(made);
  }

  private static Offset<Double> within() {
    return Offset.offset(1e-12);
  }
}
