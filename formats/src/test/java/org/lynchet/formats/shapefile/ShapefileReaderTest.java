package org.lynchet.formats.shapefile;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.function.Consumer;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.LinearRing;
import org.lynchet.formats.Column;
import org.lynchet.formats.DeclaredCrs;
import org.lynchet.formats.Fault;
import org.lynchet.formats.FeatureTable;
import org.lynchet.formats.FormatException;
import org.lynchet.formats.Samples;

/** Reads shapefiles that were damaged on purpose, byte by byte. */
class ShapefileReaderTest {
  @TempDir Path folder;
  private Path file = Path.of("");

  @BeforeEach
  void write() throws IOException {
    file = folder.resolve("a.shp");
    Shapefile.writer().write(Samples.planting(), file);
  }

  @Test
  void whatWasWrittenIsRead() throws Exception {
    FeatureTable table = Shapefile.reader().read(file);
    assertThat(table.name()).isEqualTo("a");
    assertThat(table.crs()).isEqualTo(DeclaredCrs.LON_LAT);
    assertThat(table.columns()).isEqualTo(Samples.planting().columns());
    assertThat(table.features().get(0).values()).isEqualTo(List.of("Grünmais", 34000.13, true));
    for (int i = 0; i < 2; i++) {
      assertThat(table.features().get(i).geometry().norm().toText())
          .isEqualTo(Samples.planting().features().get(i).geometry().norm().toText());
    }
  }

  @Test
  void onlyTheShpIsNeeded() throws Exception {
    for (String extension : List.of("shx", "dbf", "prj", "cpg")) {
      Files.delete(folder.resolve("a." + extension));
    }
    FeatureTable table = Shapefile.reader().read(file);
    assertThat(table.features()).hasSize(2);
    assertThat(table.columns()).isEmpty();
    assertThat(table.crs()).isEqualTo(DeclaredCrs.NONE);
  }

  @Test
  void extensionsMayBeInAnyCase() throws Exception {
    Path upper = folder.resolve("a.SHP");
    Files.move(file, upper);
    Files.move(folder.resolve("a.dbf"), folder.resolve("a.Dbf"));
    Files.move(folder.resolve("a.prj"), folder.resolve("a.PRJ"));
    FeatureTable table = Shapefile.reader().read(upper);
    assertThat(table.columns()).hasSize(3);
    assertThat(table.crs()).isEqualTo(DeclaredCrs.LON_LAT);
  }

  /** Other readers make a second polygon of such a hole, on top of the first. */
  @Test
  void aHoleDrawnClockwiseStaysAHole() throws Exception {
    turn(108 + 52 + 5 * 16, 5);
    assertThat(Shapefile.reader().read(file).features().get(0).geometry().norm().toText())
        .isEqualTo(Samples.wkt(Samples.HOLED).norm().toText());
  }

  @Test
  void anOuterRingDrawnCounterClockwiseStaysOne() throws Exception {
    turn(108 + 52, 5);
    assertThat(Shapefile.reader().read(file).features().get(0).geometry().norm().toText())
        .isEqualTo(Samples.wkt(Samples.HOLED).norm().toText());
  }

  /** The depth of a ring tells, not its order: an island in a lake in a field. */
  @ParameterizedTest
  @CsvSource({"0 1 2", "2 1 0", "1 2 0"})
  void ringsNestToAnyDepthInAnyOrder(String order) {
    List<String> rings =
        List.of(
            "LINEARRING (0 0, 9 0, 9 9, 0 9, 0 0)",
            "LINEARRING (1 1, 8 1, 8 8, 1 8, 1 1)",
            "LINEARRING (1 1, 3 2, 3 3, 2 3, 1 1)"); // touches the lake's shore
    GeometryFactory factory = new GeometryFactory();
    List<LinearRing> drawn =
        Arrays.stream(order.split(" ", -1))
            .map(i -> Samples.wkt(rings.get(Integer.parseInt(i))).getCoordinates())
            .map(factory::createLinearRing)
            .toList();
    assertThat(new RingNesting(factory, drawn).toGeometry().norm().toText())
        .isEqualTo(
            Samples.wkt(
                    "MULTIPOLYGON (((0 0, 9 0, 9 9, 0 9, 0 0), (1 1, 8 1, 8 8, 1 8, 1 1)),"
                        + " ((1 1, 3 2, 3 3, 2 3, 1 1)))")
                .norm()
                .toText());
  }

  @Test
  void boxesAndRecordNumbersAreNotTrusted() throws Exception {
    edit("shp", b -> b.putDouble(36, Double.NaN).putDouble(112, 1e300).putInt(100, 77));
    assertThat(Shapefile.reader().read(file).features()).hasSize(2);
  }

  @Test
  void aTruncatedShpIsToldAtEachLength() throws IOException {
    byte[] whole = Files.readAllBytes(file);
    for (int length = 0; length < whole.length; length += 3) {
      Files.write(file, Arrays.copyOf(whole, length));
      assertThat(refused()).as("%d bytes", length).isNotEmpty();
    }
  }

  @ParameterizedTest
  @CsvSource({
    // big-endian value at, value, what is told, where
    "0, 1, its file code is 1, a.shp",
    "24, 99999999, it ends after, a.shp",
    "24, 60, its header says 120 bytes, a.shp",
    "104, 0, its length is 0 bytes, record 1",
    "104, 2000000000, its length is, record 1",
    "104, -7, its length is, record 1",
    "104, 105, bytes for POLYGON, record 1",
    "108, 117440512, its shape type is 7, record 1",
    "32, 520093696, its shape type is 31, a.shp",
    "28, 0, its version is 0, a.shp"
  })
  void lyingHeadersAreTold(int at, int value, String what, String where) throws IOException {
    edit("shp", b -> b.order(ByteOrder.BIG_ENDIAN).putInt(at, value));
    List<Fault> faults = refused();
    assertThat(faults).anyMatch(f -> f.what().contains(what) && f.where().endsWith(where));
  }

  @ParameterizedTest
  @CsvSource({
    // little-endian int at, value, what is told
    "144, 0, 0 parts",
    "144, -1, -1 parts",
    "144, 2147483647, 2147483647 parts",
    "148, 2147483647, bytes for POLYGON",
    "148, 9, bytes for POLYGON",
    "152, 1, part 1 starts at point 1",
    "156, 0, part 2 starts at point 0",
    "156, 10, part 2 starts at point 10",
    "156, 2, a ring of 2 points"
  })
  void countsThatCanNotBeAreTold(int at, int value, String what) throws IOException {
    edit("shp", b -> b.putInt(at, value));
    assertThat(refused()).anyMatch(f -> f.what().contains(what));
  }

  @Test
  void anOpenRingIsToldWithItsPlace() throws IOException {
    edit("shp", b -> b.putDouble(160 + 9 * 16, -93));
    Fault fault = refused().get(0);
    assertThat(fault.what()).contains("not closed").contains("-93.0 43.002");
    assertThat(fault.where()).endsWith("a.shp, record 1, part 2");
  }

  @Test
  void aCoordinateThatIsNoNumberIsToldWithItsPlace() throws IOException {
    edit("shp", b -> b.putDouble(160 + 2 * 16, Double.NaN));
    assertThat(refused().get(0).where()).endsWith("a.shp, record 1, part 1, point 3");
    edit("shp", b -> b.putDouble(160 + 2 * 16, Double.POSITIVE_INFINITY));
    assertThat(refused().get(0).what()).contains("Infinity");
  }

  @ParameterizedTest
  @CsvSource({
    "4, 1, its 1 rows", // two rows, the header says one
    "4, 3, of 3 rows",
    "4, -1, of 4294967295 rows"
  })
  void rowsThatDoNotMatchTheShapesAreTold(int at, int rows, String what) throws IOException {
    edit("dbf", b -> b.putInt(at, rows));
    assertThat(refused()).anyMatch(f -> f.what().contains(what) && f.where().endsWith("a.dbf"));
  }

  @Test
  void aWholeDbfWithFewerRowsIsTold() throws IOException {
    byte[] dbf = Files.readAllBytes(folder.resolve("a.dbf"));
    dbf[4] = 1;
    Files.write(folder.resolve("a.dbf"), Arrays.copyOf(dbf, dbf.length - 25));
    assertThat(refused().get(0).what()).isEqualTo("1 rows for 2 shapes");
  }

  @Test
  void valuesThatAreNoneAreToldWithRowAndColumn() throws IOException {
    edit("dbf", b -> b.put(129 + 13, (byte) 'x').put(153 + 23, (byte) 'q'));
    assertThat(refused())
        .extracting(Fault::where)
        .satisfiesExactly(
            w -> assertThat(w).endsWith("a.dbf, row 1, column RATE"),
            w -> assertThat(w).endsWith("a.dbf, row 2, column PARTIAL"));
  }

  /** GDAL writes a missing number as asterisks; a logical may be blank or a question mark. */
  @Test
  void missingValuesAreNull() throws Exception {
    edit("dbf", b -> b.put(129 + 13, "**********".getBytes(StandardCharsets.US_ASCII)));
    edit("dbf", b -> b.put(129 + 23, (byte) '?'));
    assertThat(Shapefile.reader().read(file).features().get(0).values())
        .isEqualTo(Arrays.asList("Grünmais", null, null));
  }

  @Test
  void rowsMarkedAsDeletedAreLeftOutWithTheirShapes() throws Exception {
    edit("dbf", b -> b.put(129, (byte) '*'));
    FeatureTable table = Shapefile.reader().read(file);
    assertThat(table.features()).hasSize(1);
    assertThat(table.features().get(0).values().get(0)).isEqualTo("tall-108");
  }

  @ParameterizedTest
  @CsvSource({
    "ISO-8859-1, 8859-1, 0",
    "ISO-8859-1, 88591, 0",
    "windows-1252, 1252, 0",
    "windows-1252, ANSI 1252, 0",
    "IBM850, OEM 850, 0",
    "UTF-8, UTF8, 0",
    "UTF-8, 65001, 0",
    "ISO-8859-1, '', 0",
    "ISO-8859-1, '', 87",
    "IBM850, '', 2",
    "windows-1250, '', 200",
    "windows-1252, LDID/3, 0"
  })
  void textIsReadByCpgThenLanguageByteThenLatin1(String charset, String cpg, int language)
      throws Exception {
    Files.writeString(folder.resolve("a.cpg"), cpg);
    byte[] text = Arrays.copyOf("Grünmais".getBytes(Charset.forName(charset)), 12);
    edit("dbf", b -> b.put(29, (byte) language).put(130, text));
    assertThat(Shapefile.reader().read(file).features().get(0).values().get(0))
        .isEqualTo("Grünmais");
  }

  @Test
  void textThatIsNotWhatTheCpgSaysIsTold() throws IOException {
    edit("dbf", b -> b.put(132, (byte) 0xFC));
    assertThat(refused().get(0).where()).endsWith("a.dbf, row 1, column PRODUCT");
    Files.writeString(folder.resolve("a.cpg"), "Klingon");
    assertThat(refused().get(0).what()).contains("Klingon");
  }

  @Test
  void anotherPrjIsHandedOnAsText() throws Exception {
    Files.writeString(folder.resolve("a.prj"), "PROJCS[\"RD_New\"]\n");
    assertThat(Shapefile.reader().read(file).crs())
        .isEqualTo(DeclaredCrs.wkt("PROJCS[\"RD_New\"]"));
    Files.writeString(folder.resolve("a.prj"), " ");
    assertThat(Shapefile.reader().read(file).crs()).isEqualTo(DeclaredCrs.NONE);
  }

  @Test
  void linesAndPointsAreReadToo() throws Exception {
    for (String wkt :
        List.of(
            "POINT (1 2)", "LINESTRING (0 0, 1 1)", "MULTILINESTRING ((0 0, 1 1), (2 2, 3 3))")) {
      Shapefile.writer()
          .write(Samples.table(List.of(Column.flag("F")), Samples.feature(wkt, true)), file);
      assertThat(Shapefile.reader().read(file).features().get(0).geometry().toText())
          .isEqualTo(wkt);
    }
  }

  @Test
  void missingFilesAndOtherNamesAreTold() {
    file = folder.resolve("b.shp");
    assertThat(refused().get(0).what()).contains("no such file");
    file = folder.resolve("b.zip");
    assertThat(refused().get(0).what()).contains("no such file");
    file = folder.resolve("a.dbf");
    assertThat(refused().get(0).what()).contains("neither in .shp nor in .zip");
  }

  private void turn(int at, int points) throws IOException {
    ByteBuffer before = ByteBuffer.wrap(Files.readAllBytes(file)).order(ByteOrder.LITTLE_ENDIAN);
    edit(
        "shp",
        b -> {
          for (int i = 0; i < points; i++) {
            int from = at + 16 * (points - 1 - i);
            b.putDouble(at + 16 * i, before.getDouble(from));
            b.putDouble(at + 16 * i + 8, before.getDouble(from + 8));
          }
        });
  }

  private void edit(String extension, Consumer<ByteBuffer> change) throws IOException {
    Path edited = folder.resolve("a." + extension);
    byte[] bytes = Files.readAllBytes(edited);
    change.accept(ByteBuffer.wrap(bytes).order(ByteOrder.LITTLE_ENDIAN));
    Files.write(edited, bytes);
  }

  private List<Fault> refused() {
    FormatException refused =
        catchThrowableOfType(FormatException.class, () -> Shapefile.reader().read(file));
    assertThat(refused).isNotNull();
    return refused.faults();
  }
}
