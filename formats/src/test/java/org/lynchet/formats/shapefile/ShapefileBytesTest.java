package org.lynchet.formats.shapefile;

import static java.nio.charset.StandardCharsets.ISO_8859_1;
import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.lynchet.formats.Column;
import org.lynchet.formats.DeclaredCrs;
import org.lynchet.formats.FeatureTable;
import org.lynchet.formats.Samples;

/** Holds the written bytes against the ESRI description (July 1998) and the dBASE III layout. */
class ShapefileBytesTest {
  @TempDir Path folder;
  private Path file = Path.of("");

  @BeforeEach
  void name() {
    file = folder.resolve("a.shp");
  }

  @Test
  void headerOfShpIsAsOnPage4() throws IOException {
    ByteBuffer shp = written(Samples.planting(), "shp");
    assertThat(big(shp, 0)).isEqualTo(9994);
    for (int unused = 4; unused < 24; unused += 4) {
      assertThat(big(shp, unused)).as("unused word at %d", unused).isZero();
    }
    assertThat(big(shp, 24)).as("length in words").isEqualTo(shp.limit() / 2);
    assertThat(little(shp, 28)).as("version").isEqualTo(1000);
    assertThat(little(shp, 32)).as("polygon").isEqualTo(5);
    assertThat(number(shp, 36)).isEqualTo(-94);
    assertThat(number(shp, 44)).isEqualTo(43);
    assertThat(number(shp, 52)).isEqualTo(-91.99);
    assertThat(number(shp, 60)).isEqualTo(43.01);
    for (int zm = 68; zm < 100; zm += 8) {
      assertThat(number(shp, zm)).as("Z and M at %d", zm).isZero();
    }
  }

  @Test
  void recordsAreAsOnPages5And9() throws IOException {
    ByteBuffer shp = written(Samples.planting(), "shp");
    int content = 44 + 2 * 4 + 10 * 16;
    assertThat(big(shp, 100)).as("record number").isEqualTo(1);
    assertThat(big(shp, 104)).as("content in words").isEqualTo(content / 2);
    assertThat(little(shp, 108)).isEqualTo(5);
    assertThat(number(shp, 112)).as("xmin").isEqualTo(-94);
    assertThat(number(shp, 136)).as("ymax").isEqualTo(43.01);
    assertThat(little(shp, 144)).as("parts").isEqualTo(2);
    assertThat(little(shp, 148)).as("points").isEqualTo(10);
    assertThat(little(shp, 152)).isZero();
    assertThat(little(shp, 156)).isEqualTo(5);
    assertThat(big(shp, 108 + content)).as("next record number").isEqualTo(2);
  }

  /** Page 8: the interior is to the right of the walk, so outer rings go clockwise. */
  @Test
  void outerRingsAreClockwiseAndHolesCounterClockwise() throws IOException {
    ByteBuffer shp = written(Samples.planting(), "shp");
    assertThat(twiceArea(shp, 160, 5)).as("outer").isNegative();
    assertThat(twiceArea(shp, 160 + 5 * 16, 5)).as("hole").isPositive();
    int second = 108 + 44 + 2 * 4 + 10 * 16 + 8;
    assertThat(twiceArea(shp, second + 52, 5)).as("first part").isNegative();
    assertThat(twiceArea(shp, second + 52 + 5 * 16, 4)).as("second part").isNegative();
  }

  @Test
  void shxLeadsToEachRecord() throws IOException {
    ByteBuffer shp = written(Samples.planting(), "shp");
    ByteBuffer shx = read("shx");
    assertThat(shx.limit()).isEqualTo(100 + 2 * 8);
    assertThat(big(shx, 24)).isEqualTo(shx.limit() / 2);
    assertThat(big(shx, 100)).as("first offset").isEqualTo(50);
    for (int i = 0; i < 2; i++) {
      int offset = 2 * big(shx, 100 + 8 * i);
      assertThat(big(shp, offset)).as("record number").isEqualTo(i + 1);
      assertThat(big(shp, offset + 4)).isEqualTo(big(shx, 104 + 8 * i));
    }
  }

  @Test
  void dbfIsDBaseThree() throws IOException {
    Shapefile.writer(LocalDate.of(2026, 4, 9)).write(Samples.planting(), file);
    ByteBuffer dbf = read("dbf");
    assertThat(dbf.get(0)).as("version").isEqualTo((byte) 3);
    assertThat(new byte[] {dbf.get(1), dbf.get(2), dbf.get(3)}).containsExactly(126, 4, 9);
    assertThat(little(dbf, 4)).as("rows").isEqualTo(2);
    assertThat(dbf.getShort(8)).as("header").isEqualTo((short) (33 + 32 * 3));
    assertThat(dbf.getShort(10)).as("row").isEqualTo((short) (1 + 12 + 10 + 1));
    assertThat(dbf.get(29)).as("language").isZero();
    assertThat(text(dbf, 32, 12)).isEqualTo("PRODUCT\0\0\0\0C");
    assertThat(text(dbf, 64, 12)).isEqualTo("RATE\0\0\0\0\0\0\0N");
    assertThat(dbf.get(64 + 16)).isEqualTo((byte) 10);
    assertThat(dbf.get(64 + 17)).isEqualTo((byte) 2);
    assertThat(dbf.get(128)).isEqualTo((byte) 0x0D);
    assertThat(text(dbf, 129, 24)).isEqualTo(" Gr\u00C3\u00BCnmais     34000.13T");
    assertThat(text(dbf, 153, 24)).isEqualTo(" tall-108          0.00F");
    assertThat(dbf.get(dbf.limit() - 1)).isEqualTo((byte) 0x1A);
    assertThat(dbf.limit()).isEqualTo(129 + 2 * 24 + 1);
  }

  @Test
  void prjAndCpgAreWhatOtherProgramsWrite() throws IOException {
    Shapefile.writer().write(Samples.planting(), file);
    assertThat(text(read("prj"), 0, 145)).startsWith("GEOGCS[\"GCS_WGS_1984\"").endsWith("]]");
    assertThat(Files.size(folder.resolve("a.prj"))).isEqualTo(145);
    assertThat(Files.readString(folder.resolve("a.cpg"))).isEqualTo("UTF-8");
  }

  @Test
  void sameTableSameBytes() throws IOException {
    Shapefile.writer().write(Samples.planting(), file);
    Path again = folder.resolve("b.shp");
    Shapefile.writer().write(Samples.planting(), again);
    for (String extension : List.of("shp", "shx", "dbf", "prj", "cpg")) {
      assertThat(folder.resolve("b." + extension))
          .hasSameBinaryContentAs(folder.resolve("a." + extension));
    }
  }

  @ParameterizedTest
  @CsvSource({
    "2.675, 6, 2, '  2.68'",
    "-2.675, 6, 2, ' -2.68'",
    "-0.001, 6, 2, '  0.00'",
    "1e6, 7, 0, 1000000",
    "0.5, 3, 0, '  1'",
    "99.994, 5, 2, 99.99"
  })
  void numbersAreRoundedHalfUpAsPrinted(double value, int width, int decimals, String expected)
      throws IOException {
    FeatureTable table =
        Samples.table(
            List.of(Column.number("N", width, decimals)), Samples.feature("POINT (1 2)", value));
    assertThat(text(written(table, "dbf"), 66, width)).isEqualTo(expected);
  }

  @Test
  void nothingIsCutToFit() {
    refuse(Column.number("N", 4, 1), 1000.0);
    refuse(Column.number("N", 4, 2), 99.995);
    refuse(Column.number("N", 4, 2), null);
    refuse(Column.number("N", 4, 2), Double.NaN);
    refuse(Column.number("N", 21, 2), 1.0);
    refuse(Column.text("T", 3), "\u00FCb" + "er");
    refuse(Column.text("T", 9), null);
    refuse(Column.text("T", 9), "a\nb");
    refuse(Column.text("T", 9), "\uD800");
    refuse(Column.text("T", 255), "a");
    refuse(Column.flag("F"), null);
    refuse(Column.flag("F"), "T");
    refuse(Column.text("lower", 9), "a");
    refuse(Column.text("ELEVENCHARS", 9), "a");
    refuse(Column.text("\u00DCBER", 9), "a");
    refuse(Column.text("1ST", 9), "a");
  }

  @Test
  void tablesThatNoShapefileHoldsAreRefused() {
    List<Column> one = List.of(Column.flag("F"));
    refuse(Samples.table(List.of()));
    refuse(Samples.table(List.of(Column.flag("F"), Column.flag("F"))));
    refuse(Samples.table(one, Samples.feature("POLYGON EMPTY", true)));
    refuse(
        Samples.table(
            one, Samples.feature(Samples.TWO, true), Samples.feature("POINT (1 2)", true)));
    refuse(new FeatureTable("a", DeclaredCrs.NONE, one, List.of()));
    assertThatIllegalArgumentException()
        .isThrownBy(() -> Shapefile.writer(LocalDate.of(1899, 1, 1)));
    assertThat(folder).isEmptyDirectory();
  }

  private void refuse(Column column, @Nullable Object value) {
    refuse(Samples.table(List.of(column), Samples.feature("POINT (1 2)", value)));
  }

  private void refuse(FeatureTable table) {
    assertThatIllegalArgumentException().isThrownBy(() -> Shapefile.writer().write(table, file));
  }

  private ByteBuffer written(FeatureTable table, String extension) throws IOException {
    Shapefile.writer().write(table, file);
    return read(extension);
  }

  private ByteBuffer read(String extension) throws IOException {
    byte[] bytes = Files.readAllBytes(folder.resolve("a." + extension));
    return ByteBuffer.wrap(bytes).order(ByteOrder.LITTLE_ENDIAN);
  }

  private static int big(ByteBuffer bytes, int at) {
    return Integer.reverseBytes(bytes.getInt(at));
  }

  private static int little(ByteBuffer bytes, int at) {
    return bytes.getInt(at);
  }

  private static double number(ByteBuffer bytes, int at) {
    return bytes.getDouble(at);
  }

  private static String text(ByteBuffer bytes, int at, int length) {
    byte[] copy = new byte[length];
    bytes.get(at, copy);
    return new String(copy, length == 145 ? UTF_8 : ISO_8859_1);
  }

  /** The shoelace sum around the first point: positive for a counter-clockwise ring. */
  private static double twiceArea(ByteBuffer shp, int at, int points) {
    double sum = 0;
    for (int i = 0; i + 1 < points; i++) {
      double x = number(shp, at + 16 * i) - number(shp, at);
      double y = number(shp, at + 16 * i + 8) - number(shp, at + 8);
      double nextX = number(shp, at + 16 * i + 16) - number(shp, at);
      double nextY = number(shp, at + 16 * i + 24) - number(shp, at + 8);
      sum += x * nextY - nextX * y;
    }
    return sum;
  }
}
