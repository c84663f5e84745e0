package org.lynchet.formats.csv;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.lynchet.formats.DeclaredCrs;
import org.lynchet.formats.Fault;
import org.lynchet.formats.FeatureTable;
import org.lynchet.formats.FormatException;

/** Reads vertices; RFC 4180 for the quoting, the rest is this format's own. */
class VertexCsvReaderTest {
  private static final String TRIANGLE = "POLYGON ((0 0, 1 0, 1 1, 0 0))";
  @TempDir Path folder;

  @ParameterizedTest
  @ValueSource(
      strings = {
        "lon,lat\n0,0\n1,0\n1,1\n0,0\n",
        "lon,lat\n0,0\n1,0\n1,1", // an open ring is closed
        "\uFEFFLON;Lat\r\n0;0\r\n1;0\r\n1;1\r\n",
        "lat\tname\tlon\n0\tA\t0\n0\tB\t1\n1\tC\t1\n",
        "\n\"lon\",\"lat\"\n0,0\n\n1.0,0e0\n+1,.1E1\n",
        "lon,lat,part,ring\n0,0,3,7\n1,0,3,7\n1,1,3,7\n"
      })
  void oneRingIsAPolygon(String text) throws Exception {
    FeatureTable table = read(text.getBytes(StandardCharsets.UTF_8));
    assertThat(table.crs()).isEqualTo(DeclaredCrs.LON_LAT);
    assertThat(table.name()).isEqualTo("field");
    assertThat(table.columns()).isEmpty();
    assertThat(table.features()).hasSize(1);
    assertThat(table.features().get(0).geometry().toText()).isEqualTo(TRIANGLE);
  }

  @Test
  void partsAreLines() throws Exception {
    Path file = folder.resolve("line.csv");
    Files.writeString(file, "part,lat,lon\n2,1,1\n1,0,0\n1,0,3\n2,5,4\n1,2,3\n");
    assertThat(VertexCsv.lineReader().read(file).features())
        .extracting(feature -> feature.geometry().toText())
        .containsExactly("LINESTRING (0 0, 3 0, 3 2)", "LINESTRING (1 1, 4 5)");
  }

  @Test
  void aLineHasTwoVertices() throws IOException {
    Path file = folder.resolve("line.csv");
    Files.writeString(file, "lat,lon\n1,1\n1,1\n");
    assertThatThrownBy(() -> VertexCsv.lineReader().read(file))
        .hasMessageContaining("a line of 1 different vertices");
  }

  @Test
  void utf16WithItsMarkIsRead() throws Exception {
    byte[] bytes = "\uFEFFlon\tlat\n0\t0\n1\t0\n1\t1\n".getBytes(StandardCharsets.UTF_16LE);
    assertThat(read(bytes).features().get(0).geometry().toText()).isEqualTo(TRIANGLE);
  }

  @Test
  void ringsAreHolesByTheirNumberAndPartsMakeAMultipolygon() throws Exception {
    String text =
        """
        part,ring,lon,lat
        1,1,2,2
        1,1,3,2
        1,1,3,3
        1,0,0,0
        1,0,9,0
        1,0,9,9
        2,0,20,0
        2,0,29,0
        2,0,29,9
        """;
    assertThat(read(text.getBytes(StandardCharsets.UTF_8)).features().get(0).geometry().toText())
        .isEqualTo(
            "MULTIPOLYGON (((0 0, 9 0, 9 9, 0 0), (2 2, 3 2, 3 3, 2 2)),"
                + " ((20 0, 29 0, 29 9, 20 0)))");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "lon,lat/0,0/1,x/1,1         | not allowed: x         | line 3, column lat",
        "lon,lat/0,0/1,/1,1          | no value               | line 3, column lat",
        "lon,lat/0,0/1/1,1           | no value               | line 3, column lat",
        "lon,lat/0,0/181,0/1,1       | not allowed: 181       | line 3, column lon",
        "lon,lat/0,0/NaN,0/1,1       | not allowed: NaN       | line 3, column lon",
        "lon;lat/0;0/1,5;0/1;1       | not allowed: 1,5       | line 3, column lon",
        "lon,lat,ring/0,0,a/1,0,0    | not allowed: a         | line 2, column ring",
        "lon,lat,part/0,0,-1/1,0,0   | not allowed: -1        | line 2, column part",
        "x,y/0,0                     | no column lon; it has: x, y | header",
        "lon,lat,lon/0,0,0           | two columns lon        | header",
        "lon,lat                     | no rows                | field.csv",
        "lon,lat/0,0/1,1/0,0         | a ring of 2 different  | part 0, ring 0"
      })
  void whatIsWrongIsTold(String text, String what, String where) throws IOException {
    Fault fault = refused(text.replace('/', '\n')).get(0);
    assertThat(fault.what()).contains(what);
    assertThat(fault.where()).endsWith(where);
  }

  @Test
  void allFaultsAreTold() throws IOException {
    assertThat(refused("lon,lat\na,b\n1,c\n")).hasSize(3);
    assertThat(refused("a,b\n")).hasSize(2);
    assertThat(refused("")).hasSize(1);
    assertThat(refused("lon,lat\n\"1\"x,2\n")).hasSize(1);
    assertThat(refused("lon,lat\n\"1,2\n")).hasSize(1);
  }

  @Test
  void whatIsNoTextIsToldWithItsLine() throws IOException {
    String rows = "lon,lat\n0,0\n1,0\n1,1\n";
    byte[] western = "lon,lat,nom\n0,0,pr\u00E9\n1,0,\n".getBytes(StandardCharsets.ISO_8859_1);
    assertThat(refused(western).what()).contains("not UTF-8", "byte E9", "the 19. of the file");
    assertThat(refused(western).where()).endsWith("field.csv, line 2");
    assertThat(refused(western).next()).contains("UTF-8");
    byte[] cutShort = "lon,lat\n0,0\n\u00E9".getBytes(StandardCharsets.UTF_8);
    assertThat(refused(Arrays.copyOf(cutShort, cutShort.length - 1)).where()).endsWith("line 3");
    assertThat(refused(rows.getBytes(StandardCharsets.UTF_16LE)).what())
        .contains("zeros", "UTF-16 without a mark");
    byte[] half = ("\uFEFF" + rows).getBytes(StandardCharsets.UTF_16BE);
    assertThat(refused(Arrays.copyOf(half, half.length - 1)).what()).contains("not UTF-16BE");
    assertThat(refused(new byte[] {'P', 'K', 3, 4, 20, 0, 0, 0}).what()).contains("spreadsheet");
    assertThat(refused(new byte[] {1, 2, 0, 3}).what()).contains("no text");
  }

  private Fault refused(byte[] bytes) {
    FormatException refused = catchThrowableOfType(FormatException.class, () -> read(bytes));
    assertThat(refused).isNotNull();
    assertThat(refused.faults()).hasSize(1);
    return refused.faults().get(0);
  }

  private FeatureTable read(byte[] bytes) throws IOException, FormatException {
    Path file = folder.resolve("field.csv");
    Files.write(file, bytes);
    return VertexCsv.reader().read(file);
  }

  private List<Fault> refused(String text) throws IOException {
    FormatException refused =
        catchThrowableOfType(
            FormatException.class, () -> read(text.getBytes(StandardCharsets.UTF_8)));
    assertThat(refused).isNotNull();
    return refused.faults();
  }
}
